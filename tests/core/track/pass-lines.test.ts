import { describe, expect, it } from 'vitest';
import { destination } from '../../../src/core/route/distance.ts';
import { passLines } from '../../../src/core/track/pass-lines.ts';
import type { Stretch } from '../../../src/core/track/shapes.ts';
import { pass } from './made-tracks.ts';

const out = pass(0, 60);
const together = (...sailed: Stretch[]) => passLines(sailed).map((line) => line.length);
/** Back over the same ground, begun so long after the end of the first, and moved aside. */
const back = (pause: number, headingDeg = 260, aside = 0): Stretch =>
  pass(60 + pause, 60, { headingDeg }, destination(out.finish, headingDeg + 90, aside));

describe('passLines', () => {
  it('has passes follow each other within twenty minutes, from the end of one to the start of the next', () => {
    expect(together(out, back(1200))).toEqual([2]);
    expect(together(out, back(1201))).toEqual([1, 1]);
  });

  it('lets courses made good differ by 20 degrees, the same way or the other', () => {
    expect(together(out, back(30, 240))).toEqual([2]);
    expect(together(out, back(30, 239))).toEqual([1, 1]);
    expect(together(out, back(30, 280))).toEqual([2]);
    expect(together(out, back(30, 281))).toEqual([1, 1]);
    expect(together(out, pass(90, 60, { headingDeg: 100 }))).toEqual([2]);
    expect(together(out, pass(90, 60, { headingDeg: 101 }))).toEqual([1, 1]);
  });

  it('lets short passes lie 600 m apart from middle to middle', () => {
    expect(together(out, back(30, 260, 599))).toEqual([2]);
    expect(together(out, back(30, 260, 601))).toEqual([1, 1]);
  });

  it('lets long passes lie apart by the length of the longer, whichever that is', () => {
    /** Sailed abreast, 1100 m apart from middle to middle. */
    const abreast = (first: number, second: number) => {
      const one = pass(0, first);
      const along = 6 * ((first - second) / 2);
      return together(one, pass(300, second, {}, destination(destination(one.begin, 80, along), 170, 1100)));
    };
    expect(abreast(200, 50)).toEqual([2]);
    expect(abreast(50, 200)).toEqual([2]);
    expect(abreast(180, 180)).toEqual([1, 1]);
  });

  it('puts a pass to the line it goes on, past one sailed across in between, in order of time', () => {
    const across = pass(90, 60, { headingDeg: 170 });
    const lines = passLines([back(200), across, out]);
    expect(lines.map((line) => line.map(({ headingDeg }) => headingDeg))).toEqual([[80, 260], [170]]);
  });
});
