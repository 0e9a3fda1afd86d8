import { bretschneiderWaves, fetchOfTime, manualWaves, northSeaWaves, timeToFetchLimit } from './growth-laws.ts';

export interface Blow {
  /** Mean wind at 10 m over the time the waves grow, about 1 to 3 h, m/s; never the gust. */
  readonly wind: number;
  /** Open water upwind, m: `fetchAt`, `worstFetches` of routes. */
  readonly fetch: number;
  /** How long it has blown, s; undefined: as long as it takes. */
  readonly duration?: number;
  /** Of the water over the fetch, m; undefined: deep, which is the higher. */
  readonly depth?: number;
}

export interface WindSea {
  /** Significant, m: the higher of the two laws, for limits and warnings. One decimal is what it is good for. */
  readonly height: number;
  /** Of that law, s. */
  readonly period: number;
  /** Lowest and highest of the published laws, m. */
  readonly low: number;
  readonly high: number;
  /** Shortest of them, s: the steepest sea at that height. */
  readonly shortPeriod: number;
  /** What limits the waves. */
  readonly limit: 'calm' | 'fetch' | 'duration';
  /** Time after which only the fetch limits them, s; Infinity in no wind. */
  readonly timeToFetchLimit: number;
}

/**
 * Waves raised by a wind over a fetch: the Coastal Engineering Manual's law and that of Sverdrup, Munk and Bretschneider,
 * the higher one; a duration cuts the fetch of the latter to what eq. II-2-35 grows in that time (derived here). On 0.5
 * to 20 km and 4 to 14 m/s the second is the higher, by 1 to 66 %. A third law, of the North Sea, only widens the range.
 * More wind, fetch, time or depth never gives lower waves.
 */
export function windSea({ wind, fetch, duration, depth }: Blow): WindSea {
  const limit = timeToFetchLimit(wind, fetch);
  const grown = duration === undefined ? fetch : Math.min(fetch, fetchOfTime(wind, duration));
  const manual = manualWaves(wind, fetch, duration);
  const shore = bretschneiderWaves(wind, grown, depth);
  const north = northSeaWaves(wind, fetch, duration);
  const higher = manual.height > shore.height ? manual : shore;
  return {
    ...higher,
    low: Math.min(manual.height, shore.height, north.height),
    high: Math.max(manual.height, shore.height, north.height),
    shortPeriod: Math.min(manual.period, shore.period, north.period),
    limit: higher.height === 0 ? 'calm' : duration !== undefined && duration < limit ? 'duration' : 'fetch',
    timeToFetchLimit: limit,
  };
}

/** Significant height of a wind sea and a swell together, m: their energies add. */
export function withSwell(windSea: number, swell: number): number {
  return Math.hypot(windSea, swell);
}
