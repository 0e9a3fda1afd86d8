import { describe, expect, it } from 'vitest';
import { froudeVolume } from '../../../src/core/hull/froude.ts';
import { type HullState, hullResistance, UNMEASURED } from '../../../src/core/hull/resistance.ts';
import { FRESH_WATER, SEA_WATER } from '../../../src/core/units/constants.ts';
import { checkOf, expectNear, value } from './hull-checks.ts';
import { BOATS, CATAMARAN_40, drag, RIB_35 } from './hull-records.ts';

const STATE: HullState = { mass: 375, lcg: 1.31, water: SEA_WATER };

describe('froudeVolume', () => {
  it('is 2.27 for 375 kg at 6 m/s in sea water (by definition)', () => {
    const { inputs, expected, tolerance } = checkOf('fnv-a');
    const got = froudeVolume(value(inputs, 'V_mps'), value(inputs, 'mass_kg'), value(inputs, 'rho_kgm3'));
    expectNear(got, value(expected, 'FnV'), value(tolerance, 'rel'));
  });
});

describe('hullResistance', () => {
  it('is nothing at rest, and gives finite figures for everything else', () => {
    for (const { hull } of BOATS) {
      const rest = hullResistance(hull, STATE, 0);
      expect(rest.total).toBe(0);
      expect(rest.trimDeg).toBeCloseTo(0, 12);
      for (const figure of Object.values(rest)) expect(Number.isFinite(figure)).toBe(true);
    }
  });

  it('starts from rest without a step: quadratic in the first millimetres a second', () => {
    const at = (speed: number) => hullResistance(CATAMARAN_40.hull, STATE, speed).total / speed ** 2;
    for (const speed of [1e-9, 1e-7, 0.99e-6, 1.01e-6, 1e-5, 1e-3]) expectNear(at(speed), at(1e-4), 1e-3);
  });

  it('is the sum of its three parts, each weighed by its own factor', () => {
    const factors = { kd: 0.8, kp: 1.2, kh: 2, lcgShift: 0 };
    const r = hullResistance(RIB_35.hull, STATE, 4.5, factors);
    expectNear(r.total, 0.8 * r.displacementPart + 1.2 * r.planingPart + 2 * r.humpPart, 1e-12);
    const as = hullResistance(RIB_35.hull, STATE, 4.5);
    expect([r.displacementPart, r.planingPart, r.humpPart]).toEqual([as.displacementPart, as.planingPart, as.humpPart]);
  });

  it('takes an LCG shift as if the weight had moved', () => {
    const shifted = hullResistance(RIB_35.hull, STATE, 4.5, { ...UNMEASURED, lcgShift: 0.1 });
    const moved = hullResistance(RIB_35.hull, { ...STATE, lcg: 1.41 }, 4.5);
    expectNear(shifted.total, moved.total, 1e-12);
    expectNear(shifted.trimDeg, moved.trimDeg, 1e-12);
  });

  it('costs about as much to carry a load through the hump as to plane twice as fast', () => {
    const hump = drag(CATAMARAN_40, { mass: 375, lcg: 1.31 }, 4.5);
    const planing = drag(CATAMARAN_40, { mass: 375, lcg: 1.31 }, 9);
    expect(planing / hump).toBeGreaterThan(0.9);
    expect(planing / hump).toBeLessThan(1.2);
  });

  it('differs by a few per cent between sea and fresh water', () => {
    for (const speed of [2, 4.5, 8]) {
      const sea = hullResistance(CATAMARAN_40.hull, STATE, speed).total;
      const fresh = hullResistance(CATAMARAN_40.hull, { ...STATE, water: FRESH_WATER }, speed).total;
      expect(Math.abs(fresh / sea - 1)).toBeLessThan(0.04);
    }
  });

  it('stays finite with the weight on the transom, ahead of the bow, and twice over the plate', () => {
    for (const lcg of [-1, 0, 0.1, 3, 6])
      for (const mass of [20, 100, 1500])
        for (const speed of [0.01, 1, 3, 5, 10, 20]) {
          const r = hullResistance(CATAMARAN_40.hull, { mass, lcg, water: SEA_WATER }, speed);
          for (const figure of Object.values(r)) expect(Number.isFinite(figure)).toBe(true);
          expect(r.total).toBeGreaterThan(0);
          expect(r.shortFormTrimDeg).toBeLessThan(20);
          expect(r.wettedLengthRatio).toBeLessThanOrEqual(3.7 / 1.25);
        }
  });
});
