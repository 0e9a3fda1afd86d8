import { describe, expect, it } from 'vitest';
import { TRIED_SPREAD } from '../../../src/core/curve/form-spread.ts';
import { calibrated, calibrationFor, sameHull } from '../../../src/core/trials/calibrated.ts';
import type { Fit } from '../../../src/core/trials/fit-shapes.ts';
import { parametersOf } from '../../../src/core/trials/parameters.ts';
import { catamaran, trialsOf } from './made-trials.ts';

const trials = trialsOf(catamaran, []);
const { drive } = catamaran;
const { list } = parametersOf(trials);
/** A fit whose values and covariances can be told apart: 1.01, 1.02 ..., and 0.rc in row r and column c. */
const fit: Fit = {
  factors: list.map(({ factor, of, mean, deviation }, at) => ({
    factor,
    of,
    value: 1 + (at + 1) / 100,
    deviation: 0.03,
    priorValue: mean,
    priorDeviation: deviation,
    atBound: false,
  })),
  covariance: list.map((_, row) => list.map((_, column) => (10 * (row + 1) + column + 1) / 100)),
  runs: [],
  limits: [],
  scatter: 1,
  formSpread: TRIED_SPREAD,
  counted: 3,
  tried: { mass: [300, 400], speed: [2, 8] },
  lastDay: '2025-07-01',
};
const spreadOn = (asOf?: string, more: Partial<Fit> = {}) =>
  calibrationFor(trials, { ...fit, ...more }, drive, asOf)!.formSpread!;
/** What age alone adds. */
const aged = (asOf?: string, more?: Partial<Fit>) => Math.sqrt(spreadOn(asOf, more) ** 2 - TRIED_SPREAD ** 2);

describe('calibrationFor', () => {
  it('has what was found, in the order of the factors of a craft', () => {
    // Found as kd, kp, kh, lcgShift, fuel, friction, power, pitchShift.
    const found = calibrationFor(trials, fit, drive)!;
    expect(found.factors).toEqual([1.01, 1.02, 1.03, 1.04, 1.08, 1.05, 1.06]);
    expect(found.covariance[0]).toEqual([0.11, 0.12, 0.13, 0.14, 0.18, 0.15, 0.16]);
    expect(found.covariance[4]![6]).toBe(0.86);
    expect(found.power!.factor).toBeCloseTo(Math.exp(1.07), 12);
    expect(found.power!.deviation).toBe(0.03);
    expect(found).toMatchObject({ runs: 3, tried: fit.tried, fouling: 'clean' });
  });

  it('keeps the priors of a propeller that was not tried, and what the engine showed', () => {
    const pitched = { ...drive, propeller: { ...drive.propeller, pitch: drive.propeller.pitch + 0.02 } };
    const found = calibrationFor(trials, fit, pitched)!;
    expect(found.factors).toEqual([1.01, 1.02, 1.03, 1.04, 0, 1.05, 1.06]);
    expect(found.covariance[4]!.map((each) => each > 0)).toEqual([false, false, false, false, true, false, false]);
    expect(found.covariance[4]![4]).toBeCloseTo((0.1 * pitched.propeller.pitch) ** 2, 12);
    expect(found.covariance[5]![6]).toBe(0.56);
  });

  it('keeps only the hull where another engine is hung on', () => {
    const found = calibrationFor(trials, fit, { ...drive, name: 'Other' })!;
    expect(found.factors).toEqual([1.01, 1.02, 1.03, 1.04, 0, 1, 0]);
    expect(found.power).toEqual({ factor: 1, deviation: 0.07 });
    expect([5, 6].map((at) => found.covariance[at]![at])).toEqual([0.2 ** 2, 0.3 ** 2]);
  });

  it('takes any other blade for another propeller', () => {
    for (const field of ['diameter', 'pitch', 'blades', 'areaRatio', 'quality'] as const) {
      const changed = { ...drive, propeller: { ...drive.propeller, [field]: drive.propeller[field] + 0.001 } };
      expect(calibrationFor(trials, fit, changed)!.factors[4]).toBe(0);
    }
  });

  it('doubts a boat more the longer ago its trials were, up to a fifth', () => {
    expect(aged()).toBeCloseTo(0, 9);
    expect(aged('2025-07-01')).toBeCloseTo(0, 9);
    // Four years of 365.25 days have whole days.
    expect(aged('2029-07-01')).toBeCloseTo(0.05 * 2, 9);
    expect(aged('2041-07-01')).toBeCloseTo(0.2, 9);
    expect(aged('2065-07-01')).toBeCloseTo(0.2, 9);
    expect(aged('2024-07-01')).toBeCloseTo(0, 9);
  });

  it('trusts a boat between its runs no more than the fit does, and age comes on top', () => {
    expect(spreadOn(undefined, { formSpread: 0.3 })).toBe(0.3);
    expect(spreadOn('2041-07-01', { formSpread: 0.3 })).toBeCloseTo(Math.hypot(0.3, 0.2), 9);
  });

  it('takes trials of an unknown day, or days that are none, for as old as any', () => {
    const { lastDay: _, ...undated } = fit;
    expect(calibrationFor(trials, undated, drive)!.formSpread).toBeCloseTo(TRIED_SPREAD, 9);
    expect(calibrationFor(trials, undated, drive, '2025-07-01')!.formSpread).toBeCloseTo(
      Math.hypot(TRIED_SPREAD, 0.2),
      9,
    );
    expect(aged('someday')).toBeCloseTo(0.2, 9);
  });

  it('is none where no run counts', () => {
    expect(calibrationFor(trials, { ...fit, counted: 0 }, drive)).toBeUndefined();
    expect(calibrated(catamaran, trials, { ...fit, counted: 0 })).toEqual(catamaran);
  });
});

describe('calibrated and sameHull', () => {
  it('leave a boat alone that is not the one measured, and take an old calibration off it', () => {
    const measured = calibrated(catamaran, trials, fit);
    expect(measured.calibration?.runs).toBe(3);
    const other = { ...measured, hull: { ...catamaran.hull, beam: catamaran.hull.beam + 0.1 } };
    expect(calibrated(other, trials, fit)).not.toHaveProperty('calibration');
  });

  it('heed neither name, plate nor places aboard, nor the order in which a hull is written', () => {
    const { hull } = catamaran;
    expect(sameHull({ hull: { ...hull, name: 'Another', stations: [] } }, trials)).toBe(true);
    const turned = Object.fromEntries(Object.entries(hull).reverse()) as typeof hull;
    expect(sameHull({ hull: turned }, trials)).toBe(true);
    expect(sameHull({ hull: { ...hull, mass: hull.mass + 1 } }, trials)).toBe(false);
  });
});
