import { describe, expect, it } from 'vitest';
import type { Calibration, Fouling } from '../../../src/core/craft/shapes.ts';
import {
  FACTORS,
  factorsOf,
  logSpread,
  priorDeviations,
  SPREADS,
  varianceOf,
} from '../../../src/core/curve/factors.ts';
import { shipped } from '../../trips.ts';

const petrol = shipped('petrol-day').craft;
const electric = shipped('electric-tender').craft;

function entry(covariance: Float64Array, row: number, column: number): number {
  return covariance[row * SPREADS + column]!;
}

/** A made-up fit: every factor off, some of them together. */
const fit = {
  factors: [1.2, 0.9, 1.5, 0.05, 0.01, 1.1, 0.02],
  covariance: FACTORS.map((_, row) => FACTORS.map((__, column) => (row === column ? 0.01 * (row + 1) : 0.001))),
  runs: 6,
  fouling: 'clean',
  power: { factor: 0.95, deviation: 0.03 },
} as unknown as Calibration;

describe('the factors of a boat nobody measured', () => {
  it('are those of the model, its engine rated within 7 %', () => {
    const { hull, drive, measured, form, power } = factorsOf(petrol);
    expect(hull).toEqual({ kd: 1, kp: 1, kh: 1, lcgShift: 0 });
    expect(drive).toEqual({ pitchShift: 0, fuel: 1, friction: 0 });
    expect([measured, form]).toEqual([false, undefined]);
    expect(power).toEqual({ factor: 1, deviation: 0.07 });
  });

  it('are each as doubtful as boats differ, and none with another', () => {
    const pitch = petrol.drive.propeller.pitch;
    const deviations = [0.4, 0.2, 1.3, 0.1, 0.1 * pitch, 0.2, 0.3];
    const { covariance } = factorsOf(petrol);
    expect(covariance).toHaveLength(64);
    for (let row = 0; row < SPREADS; row++) {
      for (let column = 0; column < SPREADS; column++) {
        const variance = row === column ? (deviations[row] ?? 0) ** 2 : 0;
        expect(entry(covariance, row, column)).toBeCloseTo(variance, 12);
      }
    }
  });

  it('of an electric motor are most in doubt by its losses', () => {
    const pitch = electric.drive.propeller.pitch;
    expect(priorDeviations(electric.drive)).toEqual([0.4, 0.2, 1.3, 0.1, 0.1 * pitch, 0.4, 0.03]);
  });
});

describe('the factors of a measured boat', () => {
  it('are those of its fit, with its covariance', () => {
    const { hull, drive, covariance, measured, power } = factorsOf({ ...petrol, calibration: fit });
    expect(hull).toEqual({ kd: 1.2, kp: 0.9, kh: 1.5, lcgShift: 0.05 });
    expect(drive).toEqual({ pitchShift: 0.01, fuel: 1.1, friction: 0.02 });
    expect(measured).toBe(true);
    expect(power).toEqual({ factor: 0.95, deviation: 0.03 });
    expect(entry(covariance, 2, 2)).toBe(0.03);
    expect(entry(covariance, 2, 5)).toBe(0.001);
    expect(entry(covariance, 5, 2)).toBe(0.001);
    expect(entry(covariance, 6, 6)).toBe(0.07);
  });

  it('leave the form of the model open, as one unit beside them, from one run on', () => {
    const one = factorsOf({ ...petrol, calibration: { ...fit, runs: 1 } });
    expect(entry(one.covariance, 7, 7)).toBe(1);
    expect(entry(one.covariance, 7, 0)).toBe(0);
    expect(one.form!.unmeasured).toEqual(factorsOf(petrol).covariance);
    const none = factorsOf({ ...petrol, calibration: { ...fit, runs: 0 } });
    expect(entry(none.covariance, 7, 7)).toBe(0);
    expect(none.form).toBeUndefined();
    expect(none.measured).toBe(true);
  });

  it('know the step back to the boat as nobody measured it, its bottom as foul as now', () => {
    const back = (fouling: Fouling, of = fit) =>
      factorsOf({ ...petrol, fouling, calibration: of }).form!.back.map((step) => Number(step.toFixed(12)));
    expect(back('clean')).toEqual([-0.2, 0.1, -0.5, -0.05, -0.01, -0.1, -0.02]);
    // Measured clean, with shell now: both boats have half as much resistance again, and the same engine.
    expect(back('shell')).toEqual([-0.3, 0.15, -0.75, -0.05, -0.01, -0.1, -0.02]);
    // A fit that found nothing is no step away.
    expect(back('slime', { ...fit, factors: [1, 1, 1, 0, 0, 1, 0] })).toEqual([0, 0, 0, 0, 0, 0, 0]);
  });

  it('are the usual ones where a fit is short of some, and certain where it is short of their doubt', () => {
    const short = { ...fit, factors: [], covariance: [[0.04]] } as unknown as Calibration;
    const { hull, drive, covariance } = factorsOf({ ...petrol, calibration: short });
    expect(hull).toEqual({ kd: 1, kp: 1, kh: 1, lcgShift: 0 });
    expect(drive).toEqual({ pitchShift: 0, fuel: 1, friction: 0 });
    expect(entry(covariance, 0, 0)).toBe(0.04);
    expect([entry(covariance, 0, 1), entry(covariance, 1, 1)]).toEqual([0, 0]);
  });
});

