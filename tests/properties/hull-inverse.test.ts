import fc from 'fast-check';
import { describe, it } from 'vitest';
import { deadriseLift, flatLiftFor, flatPlateLift, wettedLengthForLift } from '../../src/core/hull/planing-lift.ts';
import { centreOfPressure, wettedLengthForLever } from '../../src/core/hull/pressure-centre.ts';
import { expectNear } from '../core/hull/hull-checks.ts';

const RUNS = { seed: 1964, numRuns: 2000 };
// A few units in the last place: the fixed numbers of Newton steps leave nothing to gain.
const EXACT = 1e-13;
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('flatLiftFor', () => {
  it('undoes the loss of lift to deadrise, from full speed to a lift coefficient of a million millions', () => {
    fc.assert(
      fc.property(between(0, 30), between(-2, 12), (deadrise, decades) => {
        const lift = 10 ** decades;
        expectNear(deadriseLift(flatLiftFor(lift, deadrise), deadrise), lift, EXACT * 100);
      }),
      RUNS,
    );
  });
});

describe('wettedLengthForLift', () => {
  it('undoes the lift of a flat plate', () => {
    fc.assert(
      fc.property(between(0.3, 20), between(0.3, 13), between(0.05, 8), (trim, cv, length) => {
        expectNear(wettedLengthForLift(flatPlateLift(trim, length, cv), trim, cv), length, EXACT);
      }),
      RUNS,
    );
  });
});

describe('wettedLengthForLever', () => {
  it('undoes the centre of pressure, at any speed', () => {
    fc.assert(
      fc.property(between(0.2, 4), between(-6, 1.2), (lever, decades) => {
        const length = wettedLengthForLever(lever, 10 ** decades);
        expectNear(length * centreOfPressure(length, 10 ** decades), lever, EXACT);
      }),
      RUNS,
    );
  });
});
