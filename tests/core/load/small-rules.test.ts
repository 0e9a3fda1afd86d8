import { describe, expect, it } from 'vitest';
import { isoCrewMass, isoLoad, isoTankContents } from '../../../src/core/load/iso14946.ts';
import { lengthWidthCovers, lengthWidthPersons } from '../../../src/core/load/length-width.ts';
import { liferaftPersons } from '../../../src/core/load/liferaft-sanity.ts';
import { SHAFT_LENGTH, shaftFit } from '../../../src/core/load/shaft-fit.ts';
import { segmentAt, segmentDraft } from '../../../src/core/load/tube-segment.ts';
import { FOOT, POUND } from '../../../src/core/units/convert.ts';
import { catamaran } from '../trials/made-trials.ts';

describe('isoLoad', () => {
  it('counts adults at 75 kg, children at half of that, and everything else', () => {
    expect(isoCrewMass(2, 1)).toBe(187.5);
    expect(isoLoad(2, 1, 40)).toBe(227.5);
    expect(isoTankContents(20, 0.75)).toBeCloseTo(14.25, 12);
  });
});

describe('lengthWidthPersons', () => {
  it('takes a person for every 15 square feet, 150 lb each, and no part of one', () => {
    expect(lengthWidthPersons(15 * FOOT, 5 * FOOT)).toEqual({ persons: 5, mass: 5 * 150 * POUND });
    expect(lengthWidthPersons(14.9 * FOOT, 5 * FOOT).persons).toBe(4);
  });

  it('covers rigid monohulls of any bottom, short of 20 ft', () => {
    for (const form of ['rigid-v', 'rigid-flat', 'displacement'] as const) {
      expect([lengthWidthCovers(form, 19.9 * FOOT), lengthWidthCovers(form, 20 * FOOT)]).toEqual([true, false]);
    }
  });
});

describe('liferaftPersons', () => {
  it('takes the fewer by tubes of 96 L and floor of 0.372 m2 each', () => {
    expect(liferaftPersons(0.3, 1.2)).toEqual({ byVolume: 3, byFloor: 3, persons: 3 });
    expect(liferaftPersons(0.3, 0.8)).toEqual({ byVolume: 3, byFloor: 2, persons: 2 });
    expect(liferaftPersons(0.2, 1.9)).toEqual({ byVolume: 2, byFloor: 5, persons: 2 });
  });
});

describe('shaftFit', () => {
  const hung = (shaft: keyof typeof SHAFT_LENGTH | undefined, transomHeight: number | undefined) =>
    shaftFit({
      ...catamaran,
      hull: { ...catamaran.hull, transomHeight },
      drive: { ...catamaran.drive, shaft },
    });

  it('lets a leg reach 7.5 cm too deep or too high, as transoms are cut and engines set', () => {
    expect(SHAFT_LENGTH).toEqual({ short: 0.381, long: 0.508, 'extra-long': 0.635 });
    expect(hung('short', 0.381)).toEqual({ fit: 'fits', shaft: 0.381, transom: 0.381, below: 0 });
    expect([0.307, 0.305].map((transom) => hung('short', transom)!.fit)).toEqual(['fits', 'too-long']);
    expect([0.455, 0.457].map((transom) => hung('short', transom)!.fit)).toEqual(['fits', 'too-short']);
    expect(hung('long', 0.381)).toMatchObject({ fit: 'too-long', below: expect.closeTo(0.127, 9) });
  });

  it('says nothing where one of the two is not known', () => {
    expect(hung(undefined, 0.4)).toBeUndefined();
    expect(hung('short', undefined)).toBeUndefined();
  });
});

describe('segmentAt and segmentDraft', () => {
  it('have half a tube under water at half its diameter, 4r / 3 pi below its middle', () => {
    const { area, breadth, centroid } = segmentAt(0.4, 0.2);
    expect(area).toBeCloseTo((Math.PI * 0.04) / 2, 12);
    expect(breadth).toBeCloseTo(0.4, 12);
    expect(centroid).toBeCloseTo(0.2 - (4 * 0.2) / (3 * Math.PI), 12);
  });

  it('have nothing of a dry tube and all of a covered one, its centre in its middle', () => {
    expect(segmentAt(0.4, 0)).toMatchObject({ area: 0, breadth: 0, centroid: 0 });
    expect(segmentAt(0.4, 0.5).area).toBeCloseTo(Math.PI * 0.04, 12);
    expect(segmentAt(0.4, 0.4).centroid).toBeCloseTo(0.2, 9);
  });

  it('find the draft again by what is under water, and none for more than the tube', () => {
    for (const draft of [0.01, 0.1, 0.2, 0.39]) {
      expect(segmentDraft(0.4, segmentAt(0.4, draft).area)).toBeCloseTo(draft, 9);
    }
    expect(segmentDraft(0.4, Math.PI * 0.2 ** 2)).toBeUndefined();
    expect(segmentDraft(0.4, 1)).toBeUndefined();
  });
});
