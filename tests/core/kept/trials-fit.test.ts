import { craftFrom } from '../../../src/core/files/catalogue.ts';
import { calibrated, calibrationFor, sameHull } from '../../../src/core/trials/calibrated.ts';
import { fitTrials } from '../../../src/core/trials/fit.ts';
import { stillWater } from '../../../src/core/trials/still-water.ts';
import { digest } from './digest.ts';
import { keeping } from './keeping.ts';
import { evidences, petrol } from './made-evidence.ts';

keeping('trials-fit', {
  ...Object.fromEntries(
    Object.entries(evidences).map(([name, trials]) => [
      name,
      () => {
        const fit = fitTrials(trials);
        const { parameters, reads, whitened: _, ...found } = fit;
        return {
          ...found,
          list: parameters.list,
          reads: reads.map(({ id, speed, speedDeviation, readings, afloat }) => ({
            id,
            speed,
            speedDeviation,
            afloat,
            readings,
          })),
          ...(digest({
            covariance: found.covariance,
            calibration: calibrationFor(trials, fit, trials.setups[0]!.drive, '2029-03-01'),
          }) as object),
        };
      },
    ]),
  ),
  'calibrated for other boats and days': () => {
    const trials = evidences['six runs and a refill']!;
    const fit = fitTrials(trials);
    const other = craftFrom('catamaran-3-6', 'petrol-20hp-4s', 'tank-12');
    const undated = { ...fit, lastDay: undefined };
    return [
      calibrated(petrol, trials, fit),
      calibrated(petrol, trials, fit, '2026-04-01').calibration?.formSpread,
      calibrated(petrol, trials, fit, '2046-04-01').calibration?.formSpread,
      calibrated(petrol, trials, fit, 'some day').calibration?.formSpread,
      calibrated(petrol, trials, undated, '2027-04-01').calibration?.formSpread,
      calibrated(other, trials, fit).calibration,
      calibrated(craftFrom('rib-3-4', 'petrol-15hp-4s', 'tank-12'), trials, fit).calibration,
      sameHull({ hull: { ...petrol.hull, name: 'Other', plate: 'none' } }, trials),
      sameHull({ hull: { ...petrol.hull, mass: 60 } }, trials),
    ];
  },
  'speed through still water': () => [
    stillWater([
      { over: 5, way: 'out' },
      { over: 4.4, way: 'back' },
    ]),
    stillWater(
      [
        { over: 5, way: 'out' },
        { over: 4.4, way: 'back' },
        { over: 5.1, way: 'out' },
      ],
      0.9,
    ),
    stillWater([{ over: 5, way: 'out' }], 0.4),
    stillWater(
      [
        { over: 5, way: 'back' },
        { over: 5.2, way: 'back' },
      ],
      0.4,
    ),
    stillWater([{ over: 0.2, way: 'out' }], 0.4),
    stillWater([{ over: 5, way: 'back' }]),
  ],
});
