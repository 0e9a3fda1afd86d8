import { hulls } from '../../../src/core/files/catalogue.ts';
import { airDrag } from '../../../src/core/hull/air-drag.ts';
import { deadriseBottomVelocity, flatBottomVelocity } from '../../../src/core/hull/bottom-velocity.ts';
import { blountFoxFactor, crouchSpeed, wymanSpeed } from '../../../src/core/hull/cross-checks.ts';
import { hullFlags } from '../../../src/core/hull/flags.ts';
import { froudeLength, froudeVolume, speedCoefficient } from '../../../src/core/hull/froude.ts';
import { hullSpeedShare, humpShare, planingShare, waveGate } from '../../../src/core/hull/gates.ts';
import { legDrag } from '../../../src/core/hull/leg-drag.ts';
import { planingDrag, wettedLengths } from '../../../src/core/hull/planing-drag.ts';
import { deadriseLift, flatLiftFor, flatPlateLift, wettedLengthForLift } from '../../../src/core/hull/planing-lift.ts';
import {
  celanoLimitDeg,
  chartLimitDeg,
  mayPorpoise,
  porpoisingLimitCovers,
  porpoisingLimitDeg,
} from '../../../src/core/hull/porpoising.ts';
import { centreOfPressure, wettedLengthForLever } from '../../../src/core/hull/pressure-centre.ts';
import { regime } from '../../../src/core/hull/regime.ts';
import { hullResistance } from '../../../src/core/hull/resistance.ts';
import {
  fullEquilibrium,
  planingStateAt,
  residualMoment,
  shortFormEquilibrium,
} from '../../../src/core/hull/savitsky.ts';
import { towResistance, towSpeedCap } from '../../../src/core/hull/tow.ts';
import { waveAcceleration, waveAddedResistance } from '../../../src/core/hull/waves.ts';
import { FRESH_WATER, SEA_WATER } from '../../../src/core/units/constants.ts';
import { digest } from './digest.ts';
import { keeping } from './keeping.ts';

const SPEEDS = [0, 0.01, 0.3, 1, 1.7, 2.4, 3.1, 3.8, 4.6, 5.5, 6.5, 8, 10, 13];
const factors = { kd: 1.1, kp: 0.9, kh: 1.2, lcgShift: -0.05 };

keeping('hull', {
  ...Object.fromEntries(
    hulls.map(({ id, hull }) => [
      `resistance of ${id}`,
      () =>
        (
          [
            [280, 0.38, SEA_WATER],
            [420, 0.28, FRESH_WATER],
            [180, 0.52, SEA_WATER],
          ] as const
        ).map(([mass, share, water]) => {
          const state = { mass, lcg: share * hull.wettedLength, water };
          const all = SPEEDS.map((speed) => hullResistance(hull, state, speed));
          return {
            total: all.map(({ total }) => total),
            ...(digest({ all }) as object),
            flags: SPEEDS.map((_, i) => hullFlags(hull, state, all[i]!).join(' ')),
            measured: SPEEDS.map((speed) => hullResistance(hull, state, speed, factors).total),
            waves: SPEEDS.map((speed, i) =>
              waveAddedResistance(hull, { mass, trimDeg: all[i]!.trimDeg }, speed, 0.1 + 0.07 * i, water),
            ),
            slams: SPEEDS.map((speed, i) =>
              waveAcceleration(hull, { mass, trimDeg: all[i]!.trimDeg }, speed, 0.05 * i, water),
            ),
            tow: SPEEDS.map((speed) =>
              towResistance({ hull, state, airArea: 0.9 }, { speed, headwind: 3 - speed / 2 }),
            ),
            porpoises: all.map((now) => mayPorpoise(hull.deadriseDeg, now)),
          };
        }),
    ]),
  ),
  'parts of the planing equations': () => [
    [5, 0.3, 1.4, 3].map((ratio) => [
      flatPlateLift(4, ratio, 2.5),
      centreOfPressure(ratio, 2.5),
      wettedLengthForLever(ratio / 2, 2.5),
      flatBottomVelocity(4, ratio),
      deadriseBottomVelocity(4, ratio, 15),
    ]),
    [0, 0.02, 0.1, 0.4].map((lift) => [
      flatLiftFor(lift, 0),
      flatLiftFor(lift, 18),
      deadriseLift(lift, 12),
      wettedLengthForLift(lift, 5, 2),
    ]),
    planingDrag(3000, 5, 120),
    wettedLengths(
      { meanVelocity: 7, wettedLengthRatio: 1.5, beam: 1.2, deadriseDeg: 14, roughness: 0.0004, water: SEA_WATER },
      4,
    ),
    [0, 5, 12, 20, 30].map((deadrise) =>
      [0.02, 0.1, 0.3].map((lift) => [
        chartLimitDeg(deadrise, lift),
        celanoLimitDeg(deadrise, lift),
        porpoisingLimitDeg(deadrise, lift),
        porpoisingLimitCovers(deadrise, lift),
      ]),
    ),
  ],
  'equilibria of a planing hull': () =>
    [4, 6, 9, 14].map((speed) => {
      const hull = { weight: 3200, beam: 1.3, deadriseDeg: 14, speed, lcg: 1.3, roughness: 0.0004, water: SEA_WATER };
      const thrust = { vcg: 0.45, inclinationDeg: 3, arm: 0.3 };
      return [
        planingStateAt(hull, 5),
        shortFormEquilibrium(hull),
        residualMoment(hull, thrust, planingStateAt(hull, 4)),
        fullEquilibrium(hull, thrust),
        fullEquilibrium({ ...hull, lcg: 0.1 }, thrust),
      ];
    }),
  'gates and numbers': () => [
    [0.2, 0.8, 1.2, 1.6, 2, 2.2, 2.6, 3.4].map((froude) => [planingShare(froude), humpShare(froude), regime(froude)]),
    [0.1, 0.25, 0.35, 0.45, 0.6].map((froude) => [waveGate(froude), hullSpeedShare(froude)]),
    [froudeVolume(5, 300, 1025), froudeLength(5, 3.5), speedCoefficient(5, 1.2)],
    [
      airDrag(0.9, 0.9, { speed: 5, headwind: 6 }),
      airDrag(0.9, 0.9, { speed: 5, headwind: -8 }),
      legDrag(0.002, 6, 1025),
    ],
    [crouchSpeed(150, 11000, 320), blountFoxFactor(0.9, 2.4), wymanSpeed(11000, 320, 3.4), towSpeedCap(3.4)],
  ],
});
