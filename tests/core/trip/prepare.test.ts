import { describe, expect, it } from 'vitest';
import { usableCharge } from '../../../src/core/drive/battery.ts';
import { fuelMass, usableFuel, usableFuelInRoughWater } from '../../../src/core/drive/tank.ts';
import type { Aboard } from '../../../src/core/load/shapes.ts';
import { givenOf, prepare, scenariosOf } from '../../../src/core/trip/prepare.ts';
import { expected } from '../../../src/core/trip/scenario.ts';
import type { Trip } from '../../../src/core/trip/shapes.ts';
import { standingOf } from '../../../src/core/trip/standing.ts';
import { haven, shipped, soundTrip } from '../../trips.ts';
import { dayOut } from './day-on-the-water.ts';

const day = soundTrip();
const tender = shipped('electric-tender');
const withPolicy = (change: object): Trip => ({ ...day, policy: { ...day.policy, ...change } });
const withSea = (height: number): Trip => ({ ...day, conditions: { ...day.conditions, sea: { height } } });
/** Somebody whose seat nobody gave. */
const guest = (kind: Aboard['kind'] = 'adult', mass = 70): Trip => ({
  ...day,
  load: { ...day.load, items: [...day.load.items, { id: 'guest', kind, mass }] },
});

describe('a trip made ready', () => {
  const ready = prepare(day, haven());

  it('is longer than drawn by 5 %, or by what its crew says', () => {
    const distance = (trip: Trip) => prepare(trip, haven()).stretches.reduce((sum, s) => sum + s.distance, 0);
    const drawn = distance(withPolicy({ drawnFactor: 1 }));
    expect(distance(withPolicy({ drawnFactor: undefined })) / drawn).toBeCloseTo(1.05, 9);
    expect(distance(withPolicy({ drawnFactor: 1.2 })) / drawn).toBeCloseTo(1.2, 9);
    expect(prepare(withPolicy({ drawnFactor: undefined }), haven()).drawnFactor).toBe(1.05);
  });

  it('takes seven and a half minutes to cast off and come alongside, or what its crew says', () => {
    expect(prepare(withPolicy({ manoeuvring: undefined }), haven()).manoeuvring).toBe(450);
    expect(prepare(withPolicy({ manoeuvring: 0 }), haven()).manoeuvring).toBe(0);
    expect(ready.manoeuvring).toBe(600);
  });

  it('has a displacement speed of FnL 0.35', () => {
    const { wettedLength } = day.craft.hull;
    expect(ready.displacementSpeed).toBeCloseTo(0.35 * Math.sqrt(9.80665 * wettedLength), 6);
  });

  it('carries petrol that burns off, its tanks full at their whole capacity', () => {
    const { store } = day.craft;
    if (store.kind !== 'tank') throw new Error('not a tank');
    expect(ready.burns).toBe(true);
    expect(ready.full).toBe(fuelMass(store.tanks, 1));
    expect([ready.storeMass(0), ready.storeMass(0.5), ready.storeMass(1)]).toEqual([
      0,
      fuelMass(store.tanks, 0.5),
      ready.full,
    ]);
  });

  it('carries batteries whose mass stays, full with what their health leaves', () => {
    const electric = prepare(tender, haven());
    const { store } = tender.craft;
    if (store.kind !== 'battery') throw new Error('not a battery');
    const [battery] = store.batteries;
    expect(electric.burns).toBe(false);
    expect(electric.full).toBeCloseTo(
      store.batteries.reduce((sum, b) => sum + b.energyWh * b.health * 3600, 0),
      3,
    );
    expect([electric.storeMass(0), electric.storeMass(1)]).toEqual([0, 0]);
    const worn = { ...store, batteries: [battery!, { ...battery!, health: 0.5 }] };
    const two = prepare({ ...tender, craft: { ...tender.craft, store: worn } }, haven());
    expect(two.full).toBeCloseTo(battery!.energyWh * 3600 * (battery!.health + 0.5), 3);
  });

  it('can use less of a tank in waves from 8 % of the hull on, which uncover its pick-up', () => {
    const { store, hull } = day.craft;
    if (store.kind !== 'tank') throw new Error('not a tank');
    // A tank whose own rest is less than what waves cost.
    const tanks = store.tanks.map((tank) => ({ ...tank, unusableL: 0.1 }));
    const usable = (share: number) => {
      const of = prepare(
        { ...withSea(share * hull.length), craft: { ...day.craft, store: { ...store, tanks } } },
        haven(),
      );
      return of.usable(expected(givenOf(of)));
    };
    expect(usable(0.0799)).toBe(usableFuel(tanks, 0.95));
    expect(usable(0.08)).toBe(usableFuelInRoughWater(tanks, 0.95));
    expect(usable(0.08)).toBeLessThan(usable(0.0799));
  });

  it('can use of a battery what it gives at the temperature of the scenario', () => {
    const electric = prepare(tender, haven());
    const scenario = expected(givenOf(electric));
    expect(electric.usable(scenario)).toBe(
      usableCharge(electric.boatAt(scenario.batteryTemperatureC).bank!, scenario.fill),
    );
    expect(electric.usable({ ...scenario, batteryTemperatureC: -5 })).toBeLessThan(electric.usable(scenario));
  });

  it('has one boat for each temperature', () => {
    expect(ready.boatAt(10)).toBe(ready.boatAt(10));
    expect(ready.boatAt(10)).not.toBe(ready.boatAt(5));
    expect(ready.density).toBe(ready.boatAt(10).water.density);
  });

  it('cuts its stretches by place only where wind or stream change with time and place', () => {
    expect(ready.around.varies).toBe(false);
    const moving = prepare({ ...dayOut(), route: day.route }, haven());
    expect(moving.around.varies).toBe(true);
    expect(moving.stretches.length).toBeGreaterThanOrEqual(ready.stretches.length);
    const total = (of: typeof ready) => of.stretches.reduce((sum, s) => sum + s.distance, 0);
    expect(total(moving)).toBeCloseTo(total(ready), 6);
  });

  it('floats in a way that is known where the record of the hull tells its shape', () => {
    expect(ready.body).toBeDefined();
    const { tube: _, ...bare } = day.craft.hull;
    expect(prepare({ ...day, craft: { ...day.craft, hull: bare } }, haven()).body).toBeUndefined();
  });
});

