import type { LegFetch } from '../route/worst-fetch.ts';
import { HOUR } from '../units/convert.ts';
import { windSea, withSwell } from '../water/sea-growth.ts';
import type { Wind } from '../water/shapes.ts';
import { meanWindBefore, type WindTable } from '../water/wind-by-time.ts';
import { byTime, type WindLaw, windThen } from './wind-law.ts';

/** Significant height, m, and shortest credible period, s, of the waves on a leg. */
export interface Waves {
  readonly height: number;
  readonly period: number;
}

/** Waves on a leg (by its place as sailed) at an instant, s since 1970. */
export type LegWaves = (leg: number, seconds: number) => Waves;

/** Waves grow over this much wind, s: about 1 to 3 h on fetches to 10 km (Coastal Engineering Manual, from memory). */
const GROWTH = 3 * HOUR;

/** The sea that one wind raises along a trip. */
export interface SeaUnder {
  readonly waves: LegWaves;
  /** Highest waves of any leg between two instants, m. */
  highest(from: number, to: number): number;
}

/**
 * Waves that a wind raises over the fetch of each of so many legs, with the swell on top. By time they are worked out on
 * the hour and are linear between; the wind that raised them is the mean of the last three hours or that of the hour,
 * whichever is more. Past the end of a forecast its nearest wind goes on blowing.
 */
export function seaUnder(law: WindLaw, openWater: LegFetch, legs: number, swell: number): SeaUnder {
  const raised = ({ fromDeg, speed }: Wind, leg: number): Waves => {
    const { height, shortPeriod } = windSea({ wind: speed, fetch: openWater(leg, fromDeg).length });
    return { height: withSwell(height, swell), period: shortPeriod };
  };
  // More open water never gives lower waves.
  const highestIn = (wind: Wind): number =>
    withSwell(windSea({ wind: wind.speed, fetch: longestOf(openWater, legs, wind.fromDeg) }).height, swell);
  if (!byTime(law)) {
    const known: Waves[] = [];
    const waves: LegWaves = (leg) => {
      known[leg] ??= raised(law, leg);
      return known[leg];
    };
    let highest: number | undefined;
    return {
      waves,
      highest: () => {
        highest ??= highestIn(law);
        return highest;
      },
    };
  }
  const hours = new Map<number, { readonly wind: Wind; readonly waves: Waves[] }>();
  let known: { readonly from: number; readonly to: number; readonly most: number } | undefined;
  const hourOf = (hour: number) => {
    let found = hours.get(hour);
    if (!found) {
      found = { wind: growingWind(law, hour * HOUR), waves: [] };
      hours.set(hour, found);
    }
    return found;
  };
  const onTheHour = (leg: number, hour: number): Waves => {
    const { wind, waves } = hourOf(hour);
    waves[leg] ??= raised(wind, leg);
    return waves[leg];
  };
  return {
    waves: (leg, seconds) => {
      const hour = Math.floor(seconds / HOUR);
      const share = seconds / HOUR - hour;
      const before = onTheHour(leg, hour);
      if (share === 0) return before;
      const after = onTheHour(leg, hour + 1);
      return {
        height: before.height + (after.height - before.height) * share,
        period: before.period + (after.period - before.period) * share,
      };
    },
    highest: (from, to) => {
      if (known?.from === from && known.to === to) return known.most;
      let most = 0;
      for (let hour = Math.floor(from / HOUR); hour <= Math.ceil(to / HOUR); hour++) {
        most = Math.max(most, highestIn(hourOf(hour).wind));
      }
      known = { from, to, most };
      return most;
    },
  };
}

/** A freshened wind blows over the same water. */
const longest = new WeakMap<LegFetch, Map<number, number>>();

/** The longest open water upwind of any leg, m. */
function longestOf(openWater: LegFetch, legs: number, fromDeg: number): number {
  let known = longest.get(openWater);
  if (!known) {
    known = new Map();
    longest.set(openWater, known);
  }
  let most = known.get(fromDeg);
  if (most === undefined) {
    most = 0;
    for (let leg = 0; leg < legs; leg++) most = Math.max(most, openWater(leg, fromDeg).length);
    known.set(fromDeg, most);
  }
  return most;
}

/** The wind that waves of an instant grew under. */
function growingWind(table: WindTable, seconds: number): Wind {
  const now = windThen(table, seconds);
  if (!now) return nearest(table, seconds);
  const mean = meanWindBefore(table, seconds, GROWTH);
  return { ...now, speed: Math.max(now.speed, mean.known ? mean.speed : 0) };
}

function nearest({ entries }: WindTable, seconds: number): Wind {
  let best = entries[0]!;
  for (const entry of entries) if (Math.abs(entry.at - seconds) < Math.abs(best.at - seconds)) best = entry;
  return best;
}
