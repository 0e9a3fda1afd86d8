import { describe, expect, it } from 'vitest';
import { HOUR } from '../../../src/core/units/convert.ts';
import { secondsOf } from '../../../src/core/water/clock.ts';
import { depthWindows } from '../../../src/core/water/depth-windows.ts';
import { heightByHighWater, heightByTurns } from '../../../src/core/water/tide-height.ts';
import { tide } from './made-streams.ts';

const noon = secondsOf(tide.highWater);
const turns = [
  { at: noon, height: 4 },
  { at: noon - 6 * HOUR, height: 1 },
  { at: noon + 6 * HOUR, height: 0.6 },
];

function height(of: ReturnType<typeof heightByTurns>, at: number): number {
  const found = of(at);
  if (!found.known) throw new Error(found.why);
  return found.height;
}

describe('heightByTurns', () => {
  const of = heightByTurns(turns);

  it('meets every turn and lies halfway at half tide', () => {
    for (const turn of turns) expect(height(of, turn.at)).toBeCloseTo(turn.height, 12);
    expect(height(of, noon - 3 * HOUR)).toBeCloseTo(2.5, 12);
    expect(height(of, noon + 3 * HOUR)).toBeCloseTo(2.3, 12);
  });

  it('is unknown before the first turn and after the last', () => {
    expect(of(noon - 6.1 * HOUR)).toEqual({ known: false, why: 'before-first', until: noon - 6 * HOUR });
    expect(of(noon + 6.1 * HOUR)).toEqual({ known: false, why: 'after-last', until: noon + 6 * HOUR });
    expect(heightByTurns([])(noon)).toEqual({ known: false, why: 'no-height' });
  });
});

describe('the ends of what is told of the tide', () => {
  it('are known themselves: the first and the last turn, and thirteen hours from a high water', () => {
    const of = heightByTurns(turns);
    expect(of(noon - 6 * HOUR)).toEqual({ known: true, height: 1 });
    expect(of(noon - 6 * HOUR - 1).known).toBe(false);
    expect(of(noon + 6 * HOUR + 1).known).toBe(false);
    const alone = heightByTurns([{ at: noon, height: 4 }]);
    expect(alone(noon)).toEqual({ known: true, height: 4 });
    const day = heightByHighWater(tide);
    for (const sign of [-1, 1]) {
      expect(day(noon + sign * 13 * HOUR).known).toBe(true);
      expect(day(noon + sign * (13 * HOUR + 1))).toMatchObject({ known: false, until: noon + sign * 13 * HOUR });
    }
  });
});

describe('heightByHighWater', () => {
  const of = heightByHighWater(tide);

  it('falls by the range in a quarter of a lunar day, and rises again', () => {
    expect(height(of, noon)).toBe(4);
    expect(height(of, noon + 372.6 * 60)).toBeCloseTo(1, 12);
    expect(height(of, noon + 2 * 372.6 * 60)).toBeCloseTo(4, 12);
    expect(height(of, noon - 100)).toBe(height(of, noon + 100));
  });

  it('is unknown beyond 13 hours and without the height of high water', () => {
    expect(of(noon + 13.1 * HOUR)).toEqual({ known: false, why: 'far-from-high-water', until: noon + 13 * HOUR });
    expect(heightByHighWater({ ...tide, highWaterHeight: undefined })(noon)).toEqual({
      known: false,
      why: 'no-height',
    });
  });
});

describe('depthWindows', () => {
  const day = { from: noon - 6 * HOUR, to: noon + 6 * HOUR };

  it('opens a bar that dries at half tide for the hours about high water', () => {
    // Rising from 1 to 4 m, 2.5 m is passed three hours before high water; falling to 0.6 m, a little less after.
    const { open, unknown } = depthWindows(heightByTurns(turns), { dries: 2, depth: 0.5 }, day);
    expect(unknown).toEqual([]);
    expect(open).toHaveLength(1);
    expect(Math.abs(open[0]!.from - (noon - 3 * HOUR))).toBeLessThan(2);
    const fallen = (Math.acos(1 - (2 * 1.5) / 3.4) / Math.PI) * 6 * HOUR;
    expect(Math.abs(open[0]!.to - (noon + fallen))).toBeLessThan(2);
  });

  it('is open all the time over a depth that always suffices and never over one that never does', () => {
    const of = heightByTurns(turns);
    expect(depthWindows(of, { dries: -2, depth: 0.5 }, day).open).toEqual([day]);
    expect(depthWindows(of, { dries: 4, depth: 0.5 }, day).open).toEqual([]);
  });

  it('calls hours of no known tide unknown, not open', () => {
    const wide = { from: noon - 8 * HOUR, to: noon + 6 * HOUR };
    const { open, unknown } = depthWindows(heightByTurns(turns), { dries: -2, depth: 0.5 }, wide);
    expect(unknown).toHaveLength(1);
    expect(unknown[0]!.from).toBe(wide.from);
    expect(open[0]!.from).toBeGreaterThanOrEqual(noon - 6 * HOUR);
    expect(open[0]!.from).toBeLessThan(noon - 6 * HOUR + 2);
  });
});
