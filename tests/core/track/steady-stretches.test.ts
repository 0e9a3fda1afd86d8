import { describe, expect, it } from 'vitest';
import { findingStretches, steadyStretches } from '../../../src/core/track/steady-stretches.ts';
import { stretchOf } from '../../../src/core/track/stretch.ts';
import { MORNING, type Part, recorded } from './made-tracks.ts';

/** A trial by turns: two speeds out and back, turns between, then slowly home. */
const TRIAL: readonly Part[] = [
  { seconds: 60, speed: 0, headingDeg: 80 },
  { seconds: 90, speed: 6.5, headingDeg: 80 },
  { seconds: 20, speed: 3, headingDeg: 170 },
  { seconds: 90, speed: 5.5, headingDeg: 260 },
  { seconds: 40, speed: 2, headingDeg: 80 },
  { seconds: 90, speed: 8.5, headingDeg: 80 },
  { seconds: 30, speed: 3, headingDeg: 170 },
  { seconds: 90, speed: 7.5, headingDeg: 260 },
];
const PASSES = [
  { from: 60, speed: 6.5, headingDeg: 80 },
  { from: 170, speed: 5.5, headingDeg: 260 },
  { from: 300, speed: 8.5, headingDeg: 80 },
  { from: 420, speed: 7.5, headingDeg: 260 },
];

describe('steadyStretches', () => {
  it('finds every pass of a trial, at its speed and heading, within the time it was held', () => {
    const found = steadyStretches(recorded(TRIAL));
    expect(found.length).toBe(4);
    found.forEach(({ start, end, speed, headingDeg, trend, steady }, at) => {
      const pass = PASSES[at]!;
      expect(Math.abs(speed - pass.speed)).toBeLessThan(0.01);
      expect(Math.abs(headingDeg - pass.headingDeg)).toBeLessThan(0.3);
      expect(Math.abs(trend)).toBeLessThan(0.1);
      expect(steady).toBe(true);
      // The change takes 8 s; what is left of it within the windows does not count as settled.
      expect(start - MORNING).toBeGreaterThanOrEqual(pass.from + 5);
      expect(end - MORNING).toBeLessThanOrEqual(pass.from + 90);
      expect(end - start).toBeGreaterThanOrEqual(65);
    });
  });

  it('finds nothing in short spells late in a day that it does not find early', () => {
    const spells: Part[] = [6, 8, 5, 7].flatMap((speed) => [
      { seconds: 20, speed, headingDeg: 80 },
      { seconds: 20, speed: speed - 3, headingDeg: 170 },
    ]);
    expect(steadyStretches(recorded(spells))).toEqual([]);
    const found = steadyStretches(recorded([...TRIAL, ...spells]));
    expect(found).toHaveLength(4);
    expect(found.at(-1)!.end - MORNING).toBeLessThan(520);
  });

  it('finds them in the noise of a plain receiver, and knows how well', () => {
    for (let seed = 1; seed <= 20; seed++) {
      const found = steadyStretches(recorded(TRIAL, { noise: 1.5, seed }));
      expect(found.length).toBe(4);
      found.forEach(({ speed, deviation }, at) => {
        expect(Math.abs(speed - PASSES[at]!.speed)).toBeLessThan(4 * deviation);
        expect(deviation).toBeLessThan(0.15);
      });
    }
  });

  it('finds them whether a fix comes every half second or every five', () => {
    for (const every of [0.5, 1, 2, 5]) {
      const speeds = steadyStretches(recorded(TRIAL, { every })).map(({ speed }) => speed);
      expect(speeds.length).toBe(4);
      speeds.forEach((speed, at) => {
        expect(Math.abs(speed - PASSES[at]!.speed)).toBeLessThan(0.05);
      });
    }
  });

  it('finds nothing where the boat gathers way all the time, turns in circles, drifts or lies still', () => {
    const steadily: Part[] = [
      { seconds: 1, speed: 1, headingDeg: 80 },
      { seconds: 800, speed: 9, headingDeg: 80, change: 800 },
    ];
    expect(steadyStretches(recorded(steadily))).toEqual([]);
    const circles = Array.from({ length: 40 }, (_, turn) => ({
      seconds: 10,
      speed: 4,
      headingDeg: turn * 60,
      change: 10,
    }));
    expect(steadyStretches(recorded(circles))).toEqual([]);
    expect(steadyStretches(recorded([{ seconds: 600, speed: 0.4, headingDeg: 80 }]))).toEqual([]);
    expect(steadyStretches(recorded([{ seconds: 600, speed: 0, headingDeg: 0 }], { noise: 1.5 }))).toEqual([]);
  });

  it('asks for 40 s unless told otherwise', () => {
    const track = recorded([
      { seconds: 30, speed: 0, headingDeg: 80 },
      { seconds: 55, speed: 6, headingDeg: 80, change: 1 },
      { seconds: 30, speed: 0, headingDeg: 80 },
    ]);
    expect(steadyStretches(track).length).toBe(1);
    expect(steadyStretches(track, 50)).toEqual([]);
  });

  it('never spans an interruption', () => {
    const straight = recorded([{ seconds: 300, speed: 6, headingDeg: 80 }]);
    const found = steadyStretches({ ...straight, breaks: [120] });
    expect(found.map(({ first, last }) => [first, last])).toEqual([
      [expect.any(Number), expect.any(Number)],
      [expect.any(Number), expect.any(Number)],
    ]);
    expect(found[0]!.last).toBeLessThan(120);
    expect(found[1]!.first).toBeGreaterThanOrEqual(120);
  });

  it('finds nothing in a track of no or few points', () => {
    expect(steadyStretches({ name: '', points: [], breaks: [] })).toEqual([]);
    expect(steadyStretches({ ...recorded(TRIAL), points: recorded(TRIAL).points.slice(0, 2) })).toEqual([]);
  });

  it('tells how far it is, piece by piece, and finds the same', () => {
    const track = { ...recorded(TRIAL), breaks: [160, 280, 400] };
    const finding = findingStretches(track);
    const shares: number[] = [];
    let step = finding.next();
    for (; !step.done; step = finding.next()) shares.push(step.value);
    expect(shares).toEqual([0.2, 0.4, 0.6, 0.8]);
    expect(step.value).toEqual(steadyStretches(track));
  });

  it('works across the 180th meridian as elsewhere', () => {
    const found = steadyStretches(recorded(TRIAL, { from: { lat: 46, lon: 179.999 } }));
    const elsewhere = steadyStretches(recorded(TRIAL));
    expect(found.map(({ start, end }) => [start, end])).toEqual(elsewhere.map(({ start, end }) => [start, end]));
    found.forEach(({ speed, distance }, at) => {
      expect(speed).toBeCloseTo(elsewhere[at]!.speed, 6);
      expect(distance).toBeCloseTo(elsewhere[at]!.distance, 3);
    });
  });

  it('finds the passes in twelve hours of 100,000 points', () => {
    const day = Array.from({ length: 240 }, (_, part) => ({
      seconds: 180,
      speed: 3 + ((part * 37) % 60) / 10,
      headingDeg: (part * 77) % 360,
      change: 10,
    }));
    const track = recorded(day, { every: 0.432, noise: 1 });
    expect(track.points.length).toBeGreaterThan(99_000);
    const found = steadyStretches(track);
    for (const [part, { speed }] of day.entries()) {
      const middle = MORNING + part * 180 + 95;
      const here = found.find(({ start, end }) => start < middle && end > middle);
      expect(Math.abs(here!.speed - speed)).toBeLessThan(0.2);
    }
  });
});

