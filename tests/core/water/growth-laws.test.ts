import { describe, expect, it } from 'vitest';
import { HOUR } from '../../../src/core/units/convert.ts';
import {
  averagedWind,
  bretschneiderWaves,
  fetchOfTime,
  manualWaves,
  northSeaWaves,
  timeToFetchLimit,
} from '../../../src/core/water/growth-laws.ts';
import { windSea, withSwell } from '../../../src/core/water/sea-growth.ts';

const G = 9.81;
const FLAT = { height: 0, period: 0 };
const ENDLESS = 1e12;

describe('the time to the limit of the fetch', () => {
  it('is 77.23 where wind, fetch and gravity come to one, and the fetch of that time is the same fetch', () => {
    // fetch^0.67 = G^0.33 takes gravity out.
    expect(timeToFetchLimit(1, G ** (0.33 / 0.67))).toBeCloseTo(77.23, 9);
    for (const fetch of [200, 5000, 40_000]) {
      expect(fetchOfTime(8, timeToFetchLimit(8, fetch))).toBeCloseTo(fetch, 6);
    }
  });

  it('is none on no fetch and never comes without wind', () => {
    expect(timeToFetchLimit(8, 0)).toBe(0);
    expect(timeToFetchLimit(0, 0)).toBe(0);
    expect(timeToFetchLimit(0, 1000)).toBe(Infinity);
  });
});

describe.each([
  ['the manual', manualWaves],
  ['the North Sea laws', northSeaWaves],
  ['the law of Sverdrup, Munk and Bretschneider', bretschneiderWaves],
] as const)('%s', (_, waves) => {
  it('raises no waves without wind, fetch, and time or water', () => {
    expect(waves(0, 1000, 1000)).toEqual(FLAT);
    expect(waves(8, 0, 1000)).toEqual(FLAT);
    expect(waves(8, 1000, 0)).toEqual(FLAT);
  });

  it('with time or water enough is as without a limit of it, and lower with little', () => {
    expect(waves(8, 5000, ENDLESS)).toEqual(waves(8, 5000));
    const little = waves(8, 5000, 2);
    const much = waves(8, 5000);
    expect(little.height).toBeLessThan(0.9 * much.height);
    expect(little.period).toBeLessThan(much.period);
  });
});

describe('fully grown', () => {
  it('by the manual is 211.5 and 239.8 in friction speed and gravity', () => {
    const friction = 8 * Math.sqrt(0.001 * (1.1 + 0.035 * 8));
    const sea = manualWaves(8, ENDLESS);
    expect(sea.height).toBeCloseTo((211.5 * friction ** 2) / G, 9);
    expect(sea.period).toBeCloseTo((239.8 * friction) / G, 9);
  });

  it('by the North Sea laws is 0.243 and 8.13, and comes when the period says', () => {
    const sea = northSeaWaves(8, ENDLESS);
    expect(sea.height).toBeCloseTo((0.243 * 64) / G, 9);
    expect(sea.period).toBeCloseTo((8.13 * 8) / G, 9);
    const blown = (scaled: number) => northSeaWaves(8, ENDLESS, (scaled * 8) / G).period;
    // 0.286 x^1/3 comes to 8.13 at x = 22,971, which takes 68.8 x^2/3 = 55,595.
    expect(blown(56_000)).toBe(sea.period);
    expect(blown(55_000)).toBeLessThan(sea.period);
  });

  it('in deep water by Bretschneider is 0.283 and 7.54', () => {
    const sea = bretschneiderWaves(8, ENDLESS);
    expect(sea.height).toBeCloseTo((0.283 * 64) / G, 6);
    expect(sea.period).toBeCloseTo((7.54 * 8) / G, 6);
  });
});

describe('a growing sea', () => {
  it('of the manual and the North Sea is twice as high on four times the fetch, twice as long on eight', () => {
    for (const waves of [manualWaves, northSeaWaves]) {
      expect(waves(8, 4000).height).toBeCloseTo(2 * waves(8, 1000).height, 9);
      expect(waves(8, 8000).period).toBeCloseTo(2 * waves(8, 1000).period, 9);
    }
    // In wind speed and gravity: 0.0016 and 0.286 at a fetch of one.
    const one = northSeaWaves(8, 64 / G);
    expect(one.height).toBeCloseTo((0.0016 * 64) / G, 12);
    expect(one.period).toBeCloseTo((0.286 * 8) / G, 12);
  });

  it('by time grows with its power 3/4 in height and 1/2 in period', () => {
    for (const waves of [manualWaves, northSeaWaves]) {
      const [early, late] = [waves(8, ENDLESS, 1000), waves(8, ENDLESS, 16_000)];
      expect(late.height / early.height).toBeCloseTo(8, 9);
      expect(late.period / early.period).toBeCloseTo(4, 9);
    }
  });
});

describe('a wind told for another time', () => {
  it('can be had from one hour to ten, both included, and not outside', () => {
    expect(averagedWind(8, HOUR, HOUR)).toBe(8);
    expect(averagedWind(8, 10 * HOUR, 10 * HOUR)).toBe(8);
    for (const time of [HOUR - 1, 10 * HOUR + 1, Number.NaN]) {
      expect(averagedWind(8, HOUR, time)).toBeUndefined();
      expect(averagedWind(8, time, HOUR)).toBeUndefined();
    }
  });

  it('is less the longer it is taken over', () => {
    // Ten hours against one: the logarithm is one more.
    const hour = 1.5334 - 0.15 * Math.log10(3600);
    expect(averagedWind(8, HOUR, 10 * HOUR)).toBeCloseTo((8 * (hour - 0.15)) / hour, 12);
  });
});

describe('a wind sea', () => {
  const blow = { wind: 8, fetch: 5000 };

  it('without a duration, or with just the time it takes, is limited by its fetch; with less by the time', () => {
    const time = timeToFetchLimit(8, 5000);
    expect(windSea(blow)).toMatchObject({ limit: 'fetch', timeToFetchLimit: time });
    expect(windSea({ ...blow, duration: time }).limit).toBe('fetch');
    expect(windSea({ ...blow, duration: time - 1 }).limit).toBe('duration');
    expect(windSea({ ...blow, wind: 0 })).toMatchObject({ height: 0, limit: 'calm', timeToFetchLimit: Infinity });
  });

  it('has the height and period of the higher law, and tells the least and the most of three', () => {
    const laws = [manualWaves(8, 5000), bretschneiderWaves(8, 5000), northSeaWaves(8, 5000)];
    const sea = windSea(blow);
    expect(sea).toMatchObject(laws[0]!.height > laws[1]!.height ? laws[0]! : laws[1]!);
    expect(sea.low).toBe(Math.min(...laws.map(({ height }) => height)));
    expect(sea.high).toBe(Math.max(...laws.map(({ height }) => height)));
    expect(sea.shortPeriod).toBe(Math.min(...laws.map(({ period }) => period)));
  });

  it('of a short blow is as on the fetch that grows in that time', () => {
    const grown = bretschneiderWaves(8, fetchOfTime(8, 1800));
    expect(windSea({ ...blow, duration: 1800 }).height).toBe(grown.height);
  });

  it('and a swell add their energies', () => {
    expect(withSwell(0.3, 0.4)).toBeCloseTo(0.5, 12);
    expect(withSwell(0, 0.4)).toBe(0.4);
  });
});
