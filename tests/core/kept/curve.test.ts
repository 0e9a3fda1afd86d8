import { bestSpeed } from '../../../src/core/curve/best-speed.ts';
import { type Boat, boatOf } from '../../../src/core/curve/boat.ts';
import { bowDownSpeed } from '../../../src/core/curve/bow-down.ts';
import { curve, lognormalBand } from '../../../src/core/curve/curve.ts';
import { factorsOf, priorDeviations, SPREADS, varianceOf } from '../../../src/core/curve/factors.ts';
import { formShare, measuredForm } from '../../../src/core/curve/form-spread.ts';
import { batteryMargin, firstStop, humpOf, marginOf, speedAtFroude } from '../../../src/core/curve/hump.ts';
import { lcgSlope, resistanceDeviation, steady, writeGradient } from '../../../src/core/curve/steady.ts';
import { keeping } from './keeping.ts';
import { calibration, craft } from './made-trips.ts';

const boats: Readonly<Record<string, () => Boat>> = {
  catamaran: () => boatOf(craft('catamaran-3-6', 'petrol-15hp-4s', 'tank-12'), 'sea', 15),
  'measured and foul': () =>
    boatOf(
      {
        ...craft('catamaran-3-6', 'petrol-15hp-4s', 'tank-12'),
        calibration: calibration({ fouling: 'slime', power: { factor: 1.1, deviation: 0.03 } }),
        fouling: 'weed',
      },
      'fresh',
      15,
    ),
  'tried at one speed': () =>
    boatOf(
      {
        ...craft('rib-3-4', 'petrol-20hp-2s', 'tank-25'),
        calibration: calibration({ tried: { mass: [300, 300], speed: [6, 6] }, formSpread: 0.03 }),
      },
      'sea',
      15,
    ),
  'two-stroke with injection': () => {
    const one = craft('rigid-v-4-2', 'petrol-30hp-2s', 'tank-25');
    return boatOf(one.drive.kind === 'petrol' ? { ...one, drive: { ...one.drive, cycle: '2s-di' } } : one, 'sea', 15);
  },
  launch: () => boatOf(craft('launch-4-9', 'electric-2-2kw', 'battery-agm-100-100'), 'fresh', 4),
  'electric on the plane': () => boatOf(craft('catamaran-4-3', 'electric-10-6kw', 'battery-10-lfp'), 'sea', -3),
  'small engine, large boat': () => boatOf(craft('rib-4-7', 'petrol-6hp-4s', 'tank-12'), 'sea', 15),
};
const SPEEDS = [0, 0.8, 1.6, 2.4, 3.4, 4.5, 6, 7.5, 9.5, 12];

keeping('curve', {
  ...Object.fromEntries(
    Object.entries(boats).map(([name, make]) => [
      name,
      () => {
        const boat = make();
        const afloat = { mass: 310, lcg: 0.37 * boat.craft.hull.wettedLength, airArea: 0.8, charge: 0.6 };
        const rough = { headwind: 6, waveHeight: 0.3 };
        return {
          factors: boat.factors,
          at: SPEEDS.map((speed) => {
            const now = steady(boat, afloat, speed, rough);
            const slope = lcgSlope(boat, afloat, speed, now.hull);
            const gradient = new Float64Array(SPREADS);
            writeGradient(boat, now, slope, gradient);
            return {
              resistance: now.resistance,
              flow: now.flow,
              drive: now.drive,
              slope,
              gradient,
              variance: varianceOf(gradient, boat.factors.covariance),
              deviation: resistanceDeviation(boat, now, slope),
              margin: marginOf(boat, afloat, now.drive),
              battery: batteryMargin(boat, afloat, now.drive),
            };
          }),
          towing: steady(boat, afloat, 2, { ...rough, tow: (speed, headwind) => 40 * speed * speed + headwind })
            .resistance,
          hump: humpOf(boat, afloat, rough),
          humpBelow: humpOf(boat, afloat, { headwind: 0, waveHeight: 0 }, 4),
          stop: firstStop(boat, afloat, rough, 9),
          bowDown: bowDownSpeed(boat, afloat),
          best: [true, false].flatMap((onPlane) =>
            [-0.8, 0, 1.2].map((stream) => bestSpeed(boat, afloat, rough, (speed) => speed + stream, onPlane)),
          ),
          none: bestSpeed(boat, afloat, rough, () => 0, false),
          froude: speedAtFroude(boat, afloat, 2.2),
          drawn: curve(boat, afloat, boat.bank ? 3_000_000 : 6),
        };
      },
    ]),
  ),
  'what is left of doubt beyond what was tried': () => {
    const form = measuredForm(calibration());
    const point = measuredForm(calibration({ tried: undefined }));
    return [100, 260, 340, 420, 700].flatMap((mass) =>
      [1, 2, 5, 9, 14].map((speed) => [
        formShare(form, mass, speed),
        formShare(point, mass, speed),
        formShare(undefined, mass, speed),
      ]),
    );
  },
  'priors and bands': () => [
    priorDeviations(craft('catamaran-3-6', 'petrol-15hp-4s', 'tank-12').drive),
    priorDeviations(craft('launch-4-9', 'electric-2-2kw', 'battery-5-lfp').drive),
    lognormalBand(3, 0.2),
    (['clean', 'slime', 'weed', 'shell'] as const).map(
      (fouling) => factorsOf({ ...craft('catamaran-3-6', 'petrol-15hp-4s', 'tank-12'), fouling }).hull,
    ),
  ],
});
