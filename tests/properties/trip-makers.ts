import fc from 'fast-check';
import { expect } from 'vitest';
import type { Calibration, Craft } from '../../src/core/craft/shapes.ts';
import { priorDeviations } from '../../src/core/curve/factors.ts';
import { craftFrom, engines, hulls, stores } from '../../src/core/files/catalogue.ts';
import type { Aboard, Load } from '../../src/core/load/shapes.ts';
import type { LatLon, PlannedSpeed, Route, Waypoint } from '../../src/core/route/shapes.ts';
import type { Waters } from '../../src/core/route/waters.ts';
import { planTrip } from '../../src/core/trip/plan-trip.ts';
import { verdictOf } from '../../src/core/trip/reasons.ts';
import type { Plan, Policy, ReasonCode, ReserveRule, Trip, Verdict } from '../../src/core/trip/shapes.ts';
import type { Conditions } from '../../src/core/water/shapes.ts';

const RANK: Readonly<Record<Verdict, number>> = { go: 0, marginal: 1, 'no-go': 2 };

export const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const maybe = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: undefined, freq: 4 });

const petrol = engines.filter(({ drive }) => drive.kind === 'petrol').map(({ id }) => id);
const electric = engines.filter(({ drive }) => drive.kind === 'electric').map(({ id }) => id);
const tanks = stores.filter(({ store }) => store.kind === 'tank').map(({ id }) => id);
const batteries = stores.filter(({ store }) => store.kind === 'battery').map(({ id }) => id);

const drives = fc.oneof(
  { weight: 2, arbitrary: fc.tuple(fc.constantFrom(...petrol), fc.constantFrom(...tanks)) },
  { weight: 1, arbitrary: fc.tuple(fc.constantFrom(...electric), fc.constantFrom(...batteries)) },
);

/** Any shipped hull with any shipped engine and store, its plate read, absent or unread. */
export const crafts: fc.Arbitrary<Craft> = fc
  .tuple(fc.constantFrom(...hulls), drives, fc.constantFrom('typical', 'typical', 'typical', 'none', 'unread'))
  .map(([{ id, typicalPlate }, [engine, store], plate]) => {
    const craft = craftFrom(id, engine, store);
    if (plate === 'unread') return craft;
    return { ...craft, hull: { ...craft.hull, plate: plate === 'none' ? 'none' : typicalPlate } };
  });

const seats = [
  'helm',
  'seat-aft-port',
  'seat-aft-starboard',
  'seat-mid',
  'seat-fore-port',
  'seat-fore-starboard',
  'gear-bow',
  'gear-mid',
  'gear-aft',
];

/** One at the helm and up to four more, or gear; now and then a seat is not given. */
export const loads: fc.Arbitrary<Load> = fc
  .record({
    helm: between(50, 120),
    others: fc.array(
      fc.record({
        kind: fc.constantFrom('adult', 'child', 'dog', 'gear'),
        mass: between(1, 110),
        station: fc.option(fc.constantFrom(...seats), { nil: undefined, freq: 12 }),
      }),
      { maxLength: 5 },
    ),
    fill: maybe(between(0, 1)),
    fillKnownBy: maybe(fc.constantFrom('measured', 'gauge')),
  })
  .map(({ helm, others, fill, fillKnownBy }) => ({
    items: [
      { id: 'helm', kind: 'adult', mass: helm, station: 'helm', helm: true } as Aboard,
      ...others.map((other, i) => ({ id: `i${i}`, ...other }) as Aboard),
    ],
    fill,
    fillKnownBy,
  }));

const speeds: fc.Arbitrary<PlannedSpeed> = fc.oneof(
  { weight: 8, arbitrary: between(0.5, 14) },
  { weight: 1, arbitrary: fc.constantFrom('best' as const, 'best-planing' as const) },
);