describe('a seat nobody gave', () => {
  it('moves the boat by what lies between the aft-most and the foremost place somebody may have', () => {
    expect(prepare(day, haven()).forwardMoment).toBe(0);
    const { stations } = day.craft.hull;
    const seats = stations.filter(({ use }) => use === 'seat').map(({ x }) => x);
    const ready = prepare(guest(), haven());
    expect(ready.unknownSeats).toEqual(['guest']);
    expect(ready.forwardMoment).toBeGreaterThan(0);
    expect(ready.forwardMoment).toBeLessThanOrEqual(70 * (Math.max(...seats) - Math.min(...seats)) + 1e-9);
    // Twice the weight, twice the moment.
    expect(prepare(guest('adult', 140), haven()).forwardMoment).toBeCloseTo(2 * ready.forwardMoment, 6);
  });

  it('on a boat without any is amidships at most', () => {
    const bare = { ...day.craft.hull, stations: [] };
    const at = { x: 1, y: 0 };
    const items = day.load.items.map(({ station: _, ...item }) => ({ ...item, at }));
    const trip = {
      ...day,
      craft: { ...day.craft, hull: bare },
      load: { ...day.load, items: [...items, { id: 'guest', kind: 'adult' as const, mass: 70 }] },
    };
    const ready = prepare(trip, haven());
    const moved = ready.base.momentX + ready.forwardMoment;
    const known = prepare({ ...trip, load: { ...trip.load, items } }, haven()).base.momentX;
    expect((moved - known) / 70).toBeCloseTo(bare.wettedLength / 2, 6);
  });

  it('is asked far aft and far forward, in the plan and in the bad cases', () => {
    const [known, unknown] = [prepare(day, haven()), prepare(guest(), haven())].map((of) => scenariosOf(of, undefined));
    expect(unknown!.shown).toHaveLength(2 * known!.shown.length);
    expect(unknown!.bad).toHaveLength(2 * known!.bad.length);
    expect(unknown!.shown.map(({ forward = false }) => forward)).toEqual(known!.shown.flatMap(() => [false, true]));
  });
});

