import { destination, legBetween, MAX_LATITUDE } from '../route/distance.ts';
import type { LatLon, PlannedSpeed, Route } from '../route/shapes.ts';
import { insideWaters, type Waters } from '../route/waters.ts';
import type { Problem, Result } from '../units/result.ts';
import type { Prepared } from './prepare.ts';
import { FARTHEST, type OutlinePoint, type Rays, reachesAlong } from './range-ray.ts';
import type { Run } from './sail.ts';
import type { Amount, Trip } from './shapes.ts';
import { standingOf } from './standing.ts';
import { wayBack } from './turn-back.ts';

export interface RangeOutline {
  readonly from: LatLon;
  /** kg or J that may be used out and home, and one way, from there: reserve, casting off and the way to there taken off. */
  readonly spare: Amount;
  readonly spareOneWay: Amount;
  /** Clockwise from north. */
  readonly points: readonly OutlinePoint[];
  /** The waters known end before some of these distances do. */
  readonly beyondWaters: boolean;
}

export interface OutlineQuestion {
  /** Waypoint to look round from; 0 is the start. */
  readonly from?: number;
  /** Directions, evenly spread. */
  readonly directions?: number;
}

/**
 * How far the boat gets from a place in every direction, out and home and one way, at the speed planned there, with
 * the wind, stream, sea and load of the trip and the reserve kept; land and keep-outs in season end it sooner, and
 * speed limits slow it. From a later waypoint the way there, and for out and home the same way back to the start, is
 * taken off first. From the start, in the direction of the route, it is what `ranges` says.
 */
export function rangeOutline(
  trip: Trip,
  waters: Waters | undefined,
  { from = 0, directions = 72 }: OutlineQuestion = {},
): Result<RangeOutline> {
  const start = trip.route.waypoints[from];
  if (!start) return refused('route-too-short', 'route.waypoints', 'Set the place where the trip starts');
  const found = standingOf(withWay(trip), waters);
  if (!found.ok) return found;
  const { prepared, fuel } = found.value;
  const { run, usable, reserve } = fuel;
  const place = { lat: start.lat, lon: start.lon };
  const { there, back } = wayTo(prepared, run, trip.route.waypoints.length > 1 ? from : 0);
  const left = usable - reserve - run.manoeuvring - there;
  const spare = Math.max(left - back, 0);
  const spareOneWay = Math.max(left, 0);
  const rays: Rays = {
    prepared,
    run,
    waters,
    place,
    speed: trip.route.waypoints.length > 1 ? mainSpeed(run, trip.route) : trip.route.speed,
    length: waters ? acrossWaters(waters, place) : 0,
    costs: new Map(),
  };
  const points: OutlinePoint[] = [];
  for (let i = 0; i < directions; i++) points.push(reachesAlong(rays, (360 * i) / directions, spare, spareOneWay));
  const beyondWaters =
    waters !== undefined &&
    points.some(({ outAndHome, oneWay }) => !insideWaters(waters, outAndHome.at) || !insideWaters(waters, oneWay.at));
  return { ok: true, value: { from: place, spare, spareOneWay, points, beyondWaters } };
}

/** The speed planned for most of the way out, as `ranges` takes it. */
function mainSpeed(run: Run, route: Route): PlannedSpeed {
  const outward = run.sailed.filter((s) => s.stretch.part === 'out' && s.possible);
  const longest = outward.reduce((a, b) => (b.stretch.distance > (a?.stretch.distance ?? 0) ? b : a), outward[0]);
  return longest?.stretch.speed ?? route.speed;
}

/** What the legs to a waypoint use, and what the same way back to the start would, kg or J. */
function wayTo(prepared: Prepared, run: Run, waypoint: number): { there: number; back: number } {
  let there = 0;
  let back = 0;
  const { walked, stretches } = wayBack(prepared, run);
  walked.forEach(({ stretch }, i) => {
    if (stretch.leg >= waypoint) return;
    there += stretches[i]!.needOnward;
    back += stretches[i]!.needBack;
  });
  return { there, back };
}

/** A trip of one point as yet: any short way gives the speed and the tank that it would start with. */
function withWay(trip: Trip): Trip {
  const [start, ...more] = trip.route.waypoints;
  if (!start || more.length > 0) return trip;
  const route: Route = { ...trip.route, shape: 'out-and-home', waypoints: [start, destination(start, 0, 100)] };
  return { ...trip, route };
}

/** Far enough from a place to be past all that is known, m. */
function acrossWaters({ bounds }: Waters, from: LatLon): number {
  if (!bounds) return 0;
  const { minX, minY, maxX, maxY } = bounds;
  const corners = [Math.max(minY, -MAX_LATITUDE), Math.min(maxY, MAX_LATITUDE)].flatMap((lat) =>
    [minX, maxX].map((lon) => ({ lat, lon })),
  );
  return Math.min(Math.max(...corners.map((corner) => legBetween(from, corner).distance)), FARTHEST) + 1;
}

function refused(code: string, path: string, message: string): { ok: false; problems: Problem[] } {
  return { ok: false, problems: [{ code, path, message }] };
}
