import { describe, expect, it } from 'vitest';
import { DEGREE, HOUR } from '../../../src/core/units/convert.ts';
import { secondsOf } from '../../../src/core/water/clock.ts';
import type { StreamPlace } from '../../../src/core/water/shapes.ts';
import { spreadStream } from '../../../src/core/water/spread-stream.ts';
import { reachOf, streamAt, streamTable } from '../../../src/core/water/streams.ts';
import { tide } from './made-streams.ts';

const narrows = {
  flood: { setDeg: 60, springs: 2, neaps: 1 },
  ebb: { setDeg: 240, springs: 3, neaps: 1.4 },
  turns: 0,
};
const highWater = secondsOf(tide.highWater);
const spot = { lat: 46, lon: -32 };

function along(place: StreamPlace, hour: number, courseDeg: number): number {
  const table = streamTable([place], tide);
  const reach = reachOf(table, spot, () => false);
  const found = streamAt(table, reach, { seconds: highWater + hour * HOUR, courseDeg });
  if (!found.known) throw new Error(found.why);
  return found.stream.rate * Math.cos((found.stream.setDeg - courseDeg) * DEGREE);
}

describe('spreadStream', () => {
  it('floods before high water, ebbs after it, by the rule of 50 and 90', () => {
    const { firstHour, springs, neaps } = spreadStream(narrows);
    expect(firstHour).toBe(-6);
    const rates = springs.map(({ rate }) => Math.round(rate * 1e9) / 1e9);
    expect(rates).toEqual([0, 1, 1.8, 2, 1.8, 1, 0, 1.5, 2.7, 3, 2.7, 1.5, 0]);
    expect(springs.map(({ setDeg }) => setDeg).slice(1, 6)).toEqual([60, 60, 60, 60, 60]);
    expect(springs.map(({ setDeg }) => setDeg).slice(7, 12)).toEqual([240, 240, 240, 240, 240]);
    expect(neaps[9]).toEqual({ setDeg: 240, rate: 1.4 });
  });

  it('keeps what it was made of, so that it is known for a guess', () => {
    expect(spreadStream(narrows).spread).toBe(narrows);
  });

  it('is alike whether it turns six hours before high water or six after: one tide apart', () => {
    const rates = (turns: number) => {
      const { springs, neaps } = spreadStream({ ...narrows, turns });
      return [...springs, ...neaps].map(({ setDeg, rate }) => [setDeg, Math.round(rate * 1e9) / 1e9]);
    };
    expect(rates(-6)).toEqual(rates(6));
    expect(rates(-5.5)).not.toEqual(rates(5.5));
  });

  it('is nowhere less than the rule, also where it turns between the hours', () => {
    // Half an hour after slack a quarter by the rule, and 0.2588 by the sine of 15 degrees.
    const { springs, neaps } = spreadStream({ ...narrows, turns: 0.5 });
    expect(springs[7]!.rate).toBeCloseTo(3 * Math.sin(Math.PI / 12), 9);
    expect(neaps[7]!.rate).toBeCloseTo(1.4 * Math.sin(Math.PI / 12), 9);
    // Half an hour before it the flood has as much.
    expect(neaps[6]).toEqual({ setDeg: 60, rate: expect.closeTo(Math.sin(Math.PI / 12), 9) });
  });

  it('turns when it is told to', () => {
    const { springs } = spreadStream({ ...narrows, turns: 2 });
    expect(springs[8]!.rate).toBe(0);
    expect(springs[11]).toEqual({ setDeg: 240, rate: 3 });
    // Two hours into the tide it is still the ebb of the tide before.
    expect(springs[0]).toMatchObject({ setDeg: 240 });
    expect(springs[0]!.rate).toBeCloseTo(2.7, 9);
  });

  it('turns before high water too, half a tide and more', () => {
    const { springs } = spreadStream({ ...narrows, turns: -4 });
    expect(springs.map(({ rate }) => Math.round(rate * 1e9) / 1e9)).toEqual([
      1.8, 1, 0, 1.5, 2.7, 3, 2.7, 1.5, 0, 1, 1.8, 2, 1.8,
    ]);
    expect(springs.map(({ setDeg }) => setDeg)).toEqual([60, 60, ...Array(6).fill(240), ...Array(5).fill(60)]);
  });

  it('never falls below a sine between slacks', () => {
    spreadStream({ ...narrows, turns: 1 }).springs.forEach(({ setDeg, rate }, i) => {
      const most = setDeg === 60 ? 2 : 3;
      expect(rate).toBeGreaterThanOrEqual(most * Math.abs(Math.sin(((i - 7) * Math.PI) / 6)) - 1e-9);
    });
  });
});

describe('a plan with a stream spread by rule', () => {
  const place = { name: 'Narrows', ...spot, ...spreadStream(narrows) };
  const { spread: _, ...trusted } = place;

  it('never gains by it, and never loses less than the hours as they are', () => {
    for (let hour = -6; hour <= 6; hour += 0.25) {
      for (let course = 0; course < 360; course += 15) {
        const guessed = along(place, hour, course);
        expect(guessed).toBeLessThanOrEqual(1e-9);
        expect(guessed).toBeLessThanOrEqual(along(trusted, hour, course) + 1e-9);
      }
    }
  });

  it('meets the foul stream an hour early', () => {
    expect(along(place, -1, 60)).toBeCloseTo(0, 9);
    expect(along(place, 0, 60)).toBeCloseTo(along(trusted, 1, 60), 9);
    expect(along(trusted, 1, 60)).toBeLessThan(-1);
  });
});
