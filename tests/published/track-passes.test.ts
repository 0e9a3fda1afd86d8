import { describe, expect, it } from 'vitest';
import { binomialWeights, meanOfMeans, type SteadyPass } from '../../src/core/track/mean-of-means.ts';
import { check } from '../core/drive/checks.ts';

/** By turns, the first as given; in whatever unit the check is in. */
function byTurns(speeds: readonly number[]): SteadyPass[] {
  return speeds.map((over, pass) => ({ over, way: pass % 2 === 0 ? 'out' : 'back' }));
}

function plainMean(speeds: readonly number[]): number {
  return speeds.reduce((sum, speed) => sum + speed, 0) / speeds.length;
}

describe('the mean of means of speed trials (ISO 15016 and ITTC practice from memory, example constructed)', () => {
  it('takes four passes in a stream that changes as a parabola to the true speed, where their plain mean fails', () => {
    const { inputs, expected, tolerance } = check<
      { runs_ground_kn: number[] },
      { weights: number[]; mean_of_means_kn: number; plain_mean_kn: number }
    >('ST-mean-of-means-4');
    const found = meanOfMeans(byTurns(inputs.runs_ground_kn))!;
    expect(binomialWeights(4)).toEqual(expected.weights);
    expect(Math.abs(found.speed - expected.mean_of_means_kn)).toBeLessThanOrEqual(tolerance.abs!);
    expect(Math.abs(plainMean(inputs.runs_ground_kn) - expected.plain_mean_kn)).toBeLessThanOrEqual(tolerance.abs!);
  });

  it('takes three passes in an evenly growing stream to the true speed', () => {
    const { inputs, expected, tolerance } = check<
      { runs_ground_kn: number[] },
      { weights: number[]; result_kn: number; plain_mean_kn: number }
    >('ST-mean-of-means-3');
    const found = meanOfMeans(byTurns(inputs.runs_ground_kn))!;
    expect(binomialWeights(3)).toEqual(expected.weights);
    expect(Math.abs(found.speed - expected.result_kn)).toBeLessThanOrEqual(tolerance.abs!);
    expect(Math.abs(plainMean(inputs.runs_ground_kn) - expected.plain_mean_kn)).toBeLessThanOrEqual(tolerance.abs!);
  });
});
