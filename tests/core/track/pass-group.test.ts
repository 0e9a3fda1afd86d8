import { describe, expect, it } from 'vitest';
import { passGroup, wayOf } from '../../../src/core/track/pass-group.ts';
import type { Stretch } from '../../../src/core/track/shapes.ts';
import { pass } from './made-tracks.ts';

/** By turns out and back, heading 80 and 260, a minute each with half a minute to turn. */
function byTurns(speeds: readonly number[], deviation = 0): Stretch[] {
  return speeds.map((speed, at) => pass(90 * at, 60, { speed, deviation, headingDeg: at % 2 === 0 ? 80 : 260 }));
}

describe('passGroup', () => {
  it('doubts one pass each way by what each was held to, and by what the tide may turn between them', () => {
    const out = pass(0, 60, { speed: 6.6, deviation: 0.12, headingDeg: 80 });
    const back = pass(900, 100, { speed: 5.4, deviation: 0.12, headingDeg: 260 });
    const found = passGroup([out, back])!;
    expect(found.speed).toBeCloseTo(6, 12);
    expect(found.stream.along).toBeCloseTo(0.6, 12);
    // Held to 0.05 m/s and read to 0.12: 0.13 each, half of each in the mean. From middle to middle 920 s.
    const held = 0.13 / Math.SQRT2;
    const turned = (((2 * Math.PI) / (12.4 * 3600)) * 920) / 2;
    expect(found.deviation).toBeCloseTo(Math.sqrt(held ** 2 + turned ** 2), 12);
    expect(found.stream.deviation).toBe(found.deviation);
  });

  it('takes the scatter of passes the same way for doubt where that is more', () => {
    // Out 6.7 and 6.3: each 0.2 from their mean, one degree of freedom left of three passes; weights 1-2-1.
    expect(passGroup(byTurns([6.7, 5.5, 6.3]))!.deviation).toBeCloseTo(Math.sqrt(0.08 * (6 / 16)), 12);
    // Each of four 0.1 from the mean its way, two degrees of freedom left; weights 1-3-3-1.
    expect(passGroup(byTurns([6.6, 5.4, 6.4, 5.6]))!.deviation).toBeCloseTo(Math.sqrt(0.02 * (20 / 64)), 12);
  });

  it('trusts passes that agree no further than each was held to', () => {
    expect(passGroup(byTurns([6.5, 5.5, 6.5, 5.5], 0.12))!.deviation).toBeCloseTo(0.13 * Math.sqrt(20 / 64), 12);
  });

  it('lets the stream of more than two passes change without further doubt', () => {
    const quick = passGroup(byTurns([6.5, 5.5, 6.5]))!;
    const slow = passGroup(byTurns([6.5, 5.5, 6.5]).map((each, at) => ({ ...each, start: each.start + 900 * at })))!;
    expect(slow.deviation).toBe(quick.deviation);
  });

  it('calls a pass odd a quarter of a metre per second from its fellows, not at it', () => {
    const odd = (third: number) => passGroup(byTurns([4, 4, 4, 4, third, 4]))!.passes.map((each) => each.odd);
    expect(odd(4.25)).toEqual(Array(6).fill(false));
    expect(odd(3.75)).toEqual(Array(6).fill(false));
    expect(odd(4.26)).toEqual([false, false, false, false, true, false]);
    expect(odd(3.74)).toEqual([false, false, false, false, true, false]);
  });

  it('lets fast passes differ by 4 % of their speed', () => {
    const odd = (third: number) => passGroup(byTurns([12, 12, 12, 12, third, 12]))!.passes[4]!.odd;
    expect(odd(12.47)).toBe(false);
    expect(odd(12.49)).toBe(true);
  });

  it('holds two passes the same way against the middle between them', () => {
    const { passes } = passGroup(byTurns([6.5, 5.5, 6.25]))!;
    expect(passes.map(({ residual }) => residual)).toEqual([0.125, 0, -0.125]);
    expect(passes.map(({ weight }) => weight)).toEqual([0.25, 0.5, 0.25]);
  });

  it('calls the way of the pass sailed first out, in whichever order they are given', () => {
    const [first, second] = byTurns([5.4, 6.6]);
    const found = passGroup([second!, first!])!;
    expect(found.headingDeg).toBe(80);
    expect(found.passes.map(({ way }) => way)).toEqual(['out', 'back']);
    expect(found.stream.along).toBeCloseTo(-0.6, 12);
  });
});

describe('wayOf', () => {
  it('is out up to square across, also over north', () => {
    const way = (headingDeg: number) => wayOf(pass(0, 60, { headingDeg }), 350);
    expect([80, 260, 10, 350].map(way)).toEqual(['out', 'out', 'out', 'out']);
    expect([81, 259, 170].map(way)).toEqual(['back', 'back', 'back']);
  });
});