describe('the runs that a plan has to stand', () => {
  it('are two in a sea: at the planned speeds through the waves, and slowed by them', () => {
    expect(scenariosOf(prepare(withSea(0.1), haven()), undefined).shown.map(({ unslowed }) => unslowed)).toEqual([
      true,
      undefined,
    ]);
    const calm = prepare({ ...day, conditions: { ...day.conditions, sea: 'calm' } }, haven());
    expect(scenariosOf(calm, undefined).shown).toHaveLength(1);
  });

  it('have the hump among the bad cases where labouring there is credible', () => {
    const ready = prepare(day, haven());
    const kinds = (hump: number | undefined) => scenariosOf(ready, hump).bad.flatMap((one) => one.kinds);
    expect(kinds(4)).toContain('home-on-hump');
    expect(kinds(undefined)).not.toContain('home-on-hump');
  });

  it('take the cold for a bad case of a battery only', () => {
    const { batteryTemperatureC: _, ...unsaid } = tender.conditions;
    const kinds = (trip: Trip) => scenariosOf(prepare(trip, haven()), undefined).bad.flatMap((one) => one.kinds);
    expect(kinds({ ...tender, conditions: unsaid })).toContain('cold-battery');
    expect(kinds(day)).not.toContain('cold-battery');
  });
});

describe('what is asked instead of what a trip says', () => {
  const ready = prepare(day, haven());

  it('is the fill, which also weighs; else the tank holds 95 % at most and weighs what it was filled to', () => {
    expect(givenOf(ready, { fill: 0.3 })).toMatchObject({ fill: 0.3, weighs: 0.3 });
    const brim = prepare({ ...day, load: { ...day.load, fill: 1 } }, haven());
    expect(givenOf(brim)).toMatchObject({ fill: 0.95, weighs: 1 });
    const { fill: _, ...unsaid } = day.load;
    const given = givenOf(prepare({ ...day, load: unsaid }, haven()));
    expect([given.fill, given.weighs]).toEqual([undefined, undefined]);
  });

  it('is wind, stream and waves as asked, on a route that is one way or not', () => {
    expect(givenOf(ready, { windSpeed: 5, streamRate: 1, waveHeight: 0.2 })).toMatchObject({
      windSpeed: 5,
      streamRate: 1,
      waveHeight: 0.2,
      oneWay: false,
      length: day.craft.hull.length,
    });
    expect(givenOf(prepare({ ...day, route: { ...day.route, shape: 'one-way' } }, haven())).oneWay).toBe(true);
  });
});

describe('a trip that cannot be opened', () => {
  const problems = (trip: Trip) => {
    const found = standingOf(trip, haven());
    return found.ok ? [] : found.problems.map(({ code, path }) => `${code} ${path}`);
  };
  const routed = (waypoints: Trip['route']['waypoints'], shape: Trip['route']['shape'] = 'one-way'): Trip => ({
    ...day,
    route: { ...day.route, shape, waypoints },
  });
  const from = { lat: 45.985, lon: -32.07 };

  it('has a route with less than two points', () => {
    expect(problems(routed([]))).toEqual(['route-too-short route.waypoints']);
    expect(problems(routed([from]))).toEqual(['route-too-short route.waypoints']);
    const short = standingOf(routed([from]), haven());
    expect(!short.ok && short.problems[0]!.limit).toBe(2);
  });

  it('has a route of less than a metre', () => {
    const north = (metres: number) => ({ ...from, lat: from.lat + metres / 111_195 });
    expect(problems(routed([from, from]))).toEqual(['route-no-length route.waypoints']);
    // 5 % longer than drawn.
    expect(problems(routed([from, north(0.94)]))).toEqual(['route-no-length route.waypoints']);
    expect(problems(routed([from, north(0.97)]))).toEqual([]);
  });

  it('takes the stream of a place that nobody knows', () => {
    const trip = {
      ...dayOut(),
      route: { ...day.route, waypoints: [from, { lat: 45.962, lon: -32.07, streamPlace: 'Nowhere' }] },
    };
    expect(problems(trip)).toEqual(['no-such-stream-place route.waypoints.1.streamPlace']);
    // Where the trip's own waters are missing the place may be theirs.
    expect(standingOf({ ...trip, waters: 'haven' }, undefined).ok).toBe(true);
    // Where the stream is told otherwise nobody asks for the place.
    expect(problems({ ...trip, conditions: { ...trip.conditions, stream: 'slack' } })).toEqual([]);
  });

  it('is opened with a factor on every consumption', () => {
    const [plain, more] = [1, 1.5].map((use) => {
      const found = standingOf(day, haven(), use);
      if (!found.ok) throw new Error('it opens');
      return found.value.fuel.run.need;
    });
    expect(more! / plain!).toBeCloseTo(1.5, 3);
    const found = standingOf(day, haven());
    expect(found.ok && found.value.fuel.run.need).toBe(plain);
  });
});
