import { Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { standardsWithout } from '../../../src/core/trials/contradictions.ts';
import type { Parameter, Parameters } from '../../../src/core/trials/parameters.ts';
import { curvaturePart, inverseOf, type Residuals, rowsAt, solve } from '../../../src/core/trials/solve.ts';

function unknowns(...given: readonly Partial<Parameter>[]): Parameters {
  const plain: Parameter = { factor: 'kd', of: 'hull', mean: 1, deviation: 0.5, least: -10, most: 10 };
  return { list: given.map((each) => ({ ...plain, ...each })), indexesOf: () => ({ factors: [], power: -1 }) };
}
/** One reading each of a single unknown, known to a deviation. */
const readings =
  (deviation: number, ...measured: readonly number[]): Residuals =>
  ([value]) =>
    measured.map((each) => [(value! - each) / deviation]);

describe('solve', () => {
  it('lands halfway between the prior and a reading as sure as it', () => {
    const { values, rows, curvature, atBound } = solve(unknowns({}), readings(0.5, 2), [1]);
    expect(values[0]).toBeCloseTo(1.5, 6);
    expect(rows[0]!.residuals[0]).toBeCloseTo(-1, 6);
    expect(rows[0]!.slopes[0]![0]).toBeCloseTo(1, 9);
    // The prior counts one, and so does the reading.
    expect(curvature.get(0, 0)).toBeCloseTo(2, 9);
    expect(atBound).toEqual([false]);
  });

  it('heeds a run by its weight, and one of no weight not at all', () => {
    expect(solve(unknowns({}), readings(0.5, 2), [3]).values[0]).toBeCloseTo((1 + 3 * 2) / 4, 6);
    const unheeded = solve(unknowns({}), readings(0.5, 2, 9), [1, 0]);
    expect(unheeded.values[0]).toBeCloseTo(1.5, 6);
    expect(unheeded.curvature.get(0, 0)).toBeCloseTo(2, 9);
    expect(solve(unknowns({}), readings(0.5), []).values).toEqual([1]);
  });

  it('heeds every reading of a run', () => {
    const both: Residuals = ([value]) => [[(value! - 2) / 0.5, (value! - 4) / 0.5]];
    expect(solve(unknowns({}), both, [1]).values[0]).toBeCloseTo((1 + 2 + 4) / 3, 6);
  });

  it('stops at the bounds of what is credible, says so, and lets the others answer', () => {
    const sum: Residuals = ([a, b]) => [[(a! + b! - 4) / 0.5]];
    const free = solve(unknowns({}, {}), sum, [1]);
    expect(free.values[0]).toBeCloseTo(1 + 2 / 3, 6);
    expect(free.values[1]).toBeCloseTo(1 + 2 / 3, 6);
    // With 1.2 for the first, the other makes up half of the 1.8 that are missing.
    const bound = solve(unknowns({ most: 1.2 }, {}), sum, [1]);
    expect(bound.values[0]).toBe(1.2);
    expect(bound.values[1]).toBeCloseTo(1.9, 6);
    expect(bound.atBound).toEqual([true, false]);
    const difference: Residuals = ([a, b]) => [[(b! - a! - 2) / 0.5]];
    const below = solve(unknowns({ least: 0.8 }, {}), difference, [1]);
    expect(below.values[0]).toBe(0.8);
    expect(below.values[1]).toBeCloseTo(1.9, 6);
    expect(below.atBound).toEqual([true, false]);
  });

  it('begins where it is told, within the bounds, and ends at the same answer', () => {
    for (const start of [-20, 0, 5, 20]) {
      expect(solve(unknowns({}), readings(0.5, 2), [1], [start]).values[0]).toBeCloseTo(1.5, 5);
    }
  });

  it('finds the root of a curve where the prior is vague', () => {
    const { values, curvature } = solve(unknowns({ mean: 2, deviation: 10 }), ([v]) => [[v! * v! - 9]], [1]);
    expect(values[0]).toBeCloseTo(3, 3);
    // The reading follows it by 2 x 3, ten times that for a deviation.
    expect(curvature.get(0, 0) / (1 + 60 ** 2)).toBeCloseTo(1, 3);
  });

  it('asks no further once it has settled, whatever the scales of its unknowns, also at a bound', () => {
    let asked = 0;
    const scales: Residuals = ([a, b]) => {
      asked++;
      return [[(a! - 1.05) / 0.01], [(b! - 300) / 10], [(a! + b! / 100 - 4) / 0.02]];
    };
    for (const most of [10, 1.01]) {
      asked = 0;
      solve(unknowns({ deviation: 0.1, most }, { mean: 250, deviation: 100, most: 1000 }), scales, [1, 1, 1]);
      // Six for each step: the place it tries, and there the middle and both sides of two unknowns.
      expect(asked).toBeLessThanOrEqual(6 * 8);
    }
  });
});

describe('the parts of solve', () => {
  it('take slopes in deviations of the unknown', () => {
    const [row] = rowsAt(unknowns({ deviation: 0.5 }, { deviation: 2 }).list, ([a, b]) => [[3 * a! - b!]], [1, 1]);
    expect(row!.residuals).toEqual([2]);
    expect(row!.slopes[0]![0]).toBeCloseTo(1.5, 9);
    expect(row!.slopes[0]![1]).toBeCloseTo(-2, 9);
  });

  it('sum slopes times themselves, by the weight of the run', () => {
    const slopes = [
      [1, 2],
      [0, 3],
    ];
    expect(curvaturePart({ slopes }, 2).to2DArray()).toEqual([
      [1, 2],
      [2, 13],
    ]);
    expect(curvaturePart({ slopes }, 2, 2).to2DArray()).toEqual([
      [2, 4],
      [4, 26],
    ]);
  });

  it('turn a curvature into a covariance', () => {
    const covariance = inverseOf(
      new Matrix([
        [2, 1],
        [1, 2],
      ]),
    );
    expect(covariance.get(0, 0)).toBeCloseTo(2 / 3, 12);
    expect(covariance.get(0, 1)).toBeCloseTo(-1 / 3, 12);
  });
});

describe('standardsWithout', () => {
  const apart = (weights: readonly number[], ...measured: readonly number[]) =>
    standardsWithout(solve(unknowns({ mean: 0, deviation: 1 }), readings(1, ...measured), weights), weights);

  it('tells how far each run lies from what the prior and the others say', () => {
    // Of readings 0 and 3 each leaves prior and other: 0 with a variance of a half, or 1.5 with the same.
    const [first, second] = apart([1, 1], 0, 3);
    expect(first).toBeCloseTo(1.5 / Math.sqrt(1.5), 4);
    expect(second).toBeCloseTo(3 / Math.sqrt(1.5), 4);
  });

  it('holds a run of no weight against all the others', () => {
    const [, unheeded] = apart([1, 0], 1, 3);
    expect(unheeded).toBeCloseTo(2.5 / Math.sqrt(1.5), 4);
  });

  it('tells of a single run how far the prior expects it', () => {
    expect(apart([1], -4)[0]).toBeCloseTo(4 / Math.SQRT2, 4);
  });

  it('tells the largest of the readings of a run', () => {
    const both: Residuals = ([value]) => [[value! - 0.5, value! + 3]];
    const list = unknowns({ mean: 0, deviation: 1 });
    expect(standardsWithout(solve(list, both, [1]), [1])[0]).toBeCloseTo(3 / Math.SQRT2, 4);
  });

  it('takes a run out by its own weight', () => {
    const [heavy] = apart([0.25, 1], 3, 0);
    expect(heavy).toBeCloseTo(3 / Math.sqrt(1.5), 4);
  });
});