describe('stretchOf', () => {
  const track = recorded(TRIAL);

  it('says the same of a stretch found and of its ends given again', () => {
    for (const found of steadyStretches(track)) expect(stretchOf(track, found)).toEqual(found);
  });

  it('says when an end was moved into a turn', () => {
    const [pass] = steadyStretches(track);
    expect(stretchOf(track, { start: pass!.start + 10, end: pass!.end })).toMatchObject({ steady: true });
    expect(stretchOf(track, { start: pass!.start, end: pass!.end + 15 })).toMatchObject({ steady: false });
  });

  it('takes ends between fixes, and those outside back to the track', () => {
    const straight = recorded([{ seconds: 100, speed: 6, headingDeg: 90 }]);
    const part = stretchOf(straight, { start: MORNING + 10.5, end: MORNING + 60.25 })!;
    expect(part.distance).toBeCloseTo(6 * 49.75, 3);
    expect(part.speed).toBeCloseTo(6, 6);
    expect([part.first, part.last]).toEqual([10, 61]);
    expect(stretchOf(straight, { start: 0, end: Infinity })).toMatchObject({ start: MORNING, end: MORNING + 100 });
  });

  it('tells nothing of less than 15 s', () => {
    expect(stretchOf(track, { start: MORNING + 100, end: MORNING + 110 })).toBeUndefined();
    expect(stretchOf(track, { start: MORNING + 110, end: MORNING + 100 })).toBeUndefined();
    expect(stretchOf(track, { start: MORNING - 100, end: MORNING - 50 })).toBeUndefined();
    expect(stretchOf({ name: '', points: [], breaks: [] }, { start: 0, end: 100 })).toBeUndefined();
  });
});
