import { atSpeed } from '../../../src/core/compare/at-speed.ts';
import { credibleBoats, tenToNinety } from '../../../src/core/compare/credible-boats.ts';
import { easySpeed } from '../../../src/core/compare/easy-speed.ts';
import { fullThrottle } from '../../../src/core/compare/full-throttle.ts';
import { leverShift } from '../../../src/core/compare/lever-shift.ts';
import { cellOf, loadTable } from '../../../src/core/compare/load-table.ts';
import { setUp } from '../../../src/core/compare/loaded.ts';
import { propellerAdvice, usualWindow } from '../../../src/core/compare/propeller-advice.ts';
import { seatedCrew, stowedGear } from '../../../src/core/compare/seat-crew.ts';
import { legDepth, shaftFor, withDeepLeg, withShaft } from '../../../src/core/compare/shaft.ts';
import { spare } from '../../../src/core/compare/spare.ts';
import { thrustEffect } from '../../../src/core/compare/thrust-moment.ts';
import { craftFrom, hulls } from '../../../src/core/files/catalogue.ts';
import { digest } from './digest.ts';
import { keeping } from './keeping.ts';
import { boats, sea, withLoad } from './made-boats.ts';
import { calibration } from './made-trips.ts';

const three = boats.catamaran![1];
const lone = boats['v bottom, alone']![1];
const catamaran = boats.catamaran![0];

function columns(hull: string, pairs: readonly (readonly [string, string])[]) {
  return pairs.map(([engine, store]) => {
    const { drive, store: holds } = craftFrom(hull, engine, store);
    return { id: `${engine} ${store}`, drive, store: holds };
  });
}

keeping('compare', {
  ...Object.fromEntries(
    Object.entries(boats).map(([name, [one, load]]) => [
      name,
      () => {
        const now = withLoad(one, load);
        const { boat, afloat } = now;
        return {
          cell: cellOf(boat, load),
          wished: cellOf(boat, load, 4).cruise.perMetre,
          throttle: fullThrottle(boat, afloat),
          spare: spare(now),
          ...(digest({
            at: [1.5, 4, 7].map((speed) => ({ ...atSpeed(now, speed), steady: undefined })),
            thrust: [-6, 0, 8].map((tiltDeg) => thrustEffect(boat, afloat, 0.5, 6, { tiltDeg, deeper: 0.05 })),
            advice: [undefined, 4800, 5600, 6400].map((measured) =>
              propellerAdvice(boat, afloat, usualWindow(one.drive.ratedRpm), measured),
            ),
          }) as object),
          easy: easySpeed(one.hull),
        };
      },
    ]),
  ),
  'loads against engines': () =>
    loadTable(
      catamaran.hull,
      [
        { id: 'alone', load: lone },
        { id: 'three', load: three },
      ],
      [
        ...columns('catamaran-3-6', [
          ['petrol-8hp-2s', 'tank-12'],
          ['petrol-20hp-4s', 'tank-25'],
          ['electric-6-5kw', 'battery-5-lfp'],
        ]),
        {
          ...columns('catamaran-3-6', [['petrol-15hp-4s', 'tank-12']])[0]!,
          calibration: calibration({ fouling: 'weed' }),
        },
      ],
      sea,
    ),
  'credible boats': () => [
    credibleBoats(setUp(catamaran, sea)).map(({ factors: { hull, drive, power } }) => ({
      ...hull,
      ...drive,
      power: power.factor,
    })),
    credibleBoats(
      setUp(
        { ...catamaran, calibration: calibration({ covariance: Array.from({ length: 7 }, () => Array(7).fill(0)) }) },
        sea,
      ),
    ),
    tenToNinety([4, 1, 9, 2, 7, 3, 5, 8, 6, 0, 11, 10]),
  ],
  'legs and shafts': () => [
    [0.3, 0.41, 0.45, 0.5, 0.6].map(shaftFor),
    (['short', 'long', 'extra-long', undefined] as const).map((shaft) =>
      legDepth(catamaran.hull, { ...catamaran.drive, shaft }),
    ),
    legDepth({ ...catamaran.hull, transomHeight: undefined }, catamaran.drive),
    [-0.1, 0, 0.127].map((depth) => withDeepLeg(catamaran.drive, depth).legDragArea),
    withDeepLeg(catamaran.drive, 0.1, 0.001).legDragArea,
    (['short', 'long'] as const).map((shaft) => withShaft(catamaran.drive, shaft)),
  ],
  levers: () =>
    [-8, 0, 12].map((inclinationDeg) =>
      leverShift({ weight: 3000, friction: 150, trimDeg: 4, inclinationDeg, frictionArm: 0.3, thrustArm: 0.5 }),
    ),
  'crews seated and gear stowed': () =>
    hulls
      .slice(0, 9)
      .map(({ hull }) => [
        seatedCrew(hull, [90, 70, 60, 30]),
        seatedCrew(hull, [90, 70, 60, 30, 80, 81, 82], 'aft'),
        stowedGear(hull, 40),
        stowedGear(hull, 0),
      ]),
});
