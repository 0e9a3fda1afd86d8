import { interpolate, lonBetween, MAX_LATITUDE } from '../../core/route/distance.ts';
import type { LatLon, Waypoint } from '../../core/route/shapes.ts';

/** What the user did to the waypoints; `changed` is a name, stop or speed, `reordered` a waypoint moved up or down. */
export type EditKind =
  | 'added'
  | 'moved'
  | 'deleted'
  | 'reversed'
  | 'inserted'
  | 'reordered'
  | 'changed'
  | 'undone'
  | 'redone';

/** Detail of `route-edited`. While `live` the edit is still going on and may yet be taken back. */
export interface RouteEdit {
  readonly waypoints: readonly Waypoint[];
  readonly live: boolean;
  readonly what: EditKind;
  /** The waypoint concerned, counted from 0 in `waypoints`. */
  readonly index?: number;
}

type Waypoints = readonly Waypoint[];

/** A place as it is kept: where legs can be laid, longitude within 180, six decimals (about 0.1 m). */
export function place({ lat, lon }: LatLon): LatLon {
  const round = (degrees: number) => Math.round(degrees * 1e6) / 1e6 + 0;
  return { lat: round(Math.min(MAX_LATITUDE, Math.max(-MAX_LATITUDE, lat))), lon: round(lonBetween(0, lon)) };
}

export function addedAtEnd(waypoints: Waypoints, at: LatLon): Waypoint[] {
  return [...waypoints, place(at)];
}

/** The new waypoint becomes `index`; both halves of a leg that it splits keep that leg's speed and place of its stream. */
export function insertedAt(waypoints: Waypoints, index: number, at: LatLon): Waypoint[] {
  const { speed, streamPlace } = (index > 0 ? waypoints[index - 1] : undefined) ?? {};
  const added = withFields(place(at), { speed, streamPlace });
  return waypoints.toSpliced(index, 0, added);
}

/** Name, stop and speed stay with the waypoint. */
export function movedTo(waypoints: Waypoints, index: number, at: LatLon): Waypoint[] {
  return waypoints.map((waypoint, i) => (i === index ? { ...waypoint, ...place(at) } : waypoint));
}

export function deletedAt(waypoints: Waypoints, index: number): Waypoint[] {
  return waypoints.toSpliced(index, 1);
}

/** The same water the other way: speeds and places of streams belong to legs, so each moves to the other end of its leg. */
export function reversed(waypoints: Waypoints): Waypoint[] {
  const count = waypoints.length;
  return waypoints.toReversed().map((waypoint, i) => {
    // Counted round the closing leg, which keeps its speed too.
    const { speed, streamPlace } = waypoints[(2 * count - 2 - i) % count] ?? {};
    return withFields(waypoint, { speed, streamPlace });
  });
}

/** Changes places with the one before (-1) or after (1); at the ends nothing happens. */
export function reordered(waypoints: Waypoints, index: number, by: -1 | 1): Waypoint[] {
  const here = waypoints[index];
  const there = waypoints[index + by];
  return here && there ? waypoints.with(index, there).with(index + by, here) : [...waypoints];
}

/** Sets a name, stop, filling up or speed; undefined takes the field away. */
export function changedAt(waypoints: Waypoints, index: number, fields: Partial<Waypoint>): Waypoint[] {
  return waypoints.map((waypoint, i) => (i === index ? withFields(waypoint, fields) : waypoint));
}

/**
 * Where a waypoint put in as `index` goes until it is moved: the middle of the leg it splits, or beyond an end by half
 * the leg there. `closed` is a round trip, whose last leg runs back to the first waypoint. Undefined where there is
 * no leg to go by.
 */
export function placeToInsert(waypoints: Waypoints, index: number, closed: boolean): LatLon | undefined {
  const count = waypoints.length;
  const around = closed && count > 1;
  const before = waypoints[index - 1] ?? (around ? waypoints[count - 1] : undefined);
  const after = waypoints[index] ?? (around ? waypoints[0] : undefined);
  if (before && after) return place(interpolate(before, after, 0.5));
  if (after && waypoints[index + 1]) return place(interpolate(waypoints[index + 1]!, after, 1.5));
  if (before && waypoints[index - 2]) return place(interpolate(waypoints[index - 2]!, before, 1.5));
  return undefined;
}

export function sameWaypoints(a: Waypoints, b: Waypoints): boolean {
  return a === b || (a.length === b.length && a.every((waypoint, i) => sameWaypoint(waypoint, b[i]!)));
}

export function sameWaypoint(a: Waypoint, b: Waypoint): boolean {
  return (
    a === b ||
    (a.lat === b.lat &&
      a.lon === b.lon &&
      a.name === b.name &&
      a.stop === b.stop &&
      a.refill === b.refill &&
      a.speed === b.speed &&
      a.streamPlace === b.streamPlace)
  );
}

function withFields(waypoint: Waypoint, fields: Partial<Waypoint>): Waypoint {
  const entries = Object.entries({ ...waypoint, ...fields }).filter(([, value]) => value !== undefined);
  return Object.fromEntries(entries) as unknown as Waypoint;
}
