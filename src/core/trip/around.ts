import { meetsLand } from '../route/in-sight.ts';
import type { SailedLeg } from '../route/sailed-legs.ts';
import type { LatLon } from '../route/shapes.ts';
import type { Waters } from '../route/waters.ts';
import { type LegFetch, worstFetches } from '../route/worst-fetch.ts';
import { secondsOf } from '../water/clock.ts';
import type { Conditions, Wind } from '../water/shapes.ts';
import { type Reach, reachOf, type StreamFound, streamAt, streamTable } from '../water/streams.ts';
import { type HeightAt, heightByHighWater } from '../water/tide-height.ts';
import { type WindTable, windAt, windTable } from '../water/wind-by-time.ts';
import type { Trip } from './shapes.ts';

/** A way over the ground that wind and stream are asked for. */
export interface Way {
  readonly part: 'out' | 'home';
  readonly trackDeg: number;
  readonly from: LatLon;
  readonly to: LatLon;
  /** Its place among the stretches of the trip, by which what was found is remembered; absent: asked once. */
  readonly spot?: number;
}

/** Wind that is the same all day, or by time. */
export type WindLaw = Wind | WindTable;
/** Stream on a way at an instant, s since 1970. */
export type StreamLaw = (way: Way, seconds: number) => StreamFound;

/** What is told of wind, stream and sea about a trip, by place and time. */
export interface Around {
  /** s since 1970; undefined: no date is given, and nothing that goes by the clock can be told. */
  readonly departs: number | undefined;
  /** Wind as told; undefined: not known. */
  readonly wind: 'calm' | WindLaw | undefined;
  readonly stream: 'slack' | StreamLaw | { readonly setDeg: number; readonly rate: number } | undefined;
  /** Height of the tide above chart datum; undefined: not told. */
  readonly height: HeightAt | undefined;
  /** Open water upwind of each leg; undefined: without local waters nobody knows. */
  readonly fetch: LegFetch | undefined;
  readonly legs: number;
  /** Time within which the trip is over even at displacement speed, s. */
  readonly horizon: number;
  /** Wind or stream change by the hour or by the place. */
  readonly varies: boolean;
}

/** A day; longer trips are told for as long. */
const LONGEST = 86_400;

/** `distance` m and `slowest` m/s tell how long a trip may take. */
export function aroundOf(
  { conditions }: Trip,
  waters: Waters | undefined,
  legs: readonly SailedLeg[],
  { distance, slowest }: { readonly distance: number; readonly slowest: number },
): Around {
  const departs = conditions.departure === undefined ? undefined : secondsOf(conditions.departure);
  const wind = windTold(conditions, departs);
  const stream = streamTold(conditions, waters, departs);
  const stops = legs.reduce((sum, leg) => sum + leg.stop, 0);
  return {
    departs,
    wind,
    stream,
    height: conditions.tide?.highWaterHeight === undefined ? undefined : heightByHighWater(conditions.tide),
    fetch: waters && lazily(() => worstFetches(waters, legs)),
    legs: legs.length,
    horizon: Math.min(distance / slowest + stops, LONGEST),
    varies: byTime(wind) || typeof stream === 'function',
  };
}

function lazily(make: () => LegFetch): LegFetch {
  let made: LegFetch | undefined;
  const get = (): LegFetch => {
    made ??= make();
    return made;
  };
  return Object.assign((leg: number, fromDeg: number) => get()(leg, fromDeg), {
    open: (leg: number) => get().open(leg),
  });
}

function windTold({ wind }: Conditions, departs: number | undefined): Around['wind'] {
  if (typeof wind !== 'object' || !('forecast' in wind)) return wind;
  return departs === undefined ? undefined : windTable(wind.forecast);
}

function streamTold(
  { stream, tide, streamPlaces = [] }: Conditions,
  waters: Waters | undefined,
  departs: number | undefined,
): Around['stream'] {
  if (stream !== 'by-tide') return stream;
  const places = [...streamPlaces, ...(waters?.streams ?? [])];
  if (!tide || departs === undefined || places.length === 0) return undefined;
  const table = streamTable(places, tide);
  const crossesLand = (from: LatLon, to: LatLon): boolean => meetsLand(waters, from, to);
  const reaches: Reach[] = [];
  return (way, seconds) => {
    let reach = way.spot === undefined ? undefined : reaches[way.spot];
    if (!reach) {
      const middle = { lat: (way.from.lat + way.to.lat) / 2, lon: (way.from.lon + way.to.lon) / 2 };
      reach = reachOf(table, middle, crossesLand);
      if (way.spot !== undefined) reaches[way.spot] = reach;
    }
    return streamAt(table, reach, { seconds, courseDeg: way.trackDeg });
  };
}

export function byTime(wind: WindLaw | 'calm' | undefined): wind is WindTable {
  return typeof wind === 'object' && 'entries' in wind;
}

/** The wind of a law at an instant; undefined where a forecast tells none. */
export function windThen(law: WindLaw, seconds: number): Wind | undefined {
  if (!byTime(law)) return law;
  const found = windAt(law, seconds);
  return found.known ? found.wind : undefined;
}

/** A law with every speed changed. */
export function withSpeeds<L extends WindLaw>(law: L, change: (speed: number) => number): L {
  if (!byTime(law)) return { ...law, speed: change((law as Wind).speed) };
  return { ...law, entries: law.entries.map((entry) => ({ ...entry, speed: change(entry.speed) })) };
}

/** Strongest mean wind that is told between two instants, m/s; 0 where none is. */
export function strongestTold(law: WindLaw, from: number, to: number): number {
  if (!byTime(law)) return law.speed;
  let most = 0;
  for (const seconds of [from, to]) most = Math.max(most, windThen(law, seconds)?.speed ?? 0);
  for (const { at, speed } of law.entries) if (at > from && at < to) most = Math.max(most, speed);
  return most;
}
