import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { secondsOf } from '../../src/core/water/clock.ts';
import { depthWindows } from '../../src/core/water/depth-windows.ts';
import { reachOf, streamAt, streamTable } from '../../src/core/water/streams.ts';
import { heightByTurns } from '../../src/core/water/tide-height.ts';
import { place, tide } from '../core/water/made-streams.ts';

const runs = { seed: 46, numRuns: 300 };
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const highWater = secondsOf(tide.highWater);
const open = () => false;
const spot = { lat: 46, lon: -32 };

const hours = fc.array(fc.record({ setDeg: between(0, 360), rate: fc.oneof(fc.constant(0), between(0, 3)) }), {
  minLength: 13,
  maxLength: 13,
});
type Hours = readonly { setDeg: number; rate: number }[];
const range = between(0, 7);

function along(lists: readonly Hours[], seconds: number, courseDeg: number, today: number): number {
  const places = lists.map((list, i) => place(`P${i}`, 46 + 0.01 * (1 + 0.3 * i), -32, list));
  const table = streamTable(places, { ...tide, range: today });
  const found = streamAt(table, reachOf(table, spot, open), { seconds, courseDeg });
  if (!found.known) throw new Error(found.why);
  return found.stream.rate * Math.cos(((found.stream.setDeg - courseDeg) * Math.PI) / 180);
}

describe('streamAt', () => {
  it('is continuous in time along the course, whichever place is taken', () => {
    fc.assert(
      fc.property(
        fc.tuple(hours, hours),
        between(-5.999, 5.999),
        between(0, 360),
        range,
        (lists, hour, course, today) => {
          const at = highWater + hour * 3600;
          const now = along(lists, at, course, today);
          // At most 2 x 3 m/s x 2.5 (range) within an hour, and a turn of a right angle.
          expect(Math.abs(along(lists, at + 1, course, today) - now)).toBeLessThan(0.02);
        },
      ),
      runs,
    );
  });

  it('is continuous over the full hours too', () => {
    fc.assert(
      fc.property(hours, fc.integer({ min: -5, max: 5 }), between(0, 360), range, (list, hour, course, today) => {
        const at = highWater + hour * 3600;
        const now = along([list], at, course, today);
        expect(along([list], at - 0.001, course, today)).toBeCloseTo(now, 4);
        expect(along([list], at + 0.001, course, today)).toBeCloseTo(now, 4);
      }),
      runs,
    );
  });

  it('never promises more help than any of the places in doubt', () => {
    fc.assert(
      fc.property(hours, hours, between(-6, 6), between(0, 360), (a, b, hour, course) => {
        const at = highWater + hour * 3600;
        expect(along([a, b], at, course, 3)).toBeLessThanOrEqual(along([a], at, course, 3) + 1e-12);
        expect(along([a, b], at, course, 3)).toBeLessThanOrEqual(along([b], at, course, 3) + 1e-12);
      }),
      runs,
    );
  });

  it('runs the same in the mirror', () => {
    const mirror = (list: Hours): Hours => list.map(({ setDeg, rate }) => ({ setDeg: (360 - setDeg) % 360, rate }));
    fc.assert(
      fc.property(hours, between(-6, 6), between(0, 360), range, (list, hour, course, today) => {
        const at = highWater + hour * 3600;
        const there = along([mirror(list)], at, 360 - course, today);
        expect(there).toBeCloseTo(along([list], at, course, today), 6);
      }),
      runs,
    );
  });
});

describe('heightByTurns', () => {
  const turns = fc
    .array(fc.record({ after: between(3, 9), height: between(0, 6) }), { minLength: 2, maxLength: 6 })
    .map((list) => {
      let at = highWater;
      return list.map(({ after, height }) => {
        at += after * 3600;
        return { at, height };
      });
    });

  it('stays between its extremes', () => {
    fc.assert(
      fc.property(turns, between(0, 1), (list, share) => {
        const of = heightByTurns(list);
        const first = list[0]!.at;
        const found = of(first + share * (list[list.length - 1]!.at - first));
        if (!found.known) throw new Error(found.why);
        const heights = list.map(({ height }) => height);
        expect(found.height).toBeGreaterThanOrEqual(Math.min(...heights) - 1e-9);
        expect(found.height).toBeLessThanOrEqual(Math.max(...heights) + 1e-9);
      }),
      runs,
    );
  });

  it('opens a bar no longer for a deeper boat, and only where there is water enough', () => {
    fc.assert(
      fc.property(turns, between(0, 4), between(0, 2), between(0, 1), (list, dries, depth, share) => {
        const of = heightByTurns(list);
        const span = { from: list[0]!.at, to: list[list.length - 1]!.at };
        const total = (deep: number) =>
          depthWindows(of, { dries, depth: deep }, span).open.reduce((sum, { from, to }) => sum + to - from, 0);
        expect(total(depth + 0.3)).toBeLessThanOrEqual(total(depth) + 2);
        for (const { from, to } of depthWindows(of, { dries, depth }, span).open) {
          const found = of(from + share * (to - from));
          // A shut spell shorter than the step of the search may hide; it is shallow.
          if (found.known) expect(found.height - dries).toBeGreaterThan(depth - 0.01);
        }
      }),
      { ...runs, numRuns: 60 },
    );
  });
});
