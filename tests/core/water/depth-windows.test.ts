import { describe, expect, it } from 'vitest';
import { HOUR, MINUTE } from '../../../src/core/units/convert.ts';
import { depthWindows } from '../../../src/core/water/depth-windows.ts';
import type { HeightAt } from '../../../src/core/water/tide-height.ts';

const span = { from: 0, to: 12 * HOUR };
const bar = { dries: 1.5, depth: 0.5 };
const height = (at: (seconds: number) => number): HeightAt => {
  return (seconds) => ({ known: true, height: at(seconds) });
};

describe('the hours with water enough', () => {
  it('are all where there is just what is wanted, and none where there is a little less', () => {
    expect(
      depthWindows(
        height(() => 2),
        bar,
        span,
      ),
    ).toEqual({ open: [span], unknown: [] });
    expect(
      depthWindows(
        height(() => 1.99),
        bar,
        span,
      ),
    ).toEqual({ open: [], unknown: [] });
  });

  it('begin and end within a second of the edge, with water enough at both', () => {
    // A metre an hour up to 6 m and down again, so that 2 m are passed four hours before and after.
    for (let phase = 0; phase < 300; phase += 13.7) {
      const top = 6 * HOUR + phase;
      const tide = (seconds: number) => 6 - Math.abs(seconds - top) / HOUR;
      const { open } = depthWindows(height(tide), bar, span);
      expect(open).toHaveLength(1);
      const { from, to } = open[0]!;
      expect(tide(from)).toBeGreaterThanOrEqual(2 - 1e-9);
      expect(tide(to)).toBeGreaterThanOrEqual(2 - 1e-9);
      expect(from - (top - 4 * HOUR)).toBeLessThanOrEqual(1);
      expect(top + 4 * HOUR - to).toBeLessThanOrEqual(1);
    }
  });

  it('are found though they are hardly longer than the step of the search', () => {
    for (let at = 0; at < 600; at += 50) {
      const { open } = depthWindows(
        height((s) => (s > HOUR + at && s < HOUR + at + 301 ? 3 : 0)),
        bar,
        span,
      );
      expect(open).toHaveLength(1);
    }
  });

  it('are two with a shut time between where the tide falls away in the middle', () => {
    const { open, unknown } = depthWindows(
      height((s) => 1 + Math.abs(s - 6 * HOUR) / HOUR),
      bar,
      span,
    );
    expect(unknown).toEqual([]);
    expect(open.map(({ from, to }) => [Math.round(from / MINUTE), Math.round(to / MINUTE)])).toEqual([
      [0, 300],
      [420, 720],
    ]);
  });

  it('are found in a span shorter than the step, also when they end in its last minutes', () => {
    const until = height((s) => (s <= 100 ? 3 : 0));
    const { open } = depthWindows(until, bar, { from: 0, to: 2 * MINUTE });
    expect(open).toHaveLength(1);
    expect(open[0]!.from).toBe(0);
    expect(open[0]!.to).toBeGreaterThan(98.9);
    expect(open[0]!.to).toBeLessThanOrEqual(100);
    const { open: later } = depthWindows(
      height((s) => (s <= 700 ? 3 : 0)),
      bar,
      { from: 0, to: 11 * MINUTE + 50 },
    );
    expect(later[0]!.to).toBeGreaterThan(698.9);
    expect(later[0]!.to).toBeLessThanOrEqual(700);
  });

  it('that nobody knows are no open ones: the edge leaves the doubt its second', () => {
    const known: HeightAt = (s) =>
      s >= HOUR && s <= 2 * HOUR ? { known: true, height: 3 } : { known: false, why: 'no-height' };
    const { open, unknown } = depthWindows(known, bar, { from: 0, to: 3 * HOUR });
    expect(open).toHaveLength(1);
    expect(open[0]!.from).toBeGreaterThanOrEqual(HOUR);
    expect(open[0]!.to).toBeLessThanOrEqual(2 * HOUR);
    expect(unknown.map(({ from, to }) => [from, to])).toEqual([
      [0, open[0]!.from],
      [open[0]!.to, 3 * HOUR],
    ]);
  });
});
