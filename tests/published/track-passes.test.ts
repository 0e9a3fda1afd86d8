import { describe, expect, it } from 'vitest';
import { binomialWeights, meanOfMeans, type SteadyPass } from '../../src/core/track/mean-of-means.ts';
import { type PoweredRun, streamByPower, streamOfAll } from '../../src/core/track/stream-by-power.ts';
import { KMH } from '../../src/core/units/convert.ts';
import { check } from '../core/drive/checks.ts';
import { told } from './told.ts';

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
    told('ST-mean-of-means-4', 'mean_of_means_kn', expected.mean_of_means_kn, found.speed);
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
    told('ST-mean-of-means-3', 'result_kn', expected.result_kn, found.speed);
    expect(Math.abs(found.speed - expected.result_kn)).toBeLessThanOrEqual(tolerance.abs!);
    expect(Math.abs(plainMean(inputs.runs_ground_kn) - expected.plain_mean_kn)).toBeLessThanOrEqual(tolerance.abs!);
  });
});

describe('an electric inflatable kayak run out and back at eight powers (field test in a public code repository)', () => {
  const { inputs, expected, tolerance } = check<
    { runs: { P_in_W: number; v_kmh: number; way: 'out' | 'in' }[] },
    { current_kmh_out: number; sd_CdA_m2: number; mean_CdA_m2: number }
  >('K-current');
  const runs = inputs.runs.map(
    ({ P_in_W: power, v_kmh, way }): PoweredRun => ({ power, over: v_kmh * KMH, way: way === 'out' ? 'out' : 'back' }),
  );
  /** Fresh water as the source has it, kg/m3; power is half of density, drag area and speed cubed. */
  const area = (ratio: number) => (2 * ratio) / 997;

  it('has the stream of its source when no run is doubted', () => {
    const { stream, ratio, deviation } = streamOfAll(runs)!;
    told('K-current', 'current_kmh_out', expected.current_kmh_out, stream / KMH);
    told('K-current', 'mean_CdA_m2', expected.mean_CdA_m2, area(ratio));
    expect(Math.abs(stream / KMH - expected.current_kmh_out)).toBeLessThanOrEqual(tolerance.current_abs!);
    expect(Math.abs(area(ratio) - expected.mean_CdA_m2)).toBeLessThanOrEqual(tolerance.CdA_abs!);
    expect(Math.abs(area(deviation) - expected.sd_CdA_m2)).toBeLessThanOrEqual(tolerance.CdA_abs!);
  });

  it('flags the two runs that took more power and went slower, and has the stream without them', () => {
    const { stream, ratio, odd } = streamByPower(runs)!;
    expect(odd).toEqual([6, 7]);
    // The figures without the two are in the note of the check.
    expect(Math.abs(stream / KMH - 0.156)).toBeLessThanOrEqual(tolerance.current_abs!);
    expect(Math.abs(area(ratio) - 0.094)).toBeLessThanOrEqual(tolerance.CdA_abs!);
  });
});
