import { describe, expect, it } from 'vitest';
import { measuredTrack } from '../../../src/core/track/measured-track.ts';
import { stretchOf } from '../../../src/core/track/stretch.ts';
import { MORNING, type Part, type Recording, recorded } from './made-tracks.ts';

/** All of a recording as one stretch. */
function whole(parts: readonly Part[], recording?: Recording, breaks: readonly number[] = []) {
  return stretchOf({ ...recorded(parts, recording), breaks }, { start: 0, end: Infinity });
}
const part = (seconds: number, speed: number, headingDeg = 90, change = 0): Part => ({
  seconds,
  speed,
  headingDeg,
  change,
});

describe('stretchOf', () => {
  it('goes from the mean place of the first third to that of the last, of a short stretch', () => {
    // 4 m/s for 4 s, then 8 m/s: 20 m on in the mean of the first 8 s, 144 m in that of the last 8 of 24.
    expect(whole([part(4, 4), part(20, 8)])!.speed).toBeCloseTo((144 - 20) / 16, 3);
  });

  it('takes ten seconds at each end of a longer one', () => {
    // 27.2 m on in the mean of the first 10 s, 16 + 8 x 51 in that of the last 10 of 60.
    expect(whole([part(4, 4), part(56, 8)])!.speed).toBeCloseTo((424 - 27.2) / 50, 3);
  });

  it('tells of 15 s and three fixes, not of less', () => {
    expect(whole([part(15, 6)])).toBeDefined();
    expect(whole([part(14, 6)])).toBeUndefined();
    expect(whole([part(20, 6)], { every: 10 })).toMatchObject({ first: 0, last: 2 });
    expect(whole([part(20, 6)], { every: 20 })).toBeUndefined();
  });

  it('knows a pass without scatter as well as a receiver wanders from end to end', () => {
    expect(whole([part(100, 6)])!.deviation).toBeCloseTo(Math.SQRT2 / 100, 5);
    expect(whole([part(15, 6)])!.deviation).toBeCloseTo(Math.SQRT2 / 15, 5);
  });

  it('doubts by the scatter of ten-second means that do not overlap', () => {
    // 5.8, 6.2, 5.8, 6.2: a variance of 4 x 0.04 over 3, of their mean a quarter of it.
    const { deviation } = whole([part(10, 5.8), part(10, 6.2), part(10, 5.8), part(10, 6.2)])!;
    expect(deviation).toBeCloseTo(Math.sqrt(0.16 / 3 / 4 + 2 / 40 ** 2), 4);
    // Two means alone: each 0.2 from the middle.
    expect(whole([part(10, 5.8), part(10, 6.2)])!.deviation).toBeCloseTo(Math.sqrt(0.08 / 2 + 2 / 20 ** 2), 4);
  });

  it('tells how much way the boat gathers, and is not steady beyond 0.4 m/s', () => {
    const gathering = (to: number) => whole([part(1, 5), part(99, to, 90, 99)])!;
    // From the middle of the first ten seconds to that of the last 90 s pass.
    expect(gathering(5.4).trend).toBeCloseTo((0.4 / 99) * 90, 2);
    expect(gathering(5.4).steady).toBe(true);
    expect(gathering(5.5).trend).toBeCloseTo((0.5 / 99) * 90, 2);
    expect(gathering(5.5).steady).toBe(false);
    expect(whole([part(1, 5.5), part(99, 5, 90, 99)])).toMatchObject({ steady: false });
  });

  it('is steady while speed or heading wander little, not while either wanders far', () => {
    const to = (speed: number, headingDeg: number) =>
      whole([part(30, 6), part(30, speed, headingDeg), part(30, 6)])!.steady;
    expect(to(6.5, 90)).toBe(true);
    expect(to(6.7, 90)).toBe(false);
    expect(to(6, 109)).toBe(true);
    expect(to(6, 111)).toBe(false);
    expect(to(6, 69)).toBe(false);
  });

  it('looks at nothing before its beginning or after its end', () => {
    const track = recorded([part(60, 3), part(60, 6), part(60, 9)]);
    const held = stretchOf(track, { start: MORNING + 60, end: MORNING + 120 })!;
    expect(held.steady).toBe(true);
    expect(held.deviation).toBeCloseTo(Math.SQRT2 / 60, 5);
    expect(stretchOf(track, { start: MORNING + 55, end: MORNING + 120 })!.steady).toBe(false);
    expect(stretchOf(track, { start: MORNING + 60, end: MORNING + 125 })!.steady).toBe(false);
  });

  it('begins its ten-second means where it begins itself, though the last fix lies before', () => {
    // Fixes every 20 s; from 50 s on, means that do not overlap: one of 4 m/s, six of 6 m/s.
    const track = recorded([part(60, 4), part(60, 6)], { every: 20 });
    const { first, deviation } = stretchOf(track, { start: MORNING + 50, end: MORNING + 120 })!;
    expect(first).toBe(2);
    const variance = (16 + 6 * 36 - (4 + 6 * 6) ** 2 / 7) / 6;
    expect(deviation).toBeCloseTo(Math.sqrt(variance / 7 + 2 / 70 ** 2), 4);
  });

  it('is not steady drifting at under half a metre per second', () => {
    expect(whole([part(60, 0.51)])!.steady).toBe(true);
    expect(whole([part(60, 0.49)])!.steady).toBe(false);
  });

  it('is not steady over an interruption, which may lie at its first point but not at its last', () => {
    const steady = (at: number) => {
      const track = { ...recorded([part(100, 6)]), breaks: [at] };
      return stretchOf(track, { start: MORNING + 20, end: MORNING + 60 })!.steady;
    };
    expect([19, 20, 21, 60, 61].map(steady)).toEqual([true, true, false, false, true]);
  });

  it('begins and ends between fixes where it is asked to', () => {
    const track = recorded([part(80, 6, 0)], { every: 4 });
    const found = stretchOf(track, { start: MORNING + 10, end: MORNING + 41 })!;
    expect([found.first, found.last]).toEqual([2, 11]);
    expect(found.distance).toBeCloseTo(6 * 31, 3);
    expect(found.begin.lat).toBeCloseTo((track.points[2]!.lat + track.points[3]!.lat) / 2, 9);
    expect(stretchOf(track, { start: MORNING + 8, end: MORNING + 40 })).toMatchObject({ first: 2, last: 10 });
  });

  it('tells headings as a compass does', () => {
    for (const headingDeg of [10, 100, 190, 350]) {
      expect(whole([part(60, 6, headingDeg)])!.headingDeg).toBeCloseTo(headingDeg, 3);
    }
  });
});

describe('measuredTrack', () => {
  it('measures each piece between interruptions by itself, those of at least ten seconds', () => {
    const track = { ...recorded([part(100, 6)]), breaks: [30, 35] };
    const { pieces, time, noise } = measuredTrack(track);
    expect(pieces.map(({ start, speed }) => [start - MORNING, speed.length])).toEqual([
      [5, 4],
      [40, 12],
    ]);
    expect([time.length, time[100]]).toEqual([101, MORNING + 100]);
    expect(noise).toBeLessThan(1e-6);
  });
});
