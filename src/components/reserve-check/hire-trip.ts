import hireFleet from '../../../shared/craft/hire-fleet.json' with { type: 'json' };
import hireRoutes from '../../../shared/trips/hire-routes.json' with { type: 'json' };
import type { Craft, Hull, Plate } from '../../core/craft/shapes.ts';
import { craftFrom } from '../../core/files/catalogue.ts';
import type { Aboard } from '../../core/load/shapes.ts';
import { destination } from '../../core/route/distance.ts';
import type { Route, Waypoint } from '../../core/route/shapes.ts';
import type { BoatProfile } from '../../core/trials/shapes.ts';
import { MANOEUVRING } from '../../core/trip/defaults.ts';
import type { Policy, Trip } from '../../core/trip/shapes.ts';
import { tightened } from '../../core/trip/tightened.ts';
import type { Conditions } from '../../core/water/shapes.ts';

/** A boat of a hire desk, with the plate as the desk read it: from shipped parts, or as it was measured. */
export type HireBoat = HiredOut & (ShippedParts | { readonly profile: BoatProfile });

interface ShippedParts {
  readonly hullId: string;
  readonly engineId: string;
  readonly storeId: string;
  readonly profile?: undefined;
}

interface HiredOut {
  readonly id: string;
  readonly name: string;
  /** Speed through the water it is hired out for, m/s. */
  readonly speed: number;
  readonly plate: Plate;
}

export interface HireRoute {
  readonly id: string;
  readonly name: string;
  readonly shape: Route['shape'];
  readonly waypoints: readonly Waypoint[];
}

export const HIRE_BOATS = hireFleet.boats as readonly HireBoat[];
export const HIRE_ROUTES = hireRoutes.routes as readonly HireRoute[];

/** What the desk types. `hours` is the time allowed, s; without a route the engine is counted as running all of it. */
export interface HireRequest {
  readonly boat: HireBoat;
  readonly weights: readonly number[];
  readonly fill: number | undefined;
  readonly fillKnownBy: 'measured' | 'gauge' | undefined;
  readonly route: HireRoute | undefined;
  readonly timeAllowed: number | undefined;
  readonly conditions: Conditions;
  readonly policy: Policy;
}

/** Where an hours-only hire is laid out; open water, so that no shore is taken for checked. */
const ANYWHERE = { lat: 45.99, lon: -32.04 };
/** Below this a person counts as a child, kg (common practice, no source). */
const CHILD = 45;

/** The trip behind a reserve check. Everyone is seated in the order of the boat's seats, the first at the helm. */
export function hireTrip(request: HireRequest): Trip {
  const { boat, fill, fillKnownBy, route, timeAllowed, conditions, policy } = request;
  const craft = hireCraft(boat);
  return {
    version: 1,
    name: route ? `${boat.name}: ${route.name}` : boat.name,
    craft: { ...craft, hull: { ...craft.hull, plate: boat.plate } },
    load: { items: crew(craft.hull, request.weights), fill, fillKnownBy },
    route: route
      ? { shape: route.shape, waypoints: route.waypoints, speed: boat.speed }
      : {
          shape: 'out-and-home',
          waypoints: straightOut(boat.speed, timeAllowed ?? 0, policy.manoeuvring ?? MANOEUVRING),
          speed: boat.speed,
        },
    conditions,
    policy: route
      ? tightened({ ...policy, timeAllowed }, { timeAllowed: policy.timeAllowed })
      : { ...policy, timeAllowed: undefined, drawnFactor: 1 },
    waters: route ? hireRoutes.waters : undefined,
    ...(boat.profile && { trials: boat.profile.trials }),
  };
}

/** A measured boat goes out as its profile says it usually does. */
export function hireCraft(boat: HireBoat): Craft {
  if (!boat.profile) return craftFrom(boat.hullId, boat.engineId, boat.storeId);
  const { hull, setups } = boat.profile.trials;
  const { drive, store } = setups.find(({ id }) => id === boat.profile.usual) ?? setups[0]!;
  return { hull, drive, store };
}

/** Half the time out, half home, less the manoeuvring. */
function straightOut(speed: number, time: number, manoeuvring: number): readonly Waypoint[] {
  const running = Math.max(time - manoeuvring, 60);
  return [ANYWHERE, destination(ANYWHERE, 225, (speed * running) / 2)];
}

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
