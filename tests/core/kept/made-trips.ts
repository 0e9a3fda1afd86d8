import type { Battery, Calibration, Craft, Plate, Tank } from '../../../src/core/craft/shapes.ts';
import { craftFrom } from '../../../src/core/files/catalogue.ts';
import type { Aboard, Load } from '../../../src/core/load/shapes.ts';
import type { Route } from '../../../src/core/route/shapes.ts';
import type { Policy, Trip } from '../../../src/core/trip/shapes.ts';
import type { Conditions } from '../../../src/core/water/shapes.ts';
import { shipped } from '../../trips.ts';
import { SPRINGS } from '../trip/day-on-the-water.ts';

/** Invented trips on the invented estuary, chosen so that between them they come through every corner of the core. */

const plate: Plate = {
  scheme: 'eu',
  maxLoad: 420,
  persons: 4,
  maxPower: 15000,
  maxEngineMass: 60,
  category: 'C',
};

export function craft(hull: string, engine: string, store: string, of: Plate | 'none' | undefined = plate): Craft {
  const made = craftFrom(hull, engine, store);
  return of === undefined ? made : { ...made, hull: { ...made.hull, plate: of } };
}

function withTanks(one: Craft, change: (tank: Tank, i: number) => Tank): Craft {
  return one.store.kind === 'tank' ? { ...one, store: { kind: 'tank', tanks: one.store.tanks.map(change) } } : one;
}

function withBatteries(one: Craft, change: (battery: Battery, i: number) => Battery): Craft {
  if (one.store.kind !== 'battery') return one;
  return { ...one, store: { kind: 'battery', batteries: one.store.batteries.map(change) } };
}

/** Factors as trials might give them, each a little off its prior, all of them tied to one another. */
export function calibration(change: Partial<Calibration> = {}): Calibration {
  const factors = [1.08, 0.95, 1.12, -0.03, 0.01, 1.06, 0.015];
  const deviations = [0.06, 0.05, 0.09, 0.03, 0.02, 0.04, 0.01];
  const covariance = deviations.map((a, i) =>
    deviations.map((b, j) => a * b * (i === j ? 1 : 0.3 / (1 + Math.abs(i - j)))),
  );
  return { factors, covariance, runs: 6, tried: { mass: [260, 420], speed: [2, 8.5] }, ...change };
}

type Seat = readonly [kind: Aboard['kind'], mass: number, station?: string];

export function crew(
  seats: readonly Seat[],
  rest: Omit<Load, 'items'> = { fill: 0.95, fillKnownBy: 'measured' },
): Load {
  const items = seats.map(
    ([kind, mass, station], i): Aboard => ({
      id: `${kind}-${i}`,
      kind,
      mass,
      ...(i === 0 && { helm: true }),
      ...(station !== undefined && { station }),
    }),
  );
  return { items, ...rest };
}

export const two: readonly Seat[] = [
  ['adult', 82, 'helm'],
  ['adult', 71, 'seat-fore-port'],
  ['gear', 18, 'gear-mid'],
  ['gear', 9, 'gear-bow'],
];

type Point = Omit<Route['waypoints'][number], 'lat' | 'lon'>;

export function at(lat: number, lon: number, more: Point = {}): Route['waypoints'][number] {
  return { lat, lon, ...more };
}

/** Out over the offing, clear of land. */
export const OFFING = [at(45.985, -32.07), at(45.962, -32.07), at(45.958, -32.03)] as const;
/** From the haven through the harbour's speed limit to the Gut. */
const HAVEN = [
  at(46.02739, -31.99008),
  at(46.02109, -31.99099),
  at(46.01659, -31.99137),
  at(46.01299, -31.97586),
  at(46.01119, -31.95775),
  at(46.00039, -31.95491, { stop: 1800 }),
] as const;

export function route(shape: Route['shape'], waypoints: Route['waypoints'], speed: Route['speed']): Route {
  return { shape, waypoints, speed };
}

function trip(parts: Omit<Trip, 'version'>): Trip {
  return { version: 1, ...parts };
}

const fair: Conditions = {
  departure: '2027-06-19T10:00:00-02:00',
  wind: { fromDeg: 240, speed: 4 },
  stream: { setDeg: 110, rate: 0.25 },
  sea: { height: 0.2 },
  water: 'sea',
};

