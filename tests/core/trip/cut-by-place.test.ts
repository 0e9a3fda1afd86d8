import { describe, expect, it } from 'vitest';
import type { Stretch } from '../../../src/core/route/split-legs.ts';
import { cutByPlace } from '../../../src/core/trip/cut-by-place.ts';

const from = { lat: 46, lon: -32 };
const to = { lat: 46.03, lon: -32 };
const stretch = (distance: number, rest: Partial<Stretch> = {}): Stretch => ({
  leg: 0,
  from,
  to,
  part: 'out',
  distance,
  trackDeg: 0,
  speed: 3,
  stop: 0,
  ...rest,
});
const lengths = (...stretches: Stretch[]) => cutByPlace(stretches).map(({ distance }) => distance);

describe('a stretch cut for what changes along it', () => {
  it('has pieces of at most 1500 m, all as long as each other', () => {
    expect(lengths(stretch(1500))).toEqual([1500]);
    expect(lengths(stretch(1502))).toEqual([751, 751]);
    expect(lengths(stretch(3000), stretch(600))).toEqual([1500, 1500, 600]);
    expect(lengths(stretch(0))).toEqual([0]);
  });

  it('of a long trip has longer pieces, so that there are 120 of them', () => {
    // Up to 180 km pieces of 1500 m come to no more than 120.
    expect(lengths(stretch(180_000))).toHaveLength(120);
    expect(lengths(stretch(360_000))).toHaveLength(120);
    expect(lengths(stretch(180_000), stretch(180_000))).toEqual(Array(120).fill(3000));
  });

  it('runs on without a gap, numbered along the whole trip', () => {
    const pieces = cutByPlace([stretch(3000), stretch(3100, { leg: 1, from: to, to: from, part: 'home' })]);
    expect(pieces.map(({ spot }) => spot)).toEqual([0, 1, 2, 3, 4]);
    expect(pieces.map(({ leg }) => leg)).toEqual([0, 0, 1, 1, 1]);
    const ends = [from.lat, 46.015, to.lat, 46.02, 46.01, from.lat];
    for (const [i, piece] of pieces.entries()) {
      expect(piece.from.lat).toBeCloseTo(ends[i]!, 6);
      expect(piece.to.lat).toBeCloseTo(ends[i + 1]!, 6);
      expect(piece.from.lon).toBeCloseTo(-32, 9);
    }
  });

  it('stops and fills up at its end alone', () => {
    const pieces = cutByPlace([stretch(4000, { stop: 600, refill: 0.9 })]);
    expect(pieces.map(({ stop }) => stop)).toEqual([0, 0, 600]);
    expect(pieces.map((piece) => 'refill' in piece)).toEqual([false, false, true]);
    expect(pieces[2]!.refill).toBe(0.9);
    // To be filled to nothing is a word too.
    expect(cutByPlace([stretch(1, { refill: 0 })])[0]!.refill).toBe(0);
  });
});
