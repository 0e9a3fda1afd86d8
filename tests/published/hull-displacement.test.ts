import { describe, expect, it } from 'vitest';
import { hullSpeedShare } from '../../src/core/hull/gates.ts';
import { hullResistance } from '../../src/core/hull/resistance.ts';
import { GRAVITY, SEA_WATER } from '../../src/core/units/constants.ts';
import { DEGREE } from '../../src/core/units/convert.ts';
import { checksOf, value } from '../core/hull/hull-checks.ts';
import { hullOf } from '../core/hull/hull-records.ts';
import { told } from './told.ts';

/** A displacement boat as heavy for its length as the tested ones: 4.8 lengths of its volume's cube root. */
const HULL = hullOf({
  name: 'displacement boat 4.7 m',
  form: 'displacement',
  length: 4.7,
  beam: 1.4,
  wettedLength: 4.4,
  planingBeam: 1.2,
  deadriseDeg: 10,
  wettedSurfaceCoefficient: 2.7,
  planingSurfaceFactor: 1,
  roughness: 0.0004,
  airArea: 0.6,
});
const STATE = { mass: 800, lcg: 0.48 * 4.4, water: SEA_WATER };
const SLENDER = { ...HULL, wettedLength: 4.9, planingBeam: 1 };

function at(froudeLength: number, hull = HULL, state = STATE) {
  return hullResistance(hull, state, froudeLength * Math.sqrt(GRAVITY * hull.wettedLength));
}

describe('waves of displacement hulls near their hull speed (Delft systematic yacht hull series)', () => {
  it.each(checksOf('delft-'))('has the mean of 22 hulls at $id', ({ id, inputs, expected, tolerance }) => {
    const share = hullSpeedShare(value(inputs, 'FnL'));
    told(id, 'R_over_W_mean', value(expected, 'R_over_W_mean'), share);
    expect(Math.abs(share / value(expected, 'R_over_W_mean') - 1)).toBeLessThan(value(tolerance, 'rel'));
  });

  it.each(checksOf('delft-'))('asks of a boat as heavy at least what the best of them needed at $id', (check) => {
    const fn = value(check.inputs, 'FnL');
    const { total } = at(fn);
    expect(total / (STATE.mass * GRAVITY)).toBeGreaterThan(value(check.expected, 'R_over_W_min'));
  });

  it('falls short on the cautious side below hull speed: three to five times their waves from 0.25 to 0.35', () => {
    for (const [fn, tested] of [
      [0.25, 0.00185],
      [0.3, 0.0039],
      [0.35, 0.0082],
    ] as const) {
      const r = at(fn);
      const waves = r.waveGate * Math.tan(r.shortFormTrimDeg * DEGREE);
      expect(waves / tested).toBeGreaterThan(3);
      expect(waves / tested).toBeLessThan(5);
    }
  });

  it('raises the resistance of a slender boat past hull speed, and of no boat that planes', () => {
    const slender = { ...STATE, mass: 400, lcg: 2.1 };
    const planing = { ...SLENDER, form: 'rigid-v' } as const;
    expect(at(0.3, SLENDER, slender).total / at(0.3, planing, slender).total).toBeLessThan(1.02);
    expect(at(0.42, SLENDER, slender).total / at(0.42, planing, slender).total).toBeGreaterThan(1.15);
    expect(at(0.45, SLENDER, slender).total / at(0.45, planing, slender).total).toBeGreaterThan(1.4);
  });

  it('grows steadily with speed and weight beyond what was tested', () => {
    let before = 0;
    for (let fn = 0.1; fn < 0.9; fn += 0.01) {
      const { total } = at(fn);
      expect(total).toBeGreaterThan(before);
      expect(at(fn, HULL, { ...STATE, mass: 880 }).total).toBeGreaterThan(total);
      before = total;
    }
    expect(hullSpeedShare(2)).toBeLessThanOrEqual(0.12);
  });
});