function waypointsAround(centre: LatLon, span: number, speed: fc.Arbitrary<PlannedSpeed>): fc.Arbitrary<Waypoint[]> {
  const waypoint = fc
    .record({
      north: between(-span, span),
      east: between(-span, span),
      stop: fc.option(between(0, 7200), { nil: undefined, freq: 1 }),
      speed: fc.option(speed, { nil: undefined, freq: 1 }),
    })
    .map(({ north, east, stop, speed: own }) => ({
      lat: centre.lat + north,
      lon: centre.lon + east,
      ...(stop !== undefined && { stop }),
      ...(own !== undefined && { speed: own }),
    }));
  return fc.array(waypoint, { minLength: 2, maxLength: 6 });
}

export interface Place {
  readonly centre: LatLon;
  /** Degrees to each side. */
  readonly span: number;
}

/** Inside the invented estuary, and anywhere in the world without waters. */
export const ESTUARY: Place = { centre: { lat: 46, lon: -32.003 }, span: 0.045 };
export const EQUATOR: Place = { centre: { lat: 0, lon: 20 }, span: 0.05 };

function routes(place: Place, speed: fc.Arbitrary<PlannedSpeed> = speeds): fc.Arbitrary<Route> {
  return fc
    .record({
      shape: fc.constantFrom('out-and-home' as const, 'loop' as const, 'one-way' as const),
      waypoints: waypointsAround(place.centre, place.span, speed),
      speed,
    })
    .filter(({ waypoints }) => {
      const [a, b] = waypoints;
      return Math.abs(a!.lat - b!.lat) + Math.abs(a!.lon - b!.lon) > 1e-3;
    });
}

const conditions: fc.Arbitrary<Conditions> = fc.record({
  wind: maybe(fc.oneof(fc.constant('calm' as const), fc.record({ fromDeg: between(0, 360), speed: between(0, 14) }))),
  stream: maybe(fc.oneof(fc.constant('slack' as const), fc.record({ setDeg: between(0, 360), rate: between(0, 1.5) }))),
  sea: maybe(fc.oneof(fc.constant('calm' as const), fc.record({ height: between(0, 0.8) }))),
  water: fc.constantFrom('sea', 'fresh'),
  batteryTemperatureC: maybe(between(-5, 35)),
});

const hourly = fc.array(fc.record({ fromDeg: between(0, 360), speed: between(0, 14), gust: maybe(between(0, 25)) }), {
  minLength: 1,
  maxLength: 14,
});
const flows = fc.array(fc.record({ setDeg: between(0, 360), rate: between(0, 2) }), { minLength: 13, maxLength: 13 });

/** Wind by the hour, streams by the tide and waves from the wind, each now and then, from one hour of one day on. */
export function changing(place: Place): fc.Arbitrary<Partial<Conditions>> {
  return fc
    .record({
      winds: maybe(hourly),
      places: fc.array(fc.record({ north: between(-1, 1), east: between(-1, 1), springs: flows, neaps: flows }), {
        maxLength: 3,
      }),
      byTide: fc.boolean(),
      range: between(1, 5),
      highWater: fc.integer({ min: 0, max: 23 }),
      height: maybe(between(2, 6)),
      leaves: fc.integer({ min: 0, max: 23 }),
      swell: maybe(between(0, 0.5)),
    })
    .map(({ winds, places, byTide, range, highWater, height, leaves, swell }) => ({
      departure: `2026-07-15T${String(leaves).padStart(2, '0')}:20:00Z`,
      ...(winds && {
        wind: {
          forecast: winds.map((wind, hour) => ({
            time: `2026-07-15T${String(hour + 6).padStart(2, '0')}:00:00Z`,
            ...wind,
          })),
        },
      }),
      ...(byTide && {
        stream: 'by-tide' as const,
        streamPlaces: places.map(({ north, east, springs, neaps }, i) => ({
          name: `Place ${i}`,
          lat: place.centre.lat + place.span * north,
          lon: place.centre.lon + place.span * east,
          firstHour: -6,
          springs,
          neaps,
        })),
      }),
      tide: {
        port: 'Standard Port',
        highWater: `2026-07-15T${String(highWater).padStart(2, '0')}:00:00Z`,
        range,
        meanSpringRange: 4,
        meanNeapRange: 2,
        ...(height !== undefined && { highWaterHeight: height }),
      },
      sea: swell === undefined ? undefined : { swell },
    }));
}

