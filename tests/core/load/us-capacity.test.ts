import { describe, expect, it } from 'vitest';
import {
  usMaxPower,
  usPersons,
  usPersonsMassBySide,
  usPersonsMassOutboard,
  usRuleCovers,
} from '../../../src/core/load/us-capacity.ts';
import { FOOT, HORSEPOWER, INCH, POUND } from '../../../src/core/units/convert.ts';

describe('usMaxPower', () => {
  const boat = { length: 10 * FOOT, transomHeight: 15 * INCH, remoteSteering: false, flatBottomHardChine: false };
  const horsepower = (factor: number, rest = {}) =>
    Math.round((usMaxPower({ ...boat, transomWidth: (factor / 10) * FOOT, ...rest }).maxPower / HORSEPOWER) * 1e6) /
    1e6;

  it('is read off the table up to the last factor of each row', () => {
    const rows = [30, 35, 36, 39, 40, 42, 43, 45, 46, 52].map((factor) => horsepower(factor));
    expect(rows).toEqual([3, 3, 5, 5, 7.5, 7.5, 10, 10, 15, 15]);
  });

  it('is a row less for a flat bottom with hard chines', () => {
    const rows = [35, 36, 40, 43, 46].map((factor) => horsepower(factor, { flatBottomHardChine: true }));
    expect(rows).toEqual([3, 3, 5, 7.5, 10]);
  });

  it('is worked out beyond the table and raised to the next five', () => {
    // 0.8 x 53 - 25 is 17.4, 0.8 x 75 - 25 is 35; flat: 0.5 x 53 - 15 is 11.5; steered from a console: 2 x 53 - 90 is 16.
    expect([53, 75].map((factor) => horsepower(factor))).toEqual([20, 35]);
    expect(horsepower(53, { flatBottomHardChine: true })).toBe(15);
    expect(horsepower(53, { remoteSteering: true, transomHeight: 20 * INCH })).toBe(20);
    expect(horsepower(80, { remoteSteering: true, transomHeight: 20 * INCH, flatBottomHardChine: true })).toBe(70);
  });

  it('tells the factor in square feet', () => {
    expect(usMaxPower({ ...boat, transomWidth: 4 * FOOT }).factor).toBeCloseTo(40, 9);
  });
});

describe('usPersons', () => {
  it('rounds the mass and 32 lb by 141 lb a person to the nearest', () => {
    expect([320, 320.5, 391, 461, 462].map((pounds) => usPersons(pounds * POUND))).toEqual([2, 3, 3, 3, 4]);
    expect(usPersons(-10)).toBe(0);
  });
});

describe('usPersonsMassOutboard', () => {
  it('asks for no side test from 550 lb on', () => {
    expect(usPersonsMassOutboard({ maxLoad: 550 * POUND, motorMass: 0, sideMass: 1 })).toBe(550 * POUND);
    expect(usPersonsMassOutboard({ maxLoad: 549 * POUND, motorMass: 0, sideMass: 60 })).toBe(100);
    expect(usPersonsMassBySide(60)).toBe(100);
  });
});

describe('usRuleCovers', () => {
  it('takes monohulls of any bottom, short of 20 ft', () => {
    for (const form of ['rigid-v', 'rigid-flat', 'displacement'] as const) {
      expect([usRuleCovers(form, 19.9 * FOOT), usRuleCovers(form, 20 * FOOT)]).toEqual([true, false]);
    }
    expect(usRuleCovers('flat-floor-inflatable', 3)).toBe(false);
  });
});
