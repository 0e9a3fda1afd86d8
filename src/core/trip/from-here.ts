import { legBetween } from '../route/distance.ts';
import { sailedLegs } from '../route/sailed-legs.ts';
import type { LatLon, Waypoint } from '../route/shapes.ts';
import { takeRound } from '../route/take-round.ts';
import type { Waters } from '../route/waters.ts';
import type { Problem, Result } from '../units/result.ts';
import { MANOEUVRING } from './defaults.ts';
import { planTrip } from './plan-trip.ts';
import { givenOf, prepare } from './prepare.ts';
import { expected } from './scenario.ts';
import type { Amount, Plan, Trip, Verdict } from './shapes.ts';

/** What is known under way. */
export interface Here {
  readonly at: LatLon;
  /** ISO 8601 with offset. */
  readonly time: string;
  /** Share of capacity the gauge shows, 0 to 1. */
  readonly fill: number;
  /** The turn lies behind: only the way home counts. */
  readonly homeward?: boolean;
}

/** One way to end the trip from here. Amounts kg or J, times s from now. */
export interface WayOut {
  readonly kind: 'go-on' | 'turn' | 'landing';
  /** Of the landing. */
  readonly name?: string;
  readonly verdict: Verdict;
  readonly need: Amount;
  /** Likely left beyond the reserve of the plan; negative: short of it. */
  readonly margin: Amount;
  readonly left: Amount;
  readonly time: number;
  readonly distance: number;
  readonly plan: Plan;
}

export interface FromHere {
  /** Used so far over what the plan foresaw for this place; undefined near the start. */
  readonly usedRatio: number | undefined;
  /** Factor on the consumption of the rest of the trip: more used than planned goes on like that. */
  readonly carriedOn: number;
  /** Where along the plan this is, m, and how far off its line. */
  readonly along: number;
  readonly off: number;
  readonly ways: readonly WayOut[];
}

/** From this much more used than planned the trip is turned early (common practice, no source). */
export const EARLY_TURN = 1.15;
/** Of the planned use: before that a gauge tells nothing. */
const TELLS = 0.1;
/** Landings farther than this are no help, m. */
const FAR = 30_000;
const LANDINGS = 3;
/** Kept off land, shoals and keep-outs on the way to a landing, m (common practice, no source). */
const CLEARANCE = 50;

/**
 * Go on, turn, or make for the nearest landing: each planned from where the boat is, with what the gauge shows, keeping
 * the reserve of the plan made at departure. What was used beyond the plan is carried on into what is to come.
 */
export function fromHere(trip: Trip, plan: Plan, waters: Waters | undefined, here: Here): Result<FromHere> {
  const problems = problemsOf(here);
  if (problems.length > 0) return { ok: false, problems };
  const place = nearestOn(plan, here);
  const usable = usableNow(trip, waters, here);
  const foreseen = plan.usable - place.left;
  const usedRatio = foreseen > TELLS * plan.usable ? Math.max((plan.usable - usable) / foreseen, 0) : undefined;
  const carriedOn = Math.max(usedRatio ?? 1, 1);
  const ways: WayOut[] = [];
  const add = (kind: WayOut['kind'], on: readonly Waypoint[], name?: string): void => {
    const rest = restOf(trip, here, on, reserveShare(plan, usable));
    const found = planTrip(rest, waters, { quick: true, use: carriedOn });
    if (!found.ok) return;
    const { value } = found;
    ways.push({
      kind,
      ...(name !== undefined && { name }),
      verdict: value.verdict,
      need: value.need.median,
      margin: value.left.median - plan.reserve,
      left: value.left.median,
      time: value.time,
      distance: value.distance,
      plan: value,
    });
  };
  add('go-on', onward(trip, plan, place));
  add('turn', backward(trip, plan, place));
  const usual = usualSpeed(plan);
  for (const { name, at } of landingsNear(waters, here.at)) {
    const via = waters ? roundTo(waters, here, at) : [];
    add('landing', [...[here.at, ...via].map((point) => ({ ...point, speed: usual })), at], name);
  }
  return { ok: true, value: { usedRatio, carriedOn, along: place.along, off: place.off, ways } };
}

function problemsOf({ at, fill, time }: Here): Problem[] {
  const problems: Problem[] = [];
  if (!(Math.abs(at.lat) <= 85 && Math.abs(at.lon) <= 180)) {
    problems.push({ code: 'out-of-range', path: 'at', message: 'The position is not on the chart' });
  }
  if (!(fill >= 0 && fill <= 1)) {
    problems.push({ code: 'out-of-range', path: 'fill', message: 'The gauge reads from empty to full', limit: 1 });
  }
  if (!Number.isFinite(Date.parse(time))) {
    problems.push({ code: 'not-a-time', path: 'time', message: 'The time now is missing' });
  }
  return problems;
}

interface Place {
  readonly leg: number;
  readonly share: number;
  /** Along the route, and off its line, m. */
  readonly along: number;
  readonly off: number;
  /** Likely left here by the plan. */
  readonly left: Amount;
}

