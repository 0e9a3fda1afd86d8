import { describe, expect, it } from 'vitest';
import { hatch, slice, type Tube, tear } from '../../../src/components/fuel-bar/shape.ts';

const tube: Tube = { left: 10, top: 20, width: 300, height: 40, radius: 20 };

/** End points of the straight lines of a path. */
function ends(path: string): [number, number][] {
  return [...path.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);
}

describe('slice', () => {
  it('is a plain box in the straight part of the tube', () => {
    expect(ends(slice(tube, 100, 160))).toEqual(
      expect.arrayContaining([
        [100, 20],
        [160, 20],
        [160, 60],
        [100, 60],
      ]),
    );
    expect(slice(tube, 100, 160)).toMatch(/Z$/);
  });

  it('runs along the rim at the rounded ends', () => {
    // 4 px into a rounding of 20 px the rim is 20 - sqrt(20^2 - 16^2) = 8 px below the edge.
    const path = slice(tube, 14, 100);
    expect(path).toContain('M14 28');
    expect(path).toContain('A20 20');
    expect(path).toContain('14 52');
  });

  it('keeps to the tube whatever is asked', () => {
    for (const [from, to] of [
      [-50, 500],
      [10, 12],
      [305, 320],
      [200, 100],
    ]) {
      const path = slice(tube, from!, to!);
      expect(path).not.toContain('NaN');
      for (const [x, y] of ends(path)) {
        expect(x).toBeGreaterThanOrEqual(10);
        expect(x).toBeLessThanOrEqual(310);
        expect(y).toBeGreaterThanOrEqual(20);
        expect(y).toBeLessThanOrEqual(60);
      }
    }
  });
});

describe('hatch', () => {
  it.each([true, false])('stays inside the rounded ends, rising %s', (rising) => {
    const points = ends(hatch(tube, 10, 310, 8, rising));
    expect(points.length).toBeGreaterThan(60);
    for (const [x, y] of points) {
      const dx = Math.max(30 - x, x - 290, 0);
      expect(Math.hypot(dx, dx > 0 ? y - 40 : 0)).toBeLessThanOrEqual(20.1);
      expect(y).toBeGreaterThanOrEqual(20);
      expect(y).toBeLessThanOrEqual(60);
    }
  });

  it('rises to the right or falls', () => {
    const [a, b] = ends(hatch(tube, 100, 200, 10));
    expect(b![0]).toBeGreaterThan(a![0]);
    expect(b![1]).toBeLessThan(a![1]);
    const [c, d] = ends(hatch(tube, 100, 200, 10, false));
    expect(d![1]).toBeGreaterThan(c![1]);
  });

  it('draws nothing where there is no room', () => {
    expect(hatch(tube, 100, 100, 8)).toBe('');
    expect(hatch(tube, 120, 100, 8)).toBe('');
  });
});

describe('tear', () => {
  it('crosses the bar from edge to edge twice', () => {
    const { edges, gap } = tear(100, 20, 40);
    expect(edges.match(/M/g)).toHaveLength(2);
    expect(gap).toMatch(/^M97 20.*L103 60.*Z$/);
  });
});
