import { describe, expect, it } from 'vitest';
import { overGround } from '../../../src/core/track/over-ground.ts';
import { pieceOf } from '../../../src/core/track/piece.ts';
import { MORNING, type Part, type Recording, recorded } from './made-tracks.ts';

function found(parts: readonly Part[], recording?: Recording) {
  const track = recorded(parts, recording);
  return overGround(pieceOf(track, 0, track.points.length - 1));
}

describe('overGround', () => {
  it('tells means of ten seconds every five, from half a window after the first point to half one before the last', () => {
    const { start, speed, headingDeg } = found([{ seconds: 30, speed: 6, headingDeg: 90 }])!;
    expect(start).toBe(MORNING + 5);
    expect(speed.length).toBe(5);
    for (const each of speed) expect(each).toBeCloseTo(6, 4);
    for (const each of headingDeg) expect(each).toBeCloseTo(90, 3);
  });

  it('asks at whole fives of a clock, whenever the recording began', () => {
    const { start, speed } = found([{ seconds: 30, speed: 6, headingDeg: 90 }], { start: MORNING + 2 })!;
    expect(start).toBe(MORNING + 10);
    // The last window ends at 30 s; the points do at 32.
    expect(speed.length).toBe(4);
  });

  it('has one answer for a recording of ten seconds and none for a shorter one', () => {
    expect(found([{ seconds: 10, speed: 6, headingDeg: 90 }])!.speed.length).toBe(1);
    expect(found([{ seconds: 9, speed: 6, headingDeg: 90 }])).toBeUndefined();
    expect(overGround(pieceOf(recorded([{ seconds: 9, speed: 1, headingDeg: 0 }]), 0, -1))).toBeUndefined();
  });

  it('takes the mean of a change within the window', () => {
    const { speed } = found([
      { seconds: 10, speed: 4, headingDeg: 90, change: 0 },
      { seconds: 10, speed: 8, headingDeg: 90, change: 0 },
    ])!;
    expect([...speed].map((each) => Math.round(each * 1000) / 1000)).toEqual([4, 6, 8]);
  });

  it('counts the heading on through north and through south', () => {
    const turning = (from: number, to: number) =>
      found([
        { seconds: 10, speed: 6, headingDeg: from, change: 0 },
        { seconds: 10, speed: 6, headingDeg: to, change: 0 },
      ])!.headingDeg;
    const north = turning(-20, 20);
    expect(north[2]! - north[0]!).toBeCloseTo(40, 3);
    const south = turning(160, 200);
    expect(south[2]! - south[0]!).toBeCloseTo(40, 3);
    expect(south[0]).toBeCloseTo(160, 3);
    const against = turning(200, 160);
    expect(against[2]! - against[0]!).toBeCloseTo(-40, 3);
  });

  it('goes straight and evenly between fixes ten seconds apart', () => {
    const { speed } = found([{ seconds: 40, speed: 6, headingDeg: 200 }], { every: 8 })!;
    expect(speed.length).toBe(7);
    for (const each of speed) expect(each).toBeCloseTo(6, 4);
  });
});
