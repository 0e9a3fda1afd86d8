import { meetsLand } from '../route/in-sight.ts';
import type { SailedLeg } from '../route/sailed-legs.ts';
import type { LatLon } from '../route/shapes.ts';
import type { Waters } from '../route/waters.ts';
import { type LegFetch, worstFetches } from '../route/worst-fetch.ts';
import { oneForceMore } from '../water/beaufort.ts';
import { secondsOf } from '../water/clock.ts';
import type { Conditions, StreamPlace, WindAt } from '../water/shapes.ts';
import { type Reach, reachOf, reachOfNamed, type StreamFound, streamAt, streamTable } from '../water/streams.ts';
import { type HeightAt, heightByHighWater } from '../water/tide-height.ts';
import { type WindTable, windTable } from '../water/wind-by-time.ts';
import { type SeaUnder, seaUnder } from './leg-waves.ts';
import type { Trip } from './shapes.ts';
import { byTime, type WindLaw, withSpeeds } from './wind-law.ts';

/** A way over the ground that wind and stream are asked for. */
export interface Way {
  readonly part: 'out' | 'home';
  readonly trackDeg: number;
  readonly from: LatLon;
  readonly to: LatLon;
  /** Name of the place whose stream it takes; absent: the nearest. */
  readonly streamPlace?: string;
  /** Its place among the stretches of the trip, by which what was found is remembered; absent: asked once. */
  readonly spot?: number;
}

/** Stream on a way at an instant, s since 1970. */
export type StreamLaw = (way: Way, seconds: number) => StreamFound;

/** What is told of wind, stream and sea about a trip, by place and time. */
export interface Around {
  /** s since 1970; undefined: no date is given, and nothing that goes by the clock can be told. */
  readonly departs: number | undefined;
  /** Wind as told; undefined: not known. */
  readonly wind: 'calm' | WindLaw | undefined;
  /** A given wind one force fresher. */
  readonly fresher: WindLaw | undefined;
  readonly stream: 'slack' | StreamLaw | { readonly setDeg: number; readonly rate: number } | undefined;
  /** Strongest stream of streams by tide at any hour and place, m/s; 0 for others. */
  readonly strongestStream: number;
  /** Height of the tide above chart datum; undefined: not told. */
  readonly height: HeightAt | undefined;
  /** Open water upwind of each leg; undefined: without local waters nobody knows. */
  readonly fetch: LegFetch | undefined;
  /** The sea raised by a wind, worked out once for each; undefined: without local waters nobody knows. */
  readonly seaUnder: ((law: WindLaw) => SeaUnder) | undefined;
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
  const { law: stream, strongest } = streamTold(conditions, waters, departs);
  const fetch = waters && lazily(() => worstFetches(waters, legs));
  const swell = typeof conditions.sea === 'object' && 'swell' in conditions.sea ? conditions.sea.swell : 0;
  const seas = new WeakMap<WindLaw, SeaUnder>();
  const stops = legs.reduce((sum, leg) => sum + leg.stop, 0);
  return {
    departs,
    wind,
    stream,
    strongestStream: strongest,
    height: conditions.tide?.highWaterHeight === undefined ? undefined : heightByHighWater(conditions.tide),
    fetch,
    seaUnder:
      fetch &&
      ((law) => {
        let sea = seas.get(law);
        if (!sea) {
          sea = seaUnder(law, fetch, legs.length, swell);
          seas.set(law, sea);
        }
        return sea;
      }),
    fresher: typeof wind === 'object' ? withSpeeds(wind, oneForceMore) : undefined,
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

/** Forecasts put in order: a planner asks for the same one with every plan. */
const tables = new WeakMap<readonly WindAt[], WindTable>();

function windTold({ wind }: Conditions, departs: number | undefined): Around['wind'] {
  if (typeof wind !== 'object' || !('forecast' in wind)) return wind;
  if (departs === undefined) return undefined;
  let table = tables.get(wind.forecast);
  if (!table) {
    table = windTable(wind.forecast);
    tables.set(wind.forecast, table);
  }
  return table;
}

/** Places with streams by tide: one's own, then those of the local waters. */
export function streamPlacesOf({ streamPlaces = [] }: Conditions, waters: Waters | undefined): readonly StreamPlace[] {
  return [...streamPlaces, ...(waters?.streams ?? [])];
}

function streamTold(
  conditions: Conditions,
  waters: Waters | undefined,
  departs: number | undefined,
): { readonly law: Around['stream']; readonly strongest: number } {
  const { stream, tide } = conditions;
  if (stream !== 'by-tide') return { law: stream, strongest: 0 };
  const places = streamPlacesOf(conditions, waters);
  if (!tide || departs === undefined || places.length === 0) return { law: undefined, strongest: 0 };
  const table = streamTable(places, tide);
  const strongest = table.places.reduce((most, { hours }) => Math.max(most, ...hours.map(({ rate }) => rate)), 0);
  const crossesLand = (from: LatLon, to: LatLon): boolean => meetsLand(waters, from, to);
  const reaches: Reach[] = [];
  const law: StreamLaw = (way, seconds) => {
    let reach = way.spot === undefined ? undefined : reaches[way.spot];
    if (!reach) {
      const middle = { lat: (way.from.lat + way.to.lat) / 2, lon: (way.from.lon + way.to.lon) / 2 };
      reach =
        way.streamPlace === undefined
          ? reachOf(table, middle, crossesLand)
          : reachOfNamed(table, middle, way.streamPlace);
      if (way.spot !== undefined) reaches[way.spot] = reach;
    }
    return streamAt(table, reach, { seconds, courseDeg: way.trackDeg });
  };
  return { law, strongest };
}
