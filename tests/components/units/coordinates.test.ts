import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  parseLatitude,
  parseLongitude,
  parsePosition,
  showLatitude,
  showPosition,
} from '../../../src/components/units/coordinates.ts';

const near = (degrees: number) => expect.closeTo(degrees, 9);

describe('parseLatitude and parseLongitude', () => {
  it('read decimal degrees with point, comma, sign or letter', () => {
    for (const text of ['46.0274', '46,0274', '+46.0274', 'N46.0274', '46.0274 N', '46.0274°n', ' 46.0274° N ']) {
      expect(parseLatitude(text), text).toEqual(near(46.0274));
    }
    for (const text of ['-31.99', '\u221231,99', '31.99 W', 'w 31.99', '31.99°W']) {
      expect(parseLongitude(text), text).toEqual(near(-31.99));
    }
  });

  it('read degrees and decimal minutes', () => {
    const notations = ["46°01.64'N", '46°01,64′ N', '46 01.64', 'N 46 1.64', '46º 01.64’', '46:01.64', '46°1.64'];
    for (const text of notations) expect(parseLatitude(text), text).toEqual(near(46 + 1.64 / 60));
  });

  it('read degrees, minutes and seconds', () => {
    const notations = ['46 01 38 N', '46°01\'38"N', '46° 1′ 38″', '46:01:38', '46d01m38s', "46°01'38''N"];
    for (const text of notations) expect(parseLatitude(text), text).toEqual(near(46 + 1 / 60 + 38 / 3600));
    expect(parseLatitude('46d01m38sS')).toEqual(near(-(46 + 1 / 60 + 38 / 3600)));
  });

  it('keep the sign of half a degree south', () => {
    expect(parseLatitude('-0 30')).toEqual(near(-0.5));
    expect(parseLatitude('0 30 S')).toEqual(near(-0.5));
  });

  it('refuse what lies off the globe or says two things', () => {
    const refused = [
      '91',
      '-90.01',
      '46 60',
      '46 01 60',
      '-46 N',
      'N 46 N',
      '46 E',
      '46.5 30',
      '46 1.5 30',
      '',
      'north',
      '4e1',
    ];
    for (const text of refused) expect(parseLatitude(text), text).toBeUndefined();
    expect(parseLongitude('180.1')).toBeUndefined();
    expect(parseLongitude('31 N')).toBeUndefined();
  });
});

describe('parsePosition', () => {
  it('reads latitude and longitude pasted together', () => {
    const notations = [
      '46.0274, -31.99',
      '46.0274,-31.99',
      '46.0274 -31.99',
      '46,0274 -31,99',
      '46,0274, -31,99',
      '46,0274; -31,99',
      '46,0274,-31,99',
      '(46.0274, -31.99)',
      'lat: 46.0274 lon: -31.99',
      'geo:46.0274,-31.99',
      '46.0274\t-31.99',
      '46.0274 N 31.99 W',
      'N46.0274 W31.99',
      'N46.0274, W031.9900',
    ];
    for (const text of notations) expect(parsePosition(text), text).toEqual({ lat: near(46.0274), lon: near(-31.99) });
  });

  it('reads minutes, and follows the letters when longitude comes first', () => {
    const place = { lat: near(46 + 1.5 / 60), lon: near(-(31 + 59.4 / 60)) };
    for (const text of ["46°01.5'N 31°59.4'W", 'N46 01.5 W031 59.4', '31 59.4 W, 46 01.5 N', '46 01.5 -31 59.4']) {
      expect(parsePosition(text), text).toEqual(place);
    }
  });

  it('gives nothing where one coordinate or two could be meant', () => {
    for (const text of ['46,31', '46 31', '46.0274', '46.0274 N', '46.0274 31.99 W', '1,2,3', '', 'here']) {
      expect(parsePosition(text), text).toBeUndefined();
    }
  });

  it('gives nothing for endless text, at once', () => {
    expect(parsePosition(`${' '.repeat(100_000)}46`)).toBeUndefined();
  });

  it('reads back what is shown, to two metres anywhere on the globe', () => {
    const degrees = (limit: number) => fc.double({ min: -limit, max: limit, noNaN: true });
    fc.assert(
      fc.property(degrees(90), degrees(180), fc.constantFrom('nautical', 'metric', 'imperial'), (lat, lon, system) => {
        const back = parsePosition(showPosition({ lat, lon }, system as 'metric'));
        expect(Math.abs(back!.lat - lat)).toBeLessThan(1e-5);
        expect(Math.abs(back!.lon - lon)).toBeLessThan(1e-5);
      }),
      { seed: 11, numRuns: 400 },
    );
  });

  it('never gives a place off the globe for any text', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.stringMatching(/^[-0-9.,°'" NSEW]{0,24}$/)), (text) => {
        const place = parsePosition(text);
        if (!place) return;
        expect(Math.abs(place.lat)).toBeLessThanOrEqual(90);
        expect(Math.abs(place.lon)).toBeLessThanOrEqual(180);
      }),
      { seed: 11, numRuns: 800 },
    );
  });
});

describe('showLatitude', () => {
  it('carries a minute that rounds up to sixty', () => {
    expect(showLatitude(45.9999999, 'nautical')).toBe('46°00.000′N');
  });

  it('names the equator north and never minus nothing', () => {
    expect(showLatitude(-1e-9, 'nautical')).toBe('00°00.000′N');
    expect(showLatitude(-1e-9, 'metric')).toBe('0.00000');
  });
});
