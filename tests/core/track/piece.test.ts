import { describe, expect, it } from 'vitest';
import { indexAt, pieceOf, shareAt } from '../../../src/core/track/piece.ts';
import { MORNING, recorded } from './made-tracks.ts';

describe('pieceOf', () => {
  const track = recorded([
    { seconds: 10, speed: 5, headingDeg: 90, change: 0 },
    { seconds: 10, speed: 3, headingDeg: 180, change: 0 },
  ]);

  it('lays a track out in metres east and north of its first point', () => {
    const { first, time, east, north } = pieceOf(track, 0, 20);
    expect([first, time.length, time[0], time[20]]).toEqual([0, 21, MORNING, MORNING + 20]);
    expect([east[0], north[0]]).toEqual([0, 0]);
    expect(east[10]).toBeCloseTo(50, 3);
    expect(north[10]).toBeCloseTo(0, 3);
    expect(east[20]).toBeCloseTo(50, 3);
    expect(north[20]).toBeCloseTo(-30, 3);
  });

  it('begins anew at the first point of a part, and counts both ends in', () => {
    const { first, time, east, north } = pieceOf(track, 8, 12);
    expect([first, time.length, east[0], north[0]]).toEqual([8, 5, 0, 0]);
    expect(east[4]).toBeCloseTo(10, 3);
    expect(north[4]).toBeCloseTo(-6, 3);
  });

  it('has no points where the last lies before the first', () => {
    expect(pieceOf(track, 5, 4).time.length).toBe(0);
    expect(pieceOf(track, 5, 2).time.length).toBe(0);
    expect(pieceOf(track, 5, 5).time.length).toBe(1);
  });
});

describe('indexAt and shareAt', () => {
  const time = Float64Array.of(10, 12, 16);

  it('find the point at or before a moment, and how far on towards the next it is', () => {
    expect([9, 10, 11, 12, 15.9, 16, 99].map((at) => indexAt(time, at))).toEqual([-1, 0, 0, 1, 1, 2, 2]);
    expect([10, 11, 11.5].map((at) => shareAt(time, 0, at))).toEqual([0, 0.5, 0.75]);
    expect(shareAt(time, 1, 13)).toBe(0.25);
  });

  it('stay at the last point', () => {
    expect([16, 99].map((at) => shareAt(time, 2, at))).toEqual([0, 0]);
    expect(indexAt(new Float64Array(), 5)).toBe(-1);
  });
});
