import { describe, expect, it } from 'vitest';
import { iso14946Covers } from '../../../src/core/load/iso14946.ts';
import { lengthWidthCovers } from '../../../src/core/load/length-width.ts';
import { liferaftPersons, liferaftSanityCovers } from '../../../src/core/load/liferaft-sanity.ts';
import { tubesCover } from '../../../src/core/load/tube-hydrostatics.ts';
import {
  usMaxLoad,
  usMaxPower,
  usPersons,
  usPersonsMass,
  usPersonsMassOutboard,
  usRuleCovers,
} from '../../../src/core/load/us-capacity.ts';
import { FOOT, HORSEPOWER, INCH, POUND } from '../../../src/core/units/convert.ts';

describe('what each rule covers', () => {
  it('leaves inflatables and boats of 20 ft and over out of the US rule and the rule of thumb', () => {
    for (const covers of [usRuleCovers, lengthWidthCovers]) {
      expect(covers('rigid-v', 4)).toBe(true);
      expect(covers('rigid-v', 20 * FOOT)).toBe(false);
      expect(covers('rib', 4)).toBe(false);
      expect(covers('inflatable-catamaran', 4)).toBe(false);
    }
  });

  it('asks the liferaft sheet and the two cylinders about inflatables only', () => {
    expect(liferaftSanityCovers('rib', 4)).toBe(true);
    expect(liferaftSanityCovers('rigid-flat', 4)).toBe(false);
    expect(tubesCover('inflatable-catamaran', 4)).toBe(true);
    expect(tubesCover('rib', 4)).toBe(false);
  });

  it('takes ISO 14946 up to 24 m', () => {
    expect(iso14946Covers('rib', 24)).toBe(true);
    expect(iso14946Covers('rib', 24.1)).toBe(false);
  });
});

describe('usPersonsMassOutboard', () => {
  it('takes the side test where it is the lesser, and needs it below 550 lb', () => {
    const maxLoad = 700 * POUND;
    const motorMass = 200 * POUND;
    expect(usPersonsMassOutboard({ maxLoad, motorMass })).toBeUndefined();
    expect(usPersonsMassOutboard({ maxLoad, motorMass, sideMass: 240 * POUND })! / POUND).toBeCloseTo(400, 9);
    expect(usPersonsMassOutboard({ maxLoad, motorMass, sideMass: 360 * POUND })! / POUND).toBeCloseTo(500, 9);
    expect(usPersonsMassOutboard({ maxLoad: 900 * POUND, motorMass })! / POUND).toBeCloseTo(700, 9);
    expect(usPersonsMassOutboard({ maxLoad: 751 * POUND, motorMass })! / POUND).toBeCloseTo(551, 9);
  });

  it('leaves nothing for persons where the engine weighs more than the boat may carry', () => {
    expect(usPersonsMassOutboard({ maxLoad: 100, motorMass: 150, sideMass: 90 })).toBe(0);
  });
});

describe('usMaxLoad', () => {
  it('is a fifth of what is left of the displacement with an outboard, three tenths without', () => {
    expect(usMaxLoad(1100, 100, 'outboard')).toBeCloseTo(200, 9);
    expect(usMaxLoad(1100, 100, 'manual')).toBeCloseTo(300, 9);
    expect(usMaxLoad(1100, 100, '2hp-or-less')).toBeCloseTo(300, 9);
    expect(usMaxLoad(90, 100, 'manual')).toBe(0);
  });
});

describe('usPersonsMass', () => {
  it('is nine tenths of the load, less 25 lb for a small engine', () => {
    expect(usPersonsMass(200, 'manual')).toBeCloseTo(180, 9);
    expect(usPersonsMass(200, '2hp-or-less')).toBeCloseTo(180 - 25 * POUND, 9);
  });
});

describe('usPersons', () => {
  it('takes nobody where nothing is left', () => {
    expect(usPersons(0)).toBe(0);
    expect(usPersonsMass(20 * POUND, '2hp-or-less')).toBe(0);
  });
});

describe('usMaxPower', () => {
  const boat = { length: 10 * FOOT, transomHeight: 15 * INCH, remoteSteering: false, flatBottomHardChine: false };
  const horsepower = (factor: number, rest = {}) =>
    usMaxPower({ ...boat, transomWidth: (factor / 10) * FOOT, ...rest }).maxPower / HORSEPOWER;

  // 33 CFR 183.53: the factor is taken to the nearest integer, whatever one guide's example does with 45.96.
  it('takes the factor to the nearest whole number', () => {
    expect(horsepower(45.96)).toBeCloseTo(15, 9);
    expect(horsepower(45.4)).toBeCloseTo(10, 9);
    expect(horsepower(35.5)).toBeCloseTo(5, 9);
  });

  it('leaves the lowest row to flat bottoms too', () => {
    expect(horsepower(30, { flatBottomHardChine: true })).toBeCloseTo(3, 9);
  });

  it('allows the higher power only with remote steering and a transom of 20 in', () => {
    const steered = { remoteSteering: true, transomHeight: 20 * INCH };
    expect(horsepower(60, steered)).toBeCloseTo(30, 9);
    expect(horsepower(60, { ...steered, transomHeight: 19 * INCH })).toBeCloseTo(25, 9);
    expect(horsepower(60, { ...steered, remoteSteering: false })).toBeCloseTo(25, 9);
  });
});

describe('liferaftPersons', () => {
  it('takes nobody without tubes', () => {
    expect(liferaftPersons(0, 3).persons).toBe(0);
  });
});
