import { describe, expect, it } from 'vitest';
import { bandPath, type Point, runs, smoothPath } from '../../../src/components/curve-plot/lines.ts';

/** Heights along a path of cubic pieces, sampled. */
function heights(path: string): number[] {
  const numbers = [...path.matchAll(/-?[\d.]+/g)].map(Number);
  let y0 = numbers[1]!;
  const found = [y0];
  for (let i = 2; i + 5 < numbers.length; i += 6) {
    const [y1, y2, y3] = [numbers[i + 1]!, numbers[i + 3]!, numbers[i + 5]!];
    for (let t = 0.1; t <= 1.001; t += 0.1) {
      const s = 1 - t;
      found.push(s ** 3 * y0 + 3 * s * s * t * y1 + 3 * s * t * t * y2 + t ** 3 * y3);
    }
    y0 = y3;
  }
  return found;
}

describe('smoothPath', () => {
  const hump: Point[] = [
    [0, 10],
    [10, 10],
    [20, 40],
    [30, 90],
    [40, 88],
    [50, 20],
    [90, 20],
  ];

  it('passes through every point and swings past none', () => {
    const path = smoothPath(hump);
    for (const [x, y] of hump) expect(path).toContain(`${x} ${y}`);
    const all = heights(path);
    expect(Math.max(...all)).toBeCloseTo(90, 6);
    expect(Math.min(...all)).toBeCloseTo(10, 6);
  });

  it('draws a straight line through points on one', () => {
    const line: Point[] = [0, 3, 4, 10].map((x) => [x, 2 * x + 1]);
    const numbers = [...smoothPath(line).matchAll(/-?[\d.]+/g)].map(Number);
    // Paths are written to 0.01 px.
    for (let i = 0; i + 1 < numbers.length; i += 2) {
      expect(Math.abs(numbers[i + 1]! - (2 * numbers[i]! + 1))).toBeLessThan(0.02);
    }
  });

  it('keeps endless figures on paper', () => {
    const path = smoothPath([
      [0, 10],
      [10, -Infinity],
      [20, 5],
      [20, 5],
    ]);
    expect(path).not.toMatch(/NaN|Infinity|e/);
  });

  it('draws nothing from nothing', () => {
    expect(smoothPath([])).toBe('');
    expect(bandPath([], [])).toBe('');
  });
});

describe('bandPath', () => {
  it('goes out along one edge, back along the other, and closes', () => {
    const path = bandPath(
      [
        [0, 5],
        [10, 5],
      ],
      [
        [0, 1],
        [10, 1],
      ],
    );
    expect(path).toMatch(/^M0 5C.*10 5L10 1C.*0 1Z$/);
  });
});

describe('runs', () => {
  it('cuts where the kind of step changes, each run starting where the last ends', () => {
    const cut = runs([1, 2, 3, 9, 10], (a, b) => b - a > 1);
    expect(cut.map(({ kind, items }) => [kind, [...items]])).toEqual([
      [false, [1, 2, 3]],
      [true, [3, 9]],
      [false, [9, 10]],
    ]);
  });
});
