import { describe, expect, it } from 'vitest';
import { kqOf, ktOf, openWater } from '../../src/core/drive/b-series.ts';
import { check } from '../core/drive/checks.ts';
import { told } from './told.ts';

interface Screw {
  readonly pitch_ratio: number;
  readonly expanded_area_ratio: number;
  readonly blades: number;
}

function screw({ pitch_ratio, expanded_area_ratio, blades }: Screw) {
  return openWater({ diameter: 1, pitch: pitch_ratio, areaRatio: expanded_area_ratio, blades, quality: 1 });
}

describe('open-water diagrams of Kuiper 1992, MARIN publication 92-001', () => {
  it.each(['bser-chart-b3-35-08', 'bser-chart-b3-35-10', 'bser-chart-b3-65-10'])(
    'gives the thrust read from %s',
    (id) => {
      const { inputs, expected, tolerance } = check<Screw & { J: number[] }, { KT: number[] }>(id);
      const water = screw(inputs);
      inputs.J.forEach((j, i) => {
        told(id, `KT at J ${j}`, expected.KT[i]!, ktOf(water, j));
        expect(Math.abs(ktOf(water, j) - expected.KT[i]!)).toBeLessThan(tolerance.KT_abs!);
      });
    },
  );
});

describe('open-water diagrams of Bernitsas, Ray and Kinley 1981, University of Michigan report 237', () => {
  it.each(['bser-chart-b3-50-08', 'bser-chart-b3-50-10'])('gives the thrust and torque digitised from %s', (id) => {
    const { inputs, expected, tolerance } = check<
      Screw & { J_for_KT: number[]; J_for_KQ: number[] },
      { KT: number[]; KQ_times_5: number[] }
    >(id);
    const water = screw(inputs);
    inputs.J_for_KT.forEach((j, i) => {
      told(id, `KT at J ${j}`, expected.KT[i]!, ktOf(water, j));
      expect(Math.abs(ktOf(water, j) - expected.KT[i]!)).toBeLessThan(tolerance.KT_abs!);
    });
    inputs.J_for_KQ.forEach((j, i) => {
      told(id, `5 KQ at J ${j}`, expected.KQ_times_5[i]!, 5 * kqOf(water, j));
      expect(Math.abs(5 * kqOf(water, j) - expected.KQ_times_5[i]!)).toBeLessThan(tolerance.KQ_times_5_abs!);
    });
  });
});