/** The nearest point of the planned track; of two that are as near (out and home by the same way) the earlier. */
function nearestOn(plan: Plan, { at, homeward = false }: Here): Place {
  let best: Place | undefined;
  let along = 0;
  let left = plan.usable - plan.manoeuvring / 2;
  plan.legs.forEach((leg, i) => {
    const share = shareAlong(leg.from, leg.to, at);
    const near = { lat: mix(leg.from.lat, leg.to.lat, share), lon: mix(leg.from.lon, leg.to.lon, share) };
    const off = legBetween(at, near).distance;
    const asked = !homeward || leg.part === 'home' || plan.distanceOut === plan.distance;
    if (asked && (!best || off < best.off - 1)) {
      best = { leg: i, share, along: along + share * leg.distance, off, left: mix(left, leg.left.median, share) };
    }
    along += leg.distance;
    left = leg.left.median;
  });
  return best!;
}

/** Share of a short leg that lies before the foot of a point, on a local plane. */
function shareAlong(from: LatLon, to: LatLon, at: LatLon): number {
  const narrow = Math.cos((from.lat * Math.PI) / 180);
  const [dx, dy] = [(to.lon - from.lon) * narrow, to.lat - from.lat];
  const [px, py] = [(at.lon - from.lon) * narrow, at.lat - from.lat];
  const square = dx * dx + dy * dy;
  return square > 0 ? Math.min(Math.max((px * dx + py * dy) / square, 0), 1) : 0;
}

const mix = (a: number, b: number, share: number): number => a + (b - a) * share;

/** From here to the end, each stretch at its planned speed, with the stops and fillings up that are still to come. */
function onward({ route }: Trip, { legs }: Plan, { leg: here }: Place): Waypoint[] {
  const drawn = sailedLegs(route).legs;
  const way: Waypoint[] = [];
  let reached: Partial<Waypoint> = {};
  for (let i = here; i < legs.length; i++) {
    const { from, leg, stop, speedThroughWater } = legs[i]!;
    const { refill, streamPlace } = drawn[leg]!;
    way.push({ ...from, ...reached, speed: speedThroughWater, ...(streamPlace !== undefined && { streamPlace }) });
    // Of a leg cut in pieces the last one ends at the waypoint.
    const ends = legs[i + 1]?.leg !== leg;
    reached = { ...(stop > 0 && { stop }), ...(ends && refill !== undefined && { refill }) };
  }
  return [...way, { ...legs.at(-1)!.to, ...reached }];
}

/** From here to the start by the way out. */
function backward({ route }: Trip, { legs }: Plan, { leg: here }: Place): Waypoint[] {
  const drawn = sailedLegs(route).legs;
  const done = legs.slice(0, here + 1).reverse();
  const way = done.map(({ to, leg, speedThroughWater }) => {
    const { streamPlace } = drawn[leg]!;
    return { ...to, speed: speedThroughWater, ...(streamPlace !== undefined && { streamPlace }) };
  });
  return [...way, done.at(-1)!.from];
}

/** The speed planned for most of the trip, m/s. */
function usualSpeed({ legs }: Plan): number {
  return legs.reduce((a, b) => (b.distance > a.distance ? b : a)).speedThroughWater;
}

/** The rest of the trip as a trip of its own, one way from here. */
function restOf(trip: Trip, here: Here, on: readonly Waypoint[], share: number): Trip {
  const [first, ...others] = on;
  return {
    ...trip,
    load: { ...trip.load, fill: here.fill },
    route: { shape: 'one-way', waypoints: [{ ...first!, ...here.at }, ...others], speed: trip.route.speed },
    conditions: { ...trip.conditions, departure: here.time },
    policy: {
      ...trip.policy,
      reserve: [{ kind: 'share', share }],
      // Casting off is behind.
      manoeuvring: (trip.policy.manoeuvring ?? MANOEUVRING) / 2,
      timeAllowed: allowedStill(trip, here),
    },
  };
}

/** What is left of the time allowed, s; a moment where none is. */
function allowedStill({ conditions, policy }: Trip, { time }: Here): number | undefined {
  if (policy.timeAllowed === undefined || conditions.departure === undefined) return undefined;
  const gone = (Date.parse(time) - Date.parse(conditions.departure)) / 1000;
  return Math.max(policy.timeAllowed - Math.max(gone, 0), 1);
}

/** The reserve kept since departure, as a share of what is left; more than there is reads as all but nothing usable. */
function reserveShare({ reserve }: Plan, usable: Amount): number {
  return usable > 0 ? Math.min(Math.max(reserve / usable, 1e-3), 0.999) : 0.999;
}

function usableNow(trip: Trip, waters: Waters | undefined, here: Here): Amount {
  const now = { ...trip, load: { ...trip.load, fill: here.fill } };
  const prepared = prepare(now, waters);
  return prepared.usable(expected(givenOf(prepared)));
}

/** Where to turn on a way to a landing that keeps clear of the land; straight where none is found. */
function roundTo(waters: Waters, { at, time }: Here, landing: LatLon): readonly LatLon[] {
  const found = takeRound(waters, at, landing, { clearance: CLEARANCE, departure: time });
  return found.ok ? found.value.via : [];
}

function landingsNear(waters: Waters | undefined, at: LatLon): { readonly name: string; readonly at: Waypoint }[] {
  return (waters?.landings ?? [])
    .map(({ geometry, properties }) => {
      const [lon = 0, lat = 0] = geometry.coordinates;
      return { name: properties.name, at: { lat, lon }, distance: legBetween(at, { lat, lon }).distance };
    })
    .filter(({ distance }) => distance < FAR)
    .sort((a, b) => a.distance - b.distance)
    .slice(0, LANDINGS);
}