const rules: fc.Arbitrary<ReserveRule> = fc.oneof(
  fc.constant({ kind: 'thirds' as const }),
  fc.record({ kind: fc.constant('share' as const), share: between(0.05, 0.6) }),
  fc.record({ kind: fc.constant('minutes' as const), minutes: between(5, 90) }),
);

const policies: fc.Arbitrary<Policy> = fc.record({
  reserve: fc.array(rules, { maxLength: 2 }),
  manoeuvring: maybe(between(0, 1200)),
  drawnFactor: maybe(between(1, 1.2)),
  maxWind: maybe(between(3, 14)),
  maxWave: maybe(between(0.1, 1)),
  timeAllowed: fc.option(between(600, 40_000), { nil: undefined, freq: 1 }),
});

/** Any shipped craft with any load on any route in any weather. */
export function trips(place: Place = ESTUARY, speed?: fc.Arbitrary<PlannedSpeed>): fc.Arbitrary<Trip> {
  return fc
    .record({ craft: crafts, load: loads, route: routes(place, speed), conditions, policy: policies })
    .map((parts) => ({ version: 1 as const, ...parts }));
}

/** Craft whose engine the hull's usual plate allows, of at least a fifth of its power. */
const matched: fc.Arbitrary<Craft> = fc
  .tuple(fc.constantFrom(...hulls), between(0, 1), fc.constantFrom('typical', 'typical', 'typical', 'none', 'unread'))
  .chain(([{ id, typicalPlate }, , plate]) => {
    const { maxPower = Infinity, maxEngineMass = Infinity } = typicalPlate;
    const fit = engines.filter(
      ({ drive }) => drive.ratedPower <= maxPower && drive.ratedPower >= maxPower / 5 && drive.mass <= maxEngineMass,
    );
    return fc.constantFrom(...fit).chain((engine) =>
      fc.constantFrom(...(engine.drive.kind === 'petrol' ? tanks : batteries)).map((store) => {
        const craft = craftFrom(id, engine.id, store);
        if (plate === 'unread') return craft;
        const read = plate === 'none' ? ('none' as const) : typicalPlate;
        return { ...craft, hull: { ...craft.hull, plate: read } };
      }),
    );
  });

/** A small crew seated about the middle. */
const crews: fc.Arbitrary<Load> = fc
  .record({
    helm: between(60, 100),
    other: fc.option(between(30, 100), { nil: undefined }),
    bag: between(1, 40),
    fill: fc.option(between(0.4, 1), { nil: undefined, freq: 8 }),
    fillKnownBy: fc.option(fc.constantFrom('measured', 'gauge'), { nil: undefined, freq: 8 }),
  })
  .map(({ helm, other, bag, fill, fillKnownBy }) => ({
    items: [
      { id: 'helm', kind: 'adult', mass: helm, station: 'seat-mid', helm: true } as Aboard,
      { id: 'bag', kind: 'gear', mass: bag, station: 'gear-bow' } as Aboard,
      ...(other === undefined ? [] : [{ id: 'other', kind: 'adult', mass: other, at: { x: 1.5, y: 0 } } as Aboard]),
    ],
    fill,
    fillKnownBy,
  }));

const fair: fc.Arbitrary<Conditions> = fc.record({
  wind: fc.option(
    fc.oneof(fc.constant('calm' as const), fc.record({ fromDeg: between(0, 360), speed: between(0, 9) })),
    { nil: undefined, freq: 10 },
  ),
  stream: fc.option(
    fc.oneof(fc.constant('slack' as const), fc.record({ setDeg: between(0, 360), rate: between(0, 0.8) })),
    { nil: undefined, freq: 10 },
  ),
  sea: fc.option(fc.oneof(fc.constant('calm' as const), fc.record({ height: between(0, 0.4) })), {
    nil: undefined,
    freq: 10,
  }),
  water: fc.constantFrom('sea', 'fresh'),
  batteryTemperatureC: fc.option(between(5, 30), { nil: undefined, freq: 10 }),
});