/** Wind that freshens and backs by the hour, from a little before departure on. */
export function byHour(speeds: readonly number[], fromDeg = 230): Conditions['wind'] {
  return {
    forecast: speeds.map((speed, i) => ({
      time: `2027-06-19T${String(8 + i).padStart(2, '0')}:00:00-02:00`,
      fromDeg: (fromDeg + 360 - 7 * i) % 360,
      speed,
      ...(i % 2 === 1 && { gust: 1.5 * speed + 1 }),
    })),
  };
}

export const tidal: Conditions = {
  departure: '2027-06-19T10:00:00-02:00',
  timezone: 'Etc/GMT+2',
  wind: byHour([3, 4, 5, 6, 6.5, 7, 6, 5, 4]),
  stream: 'by-tide',
  tide: SPRINGS,
  sea: { swell: 0.1 },
  water: 'sea',
};

export const thirds: Policy = { reserve: [{ kind: 'thirds' }] };

/** A petrol boat on the offing, sound in all, to change one thing of. */
export function petrolTrip(change: Partial<Trip> = {}): Trip {
  return trip({
    craft: craft('catamaran-3-6', 'petrol-15hp-4s', 'tank-12'),
    load: crew(two),
    route: route('out-and-home', OFFING, 7),
    conditions: fair,
    policy: { reserve: [{ kind: 'thirds' }], manoeuvring: 500, drawnFactor: 1.04, maxWind: 9, maxWave: 0.6 },
    ...change,
  });
}

/** An electric one from the haven. */
export function electricTrip(change: Partial<Trip> = {}): Trip {
  return trip({
    craft: craft('flat-floor-2-7', 'electric-1-1kw', 'battery-1-3-lfp', {
      scheme: 'eu',
      maxLoad: 300,
      persons: 3,
      maxPower: 4500,
      category: 'D',
    }),
    load: crew(two.slice(0, 2), { fill: 0.9, fillKnownBy: 'gauge' }),
    route: route('out-and-home', HAVEN.slice(0, 4), 1.6),
    conditions: { ...fair, wind: { fromDeg: 200, speed: 2.5 }, batteryTemperatureC: 12 },
    policy: { reserve: [{ kind: 'share', share: 0.3 }], depth: 0.5 },
    ...change,
  });
}

export function conditions(change: Partial<Conditions>): Conditions {
  return { ...fair, ...change };
}

const day = shipped('petrol-day');

