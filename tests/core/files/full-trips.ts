import electricTender from '../../../shared/trips/electric-tender.json' with { type: 'json' };
import hireHull from '../../../shared/trips/hire-hull.json' with { type: 'json' };
import petrolDay from '../../../shared/trips/petrol-day.json' with { type: 'json' };

/** Parsed JSON that a test may spoil. */
// biome-ignore lint/suspicious/noExplicitAny: tests put wrong things in every place of a trip
export type Loose = any;

export const shippedTrips: Readonly<Record<string, unknown>> = { petrolDay, electricTender, hireHull };

/** A petrol trip with every optional field given. */
export function petrolTrip(): Loose {
  const trip: Loose = structuredClone(petrolDay);
  trip.craft.hull.plate = { ...trip.craft.hull.plate, scheme: 'us' };
  trip.craft.fouling = 'slime';
  // Copied through text, so that no part of it is a part of the trip.
  trip.trials = JSON.parse(JSON.stringify(fullTrials(trip)));
  trip.load.items[1].at = { x: 1.7, y: -0.4, z: 0.6 };
  trip.route.waypoints[2].speed = 'best';
  trip.route.waypoints[3].speed = 2.5;
  trip.route.waypoints[0].streamPlace = 'Off the haven';
  trip.conditions.batteryTemperatureC = 15;
  trip.conditions.waterTemperatureC = 12;
  trip.policy.reserve = [{ kind: 'thirds' }, { kind: 'share', share: 0.2 }, { kind: 'minutes', minutes: 30 }];
  trip.policy.timeAllowed = 36_000;
  return trip;
}

/** Evidence with every optional field given. */
function fullTrials({ craft, load }: Loose): Loose {
  const told = {
    day: '2026-06-14',
    setup: 'usual',
    load,
    consumedError: 0.05,
    waveHeight: 0.1,
    leftOut: false,
    note: 'x',
  };
  return {
    hull: craft.hull,
    water: 'sea',
    measuredBy: 'the owner',
    fouling: 'clean',
    setups: [{ id: 'usual', drive: craft.drive, store: craft.store }],
    runs: [
      {
        ...told,
        id: 'first',
        passes: [
          { over: 7.5, way: 'out' },
          { over: 7.1, way: 'back' },
        ],
        stream: 0.2,
        rpm: 4500,
        fullThrottle: false,
        consumed: { kind: 'rate', rate: 0.001 },
        wind: { speed: 3, offBowDeg: 20 },
      },
      {
        ...told,
        id: 'second',
        passes: [{ over: 3, way: 'out' }],
        consumed: { kind: 'amount', amount: 0.3, seconds: 600 },
      },
    ],
    refills: [{ ...told, id: 'day out', spent: [{ speed: 6, seconds: 3600 }], amount: 4, readAt: 'battery' }],
  };
}

/** An electric trip with the words in place of figures. */
export function electricTrip(): Loose {
  const trip: Loose = structuredClone(electricTender);
  trip.craft.hull.plate = 'none';
  trip.route.speed = 'best';
  trip.conditions.wind = 'calm';
  return trip;
}

/** Every place in a value, as keys from the outside in, with what is there. */
export function* places(
  value: unknown,
  keys: readonly string[] = [],
): Generator<readonly [readonly string[], unknown]> {
  yield [keys, value];
  if (value === null || typeof value !== 'object') return;
  for (const [key, inner] of Object.entries(value)) yield* places(inner, [...keys, key]);
}

/** A copy with another value at one place; undefined takes the field away. */
export function withAt(trip: unknown, keys: readonly string[], value: unknown): Loose {
  const copy: Loose = structuredClone(trip);
  const last = keys.at(-1)!;
  let owner = copy;
  for (const key of keys.slice(0, -1)) owner = owner[key];
  if (value === undefined) delete owner[last];
  else owner[last] = value;
  return copy;
}
