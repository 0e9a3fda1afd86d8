import type { Craft, Hull } from '../craft/shapes.ts';
import type { Aboard } from '../load/shapes.ts';
import { destination } from '../route/distance.ts';
import type { LatLon, Waypoint } from '../route/shapes.ts';
import { MANOEUVRING } from '../trip/defaults.ts';
import type { Policy, Trip } from '../trip/shapes.ts';
import { tightened } from '../trip/tightened.ts';
import type { Conditions } from '../water/shapes.ts';
import type { HireBoat, HireRoute } from './shapes.ts';

/** What the desk types. `timeAllowed` is s; without a route the engine is counted as running all of it. */
export interface HireRequest {
  readonly boat: HireBoat;
  readonly weights: readonly number[];
  readonly fill: number | undefined;
  readonly fillKnownBy: 'measured' | 'gauge' | undefined;
  readonly route: HireRoute | undefined;
  readonly timeAllowed: number | undefined;
  readonly conditions: Conditions;
  readonly policy: Policy;
  /** Name of the local waters of the routes. */
  readonly waters?: string | undefined;
  /** Where a hire without a set route starts; absent: on open water, so that no shore is taken for checked. */
  readonly start?: LatLon | undefined;
}

/** Where an hours-only hire is laid out when nobody says where the desk lies. */
const ANYWHERE = { lat: 45.99, lon: -32.04 };
/** Below this a person counts as a child, kg (common practice, no source). */
const CHILD = 45;

/**
 * The trip behind a reserve check, with what the boat is. Everyone is seated in the order of the boat's seats, the first
 * at the helm.
 */
export function hiredTrip(craft: Craft, request: HireRequest): Trip {
  const { boat, fill, fillKnownBy, route, timeAllowed, conditions, policy, start = ANYWHERE } = request;
  return {
    version: 1,
    name: route ? `${boat.name}: ${route.name}` : boat.name,
    craft: { ...craft, hull: { ...craft.hull, plate: boat.plate } },
    load: { items: crew(craft.hull, request.weights), fill, fillKnownBy },
    route: route
      ? { shape: route.shape, waypoints: route.waypoints, speed: boat.speed }
      : {
          shape: 'out-and-home',
          waypoints: straightOut(start, boat.speed, timeAllowed ?? 0, policy.manoeuvring ?? MANOEUVRING),
          speed: boat.speed,
        },
    conditions,
    policy: route
      ? tightened({ ...policy, timeAllowed }, { timeAllowed: policy.timeAllowed })
      : { ...policy, timeAllowed: undefined, drawnFactor: 1 },
    waters: route ? request.waters : undefined,
    ...(boat.profile && { trials: boat.profile.trials }),
  };
}

/** Half the time out, half home, less the manoeuvring. */
function straightOut(start: LatLon, speed: number, time: number, manoeuvring: number): readonly Waypoint[] {
  const running = Math.max(time - manoeuvring, 60);
  const { lat, lon } = start;
  return [{ lat, lon }, destination(start, OUT_DEG, (speed * running) / 2)];
}

/** Course on which an hours-only hire is laid out, degrees. */
export const OUT_DEG = 225;

function crew(hull: Hull, weights: readonly number[]): readonly Aboard[] {
  const helm = hull.stations.find((s) => s.use === 'helm');
  const seats = hull.stations.filter((s) => s.use === 'seat');
  const places = helm ? [helm, ...balanced(seats)] : balanced(seats);
  return weights.map((mass, i) => ({
    id: `p${i + 1}`,
    kind: mass < CHILD ? ('child' as const) : ('adult' as const),
    mass,
    ...(places[i] && { station: places[i].id }),
    ...(i === 0 && { helm: true }),
  }));
}

/** Seats on the middle line first, then in pairs from forward aft, one each side. */
function balanced<T extends { x: number; y: number }>(seats: readonly T[]): readonly T[] {
  return [...seats].sort((a, b) => Number(a.y !== 0) - Number(b.y !== 0) || b.x - a.x || a.y - b.y);
}