describe('a fouled bottom', () => {
  it('adds a tenth to resistance with slime, a quarter with weed and a half with shell, and nothing else', () => {
    for (const [fouling, factor] of [
      ['clean', 1],
      ['slime', 1.1],
      ['weed', 1.25],
      ['shell', 1.5],
    ] as [Fouling, number][]) {
      const { hull, drive } = factorsOf({ ...petrol, fouling });
      expect([hull.kd, hull.kp, hull.kh]).toEqual([factor, factor, factor]);
      expect([hull.lcgShift, drive.pitchShift, drive.fuel, drive.friction]).toEqual([0, 0, 1, 0]);
    }
    expect(factorsOf({ ...petrol }).hull.kd).toBe(1);
  });

  it('is as doubtful as half of what it adds, the same for all parts of resistance', () => {
    const { covariance } = factorsOf({ ...petrol, fouling: 'shell' });
    // Scaled by 1.5, and 0.25 more.
    expect(entry(covariance, 0, 0)).toBeCloseTo((0.4 * 1.5) ** 2 + 0.25 ** 2, 12);
    expect(entry(covariance, 2, 2)).toBeCloseTo((1.3 * 1.5) ** 2 + 0.25 ** 2, 12);
    expect(entry(covariance, 0, 1)).toBeCloseTo(0.25 ** 2, 12);
    expect(entry(covariance, 2, 0)).toBeCloseTo(0.25 ** 2, 12);
    // Neither centre of gravity nor engine.
    expect(entry(covariance, 3, 3)).toBeCloseTo(0.01, 12);
    expect(entry(covariance, 5, 5)).toBeCloseTo(0.04, 12);
    expect(entry(covariance, 3, 0)).toBe(0);
  });

  it('counts against the bottom that was measured: cleaned since, the boat goes easier', () => {
    const fouled = { ...fit, fouling: 'weed' } as Calibration;
    expect(factorsOf({ ...petrol, fouling: 'weed', calibration: fouled }).hull.kd).toBeCloseTo(1.2, 12);
    expect(factorsOf({ ...petrol, fouling: 'weed', calibration: fouled }).covariance).toEqual(
      factorsOf({ ...petrol, calibration: fit }).covariance,
    );
    const { hull, covariance } = factorsOf({ ...petrol, calibration: fouled });
    expect(hull.kd).toBeCloseTo(0.96, 12);
    expect(hull.kp).toBeCloseTo(0.72, 12);
    expect(hull.kh).toBeCloseTo(1.2, 12);
    expect(hull.lcgShift).toBe(0.05);
    // 0.8 as much, half of the 0.2 in doubt, of the factors as measured; joint doubts with others 0.8.
    expect(entry(covariance, 0, 0)).toBeCloseTo(0.01 * 0.64 + 1.44 * 0.01, 12);
    expect(entry(covariance, 0, 2)).toBeCloseTo(0.001 * 0.64 + 1.2 * 1.5 * 0.01, 12);
    expect(entry(covariance, 1, 4)).toBeCloseTo(0.001 * 0.8, 12);
    expect(entry(covariance, 4, 1)).toBeCloseTo(0.001 * 0.8, 12);
    expect(entry(covariance, 3, 2)).toBeCloseTo(0.001 * 0.8, 12);
    expect(entry(covariance, 4, 4)).toBeCloseTo(0.05, 12);
  });

  it('counts against a clean one where nobody said what was measured', () => {
    const { fouling: _, ...unsaid } = fit;
    expect(factorsOf({ ...petrol, fouling: 'slime', calibration: unsaid }).hull.kd).toBeCloseTo(1.32, 12);
  });
});

describe('the variance of a quantity', () => {
  const covariance = new Float64Array(SPREADS * SPREADS);
  covariance[0] = 4;
  covariance[1] = covariance[SPREADS] = -1;
  covariance[SPREADS + 1] = 9;
  covariance[SPREADS * SPREADS - 1] = 1;

  it('is its gradient on both sides of the covariance', () => {
    expect(varianceOf([1, 0, 0, 0, 0, 0, 0, 0], covariance)).toBe(4);
    expect(varianceOf([2, 3, 0, 0, 0, 0, 0, 0], covariance)).toBe(16 + 81 - 12);
    expect(varianceOf([0, 0, 0, 0, 0, 0, 0, 5], covariance)).toBe(25);
    expect(varianceOf([0, 2, 0, 0, 0, 0, 0, 1], covariance)).toBe(37);
    expect(varianceOf(new Float64Array(SPREADS), covariance)).toBe(0);
  });

  it('is never below nothing, as rounding could leave it', () => {
    const odd = new Float64Array(SPREADS * SPREADS);
    odd[0] = -1;
    expect(varianceOf([0.5, 0, 0, 0, 0, 0, 0, 0], odd)).toBe(0);
  });
});

describe('a relative deviation as one of the logarithm', () => {
  it('is the same up to one', () => {
    for (const relative of [0, 0.1, 0.5, 1]) expect(logSpread(relative)).toBe(relative);
  });

  it('goes on so that the 95th percentile grows as a sum, along the tangent and never beyond the exponential', () => {
    const high = (relative: number) => Math.exp(1.645 * logSpread(relative));
    const slope = 1.645 * Math.exp(1.645);
    for (const relative of [1, 1.5, 2, 5, 40]) {
      expect(high(relative)).toBeCloseTo(Math.exp(1.645) + slope * (relative - 1), 6);
      expect(high(relative)).toBeLessThanOrEqual(Math.exp(1.645 * relative) + 1e-9);
    }
  });
});