/** Open water of the invented estuary. */
export const OFFING: Place = { centre: { lat: 45.968, lon: -32.06 }, span: 0.012 };

/** Trips somebody might make: many are a go, and the rest miss it by this or that. */
export function likelyTrips(
  place: Place = OFFING,
  speed: fc.Arbitrary<PlannedSpeed> = between(1, 9),
): fc.Arbitrary<Trip> {
  return fc
    .record({ craft: matched, load: crews, route: routes(place, speed), conditions: fair, policy: policies })
    .map((parts) => ({ version: 1 as const, ...parts }));
}

let keeping: Trip[] | undefined;

/** From here on every trip planned is kept in `trips`, until it is called without. */
export function keepPlanned(trips: Trip[] | undefined): void {
  keeping = trips;
}

export function planned(trip: Trip, waters?: Waters, quick = true): Plan {
  keeping?.push(waters ? { ...trip, waters: 'haven' } : trip);
  const result = planTrip(trip, waters, { quick });
  if (!result.ok) throw new Error(result.problems.map((p) => p.message).join(' '));
  return result.value;
}

/** A calibration with the prior means and the prior covariance times a factor. */
export function priorTimes({ drive }: Craft, factor: number): Calibration {
  const deviations = priorDeviations(drive);
  return {
    factors: [1, 1, 1, 0, 0, 1, 0],
    covariance: deviations.map((a, row) => deviations.map((b, column) => (row === column ? a * b * factor : 0))),
    runs: 3,
  };
}

/** The trip with this much more gear at the boat's own centre of gravity. */
export function heavier(trip: Trip, { balance }: Plan, mass: number): Trip {
  const at = { x: balance.lcg, y: balance.lateral, z: balance.vcg };
  const item: Aboard = { id: 'extra', kind: 'gear', mass, at };
  return { ...trip, load: { ...trip.load, items: [...trip.load.items, item] } };
}

/** Whether every leg of two plans is sailed at the same speed through the water. */
export function sameSpeeds(a: Plan, b: Plan): boolean {
  return (
    a.legs.length === b.legs.length &&
    a.legs.every((leg, i) => Math.abs(leg.speedThroughWater - b.legs[i]!.speedThroughWater) < 1e-9)
  );
}

/** Two figures that differ by rounding alone. */
export function same(a: number, b: number, relative = 1e-9): void {
  if (a === b) return;
  expect(Math.abs(a - b)).toBeLessThanOrEqual(relative * Math.max(Math.abs(a), Math.abs(b)) + 1e-300);
}

const DECIDED_BY_FUEL: readonly ReasonCode[] = [
  'reserve-broken',
  'runs-dry',
  'bad-case-dry',
  'reserve-unsure',
  'nothing-usable',
];

/** The plan with the verdict that fuel or charge alone would give. */
export function byFuel(plan: Plan): Plan {
  return { ...plan, verdict: verdictOf(plan.reasons.filter(({ code }) => DECIDED_BY_FUEL.includes(code))) };
}

/** Every number in a plan with the path to it. */
export function* numbersOf(value: unknown, path = ''): Generator<readonly [string, number]> {
  if (typeof value === 'number') yield [path, value];
  else if (value !== null && typeof value === 'object') {
    for (const [key, inner] of Object.entries(value)) yield* numbersOf(inner, `${path}.${key}`);
  }
}

/** Fails where the plan that is worse by its inputs is judged greener. */
export function expectNoGreener(worse: Plan, better: Plan): void {
  const codes = (plan: Plan) => plan.reasons.map(({ code, level }) => `${code} ${level}`).join(', ');
  if (RANK[worse.verdict] >= RANK[better.verdict]) return;
  throw new Error(`${better.verdict} (${codes(better)}) turned ${worse.verdict} (${codes(worse)})`);
}
