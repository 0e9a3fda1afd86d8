import { describe, expect, it } from 'vitest';
import { fiftyNinety, HALF_TIDE, heightBetween, rateOfRange, twelfths } from '../../../src/core/water/tidal-rules.ts';

describe('the rule of twelfths', () => {
  it('is straight between the sixths, and stands still before and after the tide', () => {
    expect(twelfths(1 / 12)).toBeCloseTo(1 / 24, 12);
    expect(twelfths(5 / 12)).toBeCloseTo(4.5 / 12, 12);
    expect(twelfths(11 / 12)).toBeCloseTo(11.5 / 12, 12);
    expect([-0.5, 0, 1, 1.5].map(twelfths)).toEqual([0, 0, 1, 1]);
  });

  it('has as much to come before half tide as has come after it', () => {
    for (const share of [0, 0.1, 0.3, 0.45, 0.5]) expect(twelfths(share) + twelfths(1 - share)).toBeCloseTo(1, 12);
  });
});

describe('the rule of 50 and 90', () => {
  it('is straight between the sixths, and slack before and after the run', () => {
    expect(fiftyNinety(1 / 12)).toBeCloseTo(0.25, 12);
    expect(fiftyNinety(3 / 12)).toBeCloseTo(0.7, 12);
    expect(fiftyNinety(9 / 12)).toBeCloseTo(0.7, 12);
    expect([-0.5, 0, 1, 1.5].map(fiftyNinety)).toEqual([0, 0, 0, 0]);
  });
});

describe('the rate of a day', () => {
  const gut = { neapRate: 1, springRate: 2, neapRange: 2, springRange: 4 };

  it('is that of neaps and springs on their days, halfway on the day halfway, and goes on beyond', () => {
    expect([2, 3, 4, 5, 1].map((range) => rateOfRange(range, gut))).toEqual([1, 1.5, 2, 2.5, 0.5]);
  });

  it('never falls below nothing', () => {
    const steep = { ...gut, neapRate: 0.5 };
    // A rate of 0.5 at 2 m and 1.5 more in 2 m: nothing left at 4/3 m.
    expect(rateOfRange(1, steep)).toBe(0);
    expect(rateOfRange(0, steep)).toBe(0);
  });

  it('is not known where springs do not exceed neaps', () => {
    expect(rateOfRange(3, { ...gut, springRange: 2 })).toBeUndefined();
    expect(rateOfRange(3, { ...gut, springRange: 1.9 })).toBeUndefined();
    expect(rateOfRange(3, { ...gut, springRange: Number.NaN })).toBeUndefined();
    expect(rateOfRange(2, { ...gut, springRange: 2.01 })).toBe(1);
  });
});

describe('the height between two turns', () => {
  it('is that of the turns at them, halfway at half time, and a quarter of the way at a third', () => {
    expect([0, 1].map((share) => heightBetween(1, 5, share))).toEqual([1, 5]);
    expect(heightBetween(1, 5, 0.5)).toBeCloseTo(3, 12);
    expect(heightBetween(1, 5, 1 / 3)).toBeCloseTo(2, 12);
    expect(heightBetween(5, 1, 1 / 3)).toBeCloseTo(4, 12);
  });

  it('of a tide twice a day takes a quarter of a lunar day', () => {
    // The moon is back in 24 h 50.5 min.
    expect(Math.abs(4 * HALF_TIDE - (24 * 3600 + 50.5 * 60))).toBeLessThan(10);
  });
});
