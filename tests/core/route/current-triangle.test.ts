import { describe, expect, it } from 'vitest';
import { courseToSteer, findStream, trackMade } from '../../../src/core/route/current-triangle.ts';

describe('courseToSteer', () => {
  it('steers the track itself in slack water', () => {
    expect(courseToSteer(123, 4, { setDeg: 0, rate: 0 })).toEqual({
      possible: true,
      steerDeg: 123,
      speedOverGround: 4,
    });
  });

  it('adds a fair stream and takes off a foul one', () => {
    expect(courseToSteer(90, 3, { setDeg: 90, rate: 1 })).toMatchObject({ steerDeg: 90, speedOverGround: 4 });
    expect(courseToSteer(90, 3, { setDeg: 270, rate: 1 })).toMatchObject({ possible: true, speedOverGround: 2 });
  });

  it('turns up-stream, as the 3-4-5 triangle says', () => {
    const found = courseToSteer(0, 5, { setDeg: 90, rate: 3 });
    if (!found.possible) throw new Error('a boat of 5 crosses a stream of 3');
    expect(found.speedOverGround).toBeCloseTo(4, 12);
    expect(found.steerDeg).toBeCloseTo(360 - (Math.asin(3 / 5) * 180) / Math.PI, 9);
  });

  it('makes no progress against a stream of its own speed', () => {
    expect(courseToSteer(45, 2, { setDeg: 225, rate: 2 })).toEqual({ possible: false, why: 'no-progress' });
    expect(courseToSteer(45, 2, { setDeg: 225, rate: 3 })).toEqual({ possible: false, why: 'no-progress' });
  });

  it('cannot hold a track across a stream faster than itself', () => {
    expect(courseToSteer(0, 2, { setDeg: 90, rate: 2.1 })).toEqual({ possible: false, why: 'cross' });
  });

  it('does not move with the engine off in slack water', () => {
    expect(courseToSteer(0, 0, { setDeg: 0, rate: 0 })).toEqual({ possible: false, why: 'no-progress' });
  });

  it('drifts along its track with the engine off and the stream right behind', () => {
    expect(courseToSteer(0, 0, { setDeg: 0, rate: 1 })).toEqual({ possible: true, steerDeg: 0, speedOverGround: 1 });
  });
});

describe('trackMade and findStream', () => {
  it('undo each other', () => {
    const stream = { setDeg: 200, rate: 1.2 };
    const found = findStream(310, 3, trackMade(310, 3, stream));
    expect(found.setDeg).toBeCloseTo(200, 9);
    expect(found.rate).toBeCloseTo(1.2, 12);
  });
});
