import type { LegFetch } from '../route/worst-fetch.ts';
import { HOUR } from '../units/convert.ts';
import { windSea, withSwell } from '../water/sea-growth.ts';
import type { Wind } from '../water/shapes.ts';
import { meanWindBefore, type WindTable } from '../water/wind-by-time.ts';
import { byTime, type WindLaw, windThen } from './around.ts';

/** Significant height, m, and shortest credible period, s, of the waves on a leg. */
export interface Waves {
  readonly height: number;
  readonly period: number;
}

/** Waves on a leg (by its place as sailed) at an instant, s since 1970. */
export type LegWaves = (leg: number, seconds: number) => Waves;

/** Waves grow over this much wind, s: about 1 to 3 h on fetches to 10 km (Coastal Engineering Manual, from memory). */
const GROWTH = 3 * HOUR;

/**
 * Waves that a wind raises over the fetch of each leg, with the swell on top. By time they are worked out on the hour and
 * are linear between; the wind that raised them is the mean of the last three hours or that of the hour, whichever is
 * more. Past the end of a forecast its nearest wind goes on blowing.
 */
export function legWaves(law: WindLaw, openWater: LegFetch, swell: number): LegWaves {
  const onTop = ({ height, shortPeriod }: { height: number; shortPeriod: number }): Waves => ({
    height: withSwell(height, swell),
    period: shortPeriod,
  });
  const raised = (leg: number, { fromDeg, speed }: Wind): Waves =>
    onTop(windSea({ wind: speed, fetch: openWater(leg, fromDeg).length }));
  if (!byTime(law)) {
    const known: Waves[] = [];
    return (leg) => {
      known[leg] ??= raised(leg, law);
      return known[leg];
    };
  }
  const known = new Map<number, Waves>();
  const onTheHour = (leg: number, hour: number): Waves => {
    // Hours since 1970 stay below a million for a century.
    const key = leg * 1e6 + hour;
    let waves = known.get(key);
    if (!waves) {
      waves = raised(leg, growingWind(law, hour * HOUR));
      known.set(key, waves);
    }
    return waves;
  };
  return (leg, seconds) => {
    const hour = Math.floor(seconds / HOUR);
    const share = seconds / HOUR - hour;
    const before = onTheHour(leg, hour);
    if (share === 0) return before;
    const after = onTheHour(leg, hour + 1);
    return {
      height: before.height + (after.height - before.height) * share,
      period: before.period + (after.period - before.period) * share,
    };
  };
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

/** Highest waves of any leg from one instant to another, m. */
export function highestWaves(waves: LegWaves, legs: number, from: number, to: number, varies: boolean): number {
  let most = 0;
  for (let leg = 0; leg < legs; leg++) {
    if (!varies) most = Math.max(most, waves(leg, from).height);
    else for (let at = from; at < to + HOUR; at += HOUR) most = Math.max(most, waves(leg, Math.min(at, to)).height);
  }
  return most;
}