/** What comes of many invented trips; the plans of all of these are kept. */
export const madeTrips: Readonly<Record<string, Trip>> = {
  'petrol catamaran on the plane': petrolTrip(),
  'the shipped day out': day,
  'the shipped day out by the tide and the hour': { ...day, conditions: tidal },
  'an electric tender in the cold': electricTrip({ conditions: { ...fair, batteryTemperatureC: -2, wind: 'calm' } }),
  'an electric tender whose battery nobody measured': electricTrip({
    load: crew(two, {}),
    conditions: { water: 'fresh', departure: '2027-06-19T10:00:00-02:00' },
  }),
  'nothing known but the route': petrolTrip({
    craft: craft('rib-3-4', 'petrol-20hp-2s', 'tank-25', undefined),
    load: { items: [{ id: 'who', kind: 'adult', mass: 80, helm: true }] },
    conditions: { water: 'sea' },
    policy: { reserve: [] },
  }),
  'too little fuel in the tank': petrolTrip({ load: crew(two, { fill: 0.35, fillKnownBy: 'gauge' }) }),
  'dry before home': petrolTrip({ load: crew(two, { fill: 0.12, fillKnownBy: 'measured' }) }),
  'an empty tank': petrolTrip({ load: crew(two, { fill: 0 }) }),
  'a calibrated boat with slime on the bottom': petrolTrip({
    craft: {
      ...craft('catamaran-3-6', 'petrol-15hp-4s', 'tank-12-can-5'),
      calibration: calibration(),
      fouling: 'slime',
    },
  }),
  'a calibrated boat beyond what it was tried at': petrolTrip({
    craft: {
      ...craft('catamaran-4-3', 'petrol-30hp-4s', 'tank-25-25'),
      calibration: calibration({
        tried: { mass: [200, 300], speed: [2, 5] },
        formSpread: 0.05,
        power: { factor: 0.92, deviation: 0.04 },
        fouling: 'weed',
      }),
      fouling: 'shell',
    },
    route: route('loop', OFFING, 9),
  }),
  'four aboard at the hump': petrolTrip({
    craft: craft('catamaran-3-6', 'petrol-8hp-4s', 'tank-12-can-5'),
    load: crew([
      ['adult', 95, 'helm'],
      ['adult', 88, 'seat-aft-port'],
      ['adult', 76, 'seat-fore-port'],
      ['adult', 81, 'seat-fore-starboard'],
      ['gear', 40, 'gear-aft'],
    ]),
    route: route('out-and-home', OFFING, 'best-planing'),
  }),
  'five in a boat for four, one on the bow tube': petrolTrip({
    load: crew(
      [
        ['adult', 95, 'helm'],
        ['adult', 88, 'seat-aft-port'],
        ['adult', 76, 'seat-aft-starboard'],
        ['child', 34, 'bow-tube'],
        ['adult', 81],
        ['dog', 28, 'gear-bow'],
      ],
      { fill: 1 },
    ),
    route: route('out-and-home', OFFING, 4),
  }),
  'a launch under way slowly, one way with a stop': petrolTrip({
    craft: craft('launch-4-9', 'petrol-4hp-2s', 'tank-built-in-1-1-can-5', 'none'),
    route: route('one-way', [at(45.985, -32.07), at(45.962, -32.07, { stop: 3600 }), at(45.958, -32.03)], 2.4),
    policy: { reserve: [{ kind: 'minutes', minutes: 30 }], timeAllowed: 5400 },
  }),
  'a launch on a lake at its best speed': petrolTrip({
    craft: craft('launch-4-9', 'electric-2-2kw', 'battery-agm-100-100'),
    route: route('out-and-home', OFFING, 'best'),
    conditions: { ...fair, water: 'fresh', stream: 'slack', sea: 'calm', batteryTemperatureC: 8 },
  }),
  'rowing speed in the smallest boat': petrolTrip({
    craft: craft('flat-floor-2-7', 'electric-0-55kw', 'battery-0-5-nmc'),
    load: crew(two.slice(0, 1), { fill: 1, fillKnownBy: 'measured' }),
    route: route('out-and-home', [at(45.985, -32.07), at(45.98, -32.07)], 0.9),
    conditions: conditions({ batteryTemperatureC: 20, wind: { fromDeg: 0, speed: 3 } }),
  }),
  'a stream that is nearly as fast as the boat': petrolTrip({
    craft: craft('rigid-flat-3-8', 'petrol-2-5hp-4s', 'tank-built-in-1-1'),
    route: route('out-and-home', OFFING, 1.8),
    conditions: conditions({ stream: { setDeg: 175, rate: 1.4 } }),
  }),
  'a stream faster than the boat': petrolTrip({
    craft: craft('rigid-flat-3-8', 'electric-1-1kw', 'battery-1-0-nmc'),
    route: route('out-and-home', OFFING, 1.5),
    conditions: conditions({ stream: { setDeg: 180, rate: 2.2 }, batteryTemperatureC: 15 }),
  }),
  'wind against stream in a near gale': petrolTrip({
    craft: craft('rib-4-7', 'petrol-40hp-4s', 'tank-25-25'),
    route: route('out-and-home', OFFING, 9),
    conditions: conditions({
      wind: { fromDeg: 180, speed: 14.5 },
      stream: { setDeg: 180, rate: 1 },
      sea: { height: 1.3 },
    }),
  }),
  'waves by the wind over the fetch': {
    ...day,
    conditions: { ...fair, wind: { fromDeg: 200, speed: 8.4 }, sea: { swell: 0.3 } },
  },
  'a rough sea that nobody knows': {
    ...day,
    conditions: { ...fair, sea: undefined, wind: { fromDeg: 300, speed: 7 } },
  },
  'across land, keep-outs and a shoal': petrolTrip({
    route: route('out-and-home', [at(46.01, -32.06), at(46.0, -31.95)], 5),
    conditions: conditions({ tide: SPRINGS }),
    waters: 'haven',
  }),
  'over the bar near low water': petrolTrip({
    route: route('out-and-home', [at(46.0245, -32.008), at(46.012, -32.02)], 3),
    conditions: { ...tidal, departure: '2027-06-19T18:30:00-02:00' },
    policy: { ...thirds, depth: 0.6 },
  }),
  'over the bar at high water': petrolTrip({
    route: route('out-and-home', [at(46.0245, -32.008), at(46.012, -32.02)], 3),
    conditions: { ...tidal, departure: '2027-06-19T12:30:00-02:00' },
  }),
  'beyond the waters that are known': petrolTrip({
    route: route('one-way', [at(45.96, -32.05), at(45.93, -32.11)], 6),
  }),
  'home after dark': petrolTrip({
    craft: craft('rigid-v-4-2', 'petrol-9-9hp-4s', 'tank-12-can-5'),
    route: route('out-and-home', OFFING, 2.6),
    conditions: conditions({ departure: '2027-12-19T15:10:00-02:00', waterTemperatureC: 7 }),
    policy: { ...thirds, timeAllowed: 3600 },
  }),
  'a forecast that ends on the way': petrolTrip({
    route: route('out-and-home', OFFING, 2),
    conditions: { ...tidal, wind: byHour([5, 6, 7.5, 9]), tide: undefined },
  }),
  'filled up on the way': {
    ...day,
    load: { ...day.load, fill: 0.55, fillKnownBy: 'gauge' },
    route: route(
      'loop',
      [
        at(45.985, -32.07, { name: 'Start' }),
        at(45.99274, -32.04957),
        at(46.00894, -32.03276),
        at(46.01659, -31.99137),
        at(46.02739, -31.99008, { name: 'Marl Haven slip', refill: 0.9, stop: 900 }),
        at(46.01659, -31.99137),
        at(46.01074, -32.00043, { speed: 3 }),
        at(46.00309, -32.06638, { speed: 'best' }),
      ],
      6.5,
    ),
  },
  'charged where there is power': electricTrip({
    craft: craft('rigid-v-4-2', 'electric-5-2kw', 'battery-5-nmc'),
    route: route(
      'out-and-home',
      [...HAVEN.slice(0, 4).toReversed(), at(46.02739, -31.99008, { refill: 0.95, stop: 7200 })],
      3,
    ),
    conditions: { ...tidal, batteryTemperatureC: 22 },
    policy: { reserve: [{ kind: 'thirds' }, { kind: 'minutes', minutes: 20 }] },
  }),
  'filled where nothing is sold': petrolTrip({
    route: route('out-and-home', [at(45.985, -32.07), at(45.962, -32.07, { refill: 1 })], 6),
  }),
  'two batteries, one of them old': petrolTrip({
    craft: withBatteries(craft('catamaran-4-3', 'electric-10-6kw', 'battery-agm-100-100'), (battery, i) => ({
      ...battery,
      chemistry: i === 0 ? 'flooded-lead' : 'agm',
      health: i === 0 ? 0.7 : 0.95,
      voltage: 48,
      energyWh: 4800,
      ...(i === 1 && { maxCurrent: 90 }),
    })),
    load: crew(two, { fill: 0.8, fillKnownBy: 'gauge' }),
    conditions: conditions({ batteryTemperatureC: 5 }),
    route: route('out-and-home', OFFING, 3.2),
  }),
  'speeds by the leg and a named stream place': petrolTrip({
    route: route(
      'loop',
      [
        at(46.01659, -31.99137, { speed: 2 }),
        at(46.01299, -31.97586, { speed: 'best', streamPlace: 'Haven roads' }),
        at(46.01119, -31.95775, { speed: 6 }),
        at(46.00039, -31.95491),
      ],
      5,
    ),
    conditions: tidal,
    policy: { reserve: [{ kind: 'share', share: 0.25 }], maxWind: 4, maxWave: 0.15 },
  }),
  'a plate of the other scheme': petrolTrip({
    craft: craft('rigid-flat-3-8', 'petrol-25hp-4s', 'tank-25', {
      scheme: 'us',
      maxLoad: 330,
      persons: 3,
      maxPower: 14000,
    }),
    route: route('out-and-home', OFFING, 11),
  }),
  'heavy far aft': petrolTrip({
    craft: withTanks(craft('rigid-v-4-2', 'petrol-30hp-2s', 'tank-25-25'), (tank) => ({
      ...tank,
      at: { x: 0.1, y: 0.3, z: 0.2 },
    })),
    load: crew([
      ['adult', 110, 'helm'],
      ['adult', 105, 'seat-aft-starboard'],
      ['gear', 60, 'gear-aft'],
    ]),
    route: route('out-and-home', OFFING, 12),
  }),
  'light and forward': petrolTrip({
    craft: craft('rib-3-4', 'petrol-15hp-2s', 'tank-12'),
    load: crew([
      ['adult', 48, 'seat-fore-port'],
      ['child', 20, 'seat-fore-starboard'],
      ['gear', 45, 'gear-bow'],
    ]),
    route: route('out-and-home', OFFING, 10),
  }),
};
