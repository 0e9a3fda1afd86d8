import { readFileSync } from 'node:fs';
import type { Craft } from '../../src/core/craft/shapes.ts';
import { type Afloat, type Boat, boatOf } from '../../src/core/curve/boat.ts';
import { curve } from '../../src/core/curve/curve.ts';
import { drivePoint } from '../../src/core/drive/demand.ts';
import { craftFrom, hulls } from '../../src/core/files/catalogue.ts';
import { readProfile } from '../../src/core/files/profile-file.ts';
import { hullResistance } from '../../src/core/hull/resistance.ts';
import type { Waypoint } from '../../src/core/route/shapes.ts';
import { prepareWaters } from '../../src/core/route/waters.ts';
import { fitTrials } from '../../src/core/trials/fit.ts';
import { planTrip } from '../../src/core/trip/plan-trip.ts';
import { rangeOutline } from '../../src/core/trip/range-outline.ts';
import { sampleRisk } from '../../src/core/trip/risk.ts';
import type { Trip } from '../../src/core/trip/shapes.ts';
import { standingOf } from '../../src/core/trip/standing.ts';
import { SEA_WATER } from '../../src/core/units/constants.ts';
import { kept } from './cost.ts';
import { trackDay } from './track-day.ts';

const shared = new URL('../../shared/', import.meta.url);
const read = (file: string) => JSON.parse(readFileSync(new URL(file, shared), 'utf8'));

export const waters = prepareWaters(read('waters/haven.geojson'));
export const petrolDay: Trip = read('trips/petrol-day.json');

const { typicalPlate } = hulls.find(({ id }) => id === 'catamaran-3-6')!;
const bare = craftFrom('catamaran-3-6', 'petrol-15hp-4s', 'tank-25');
const craft: Craft = { ...bare, hull: { ...bare.hull, plate: typicalPlate } };

const boat: Boat = boatOf(craft, 'sea', 15);
const afloat: Afloat = { mass: 310, lcg: 1.15, airArea: 0.75 };

/** A loop with this many legs on open water, everything given, two aboard, at planing speed. */
export function loopOf(legs: number): Trip {
  const waypoints: Waypoint[] = [];
  for (let i = 0; i < legs; i++) {
    const turn = (2 * Math.PI * i) / legs;
    waypoints.push({ lat: 45.97 + 0.012 * Math.cos(turn), lon: -32.06 + 0.017 * Math.sin(turn) });
  }
  return {
    version: 1,
    craft,
    load: {
      items: [
        { id: 'a', kind: 'adult', mass: 85, station: 'helm', helm: true },
        { id: 'b', kind: 'adult', mass: 85, station: 'seat-fore-port' },
        { id: 'c', kind: 'gear', mass: 20, station: 'gear-mid' },
      ],
      fill: 0.8,
      fillKnownBy: 'measured',
    },
    route: { shape: 'loop', waypoints, speed: 7.5 },
    conditions: {
      wind: { fromDeg: 240, speed: 4 },
      stream: { setDeg: 80, rate: 0.3 },
      sea: { height: 0.1 },
      water: 'sea',
    },
    policy: { reserve: [{ kind: 'thirds' }] },
  };
}

export function plan(trip: Trip, quick: boolean): void {
  const result = planTrip(trip, waters, { quick });
  kept.sum += result.ok ? result.value.need.median : 0;
}

function outline(trip: Trip): void {
  const result = rangeOutline(trip, waters);
  kept.sum += result.ok ? result.value.points[0]!.outAndHome.distance : 0;
}

export interface Case {
  readonly name: string;
  /** Units; absent: for information. */
  readonly budget?: number;
  work(): void;
}

let speed = 1;
function nextSpeed(): number {
  speed = speed > 12 ? 1 : speed + 0.37;
  return speed;
}

const loop20 = loopOf(20);
/** The same day with everything by place and time: wind by the hour, streams by the tide, waves from wind and open water. */
const byTheHour: Trip = {
  ...petrolDay,
  conditions: {
    ...petrolDay.conditions,
    wind: {
      forecast: Array.from({ length: 13 }, (_, hour) => ({
        time: `2027-06-19T${String(8 + hour).padStart(2, '0')}:00:00-02:00`,
        fromDeg: 240 + 5 * hour,
        speed: 2 + 0.2 * hour,
      })),
    },
    stream: 'by-tide',
    tide: {
      port: 'Marl Haven',
      highWater: '2027-06-19T13:00:00-02:00',
      range: 4,
      meanSpringRange: 4,
      meanNeapRange: 1.9,
      highWaterHeight: 4.6,
    },
    sea: { swell: 0 },
  },
};

/** The plan anew with 10,000 days drawn. */
function samples(trip: Trip): () => void {
  const standing = standingOf(trip, waters);
  if (!standing.ok) throw new Error('the trip can be planned');
  return () => {
    kept.sum += sampleRisk(standing.value, { samples: 10_000, seed: 7 }).homeAtAll;
  };
}

/** A trial day of ten runs fitted: factors, their doubt, and which run contradicts the others. */
function fitted(): () => void {
  const profile = readProfile(readFileSync(new URL('trials-demo/sample-boat.json', shared), 'utf8'));
  if (!profile.ok) throw new Error('the sample boat can be read');
  const { trials } = profile.value;
  return () => {
    kept.sum += fitTrials(trials).runs.length;
  };
}

const unknown: Trip = { ...loop20, load: { items: loop20.load.items }, conditions: { water: 'sea' } };

export const cases: readonly Case[] = [
  {
    name: 'resistance and attitude at one speed',
    work: () => {
      kept.sum += hullResistance(craft.hull, { mass: 310, lcg: 1.15, water: SEA_WATER }, nextSpeed()).total;
    },
  },
  {
    name: 'revs, power and flow at one speed',
    work: () => {
      kept.sum += drivePoint(boat.model, 500, nextSpeed()).flow;
    },
  },
  {
    name: 'one curve',
    budget: 500,
    work: () => {
      kept.sum += curve(boat, afloat, 12).topSpeed.median;
    },
  },
  { name: 'a plan of 20 legs with bands', budget: 1250, work: () => plan(loop20, true) },
  { name: 'the same with payload and tipping values', budget: 15_000, work: () => plan(loop20, false) },
  { name: 'a plan with zones, streams and sea', budget: 5000, work: () => plan(petrolDay, true) },
  { name: 'the same with payload and tipping values', budget: 15_000, work: () => plan(petrolDay, false) },
  {
    name: 'a plan with wind by the hour, streams by the tide and sea from the wind',
    budget: 5000,
    work: () => plan(byTheHour, true),
  },
  { name: 'the same with payload and tipping values', work: () => plan(byTheHour, false) },
  { name: 'ten thousand days drawn', budget: 75_000, work: samples(petrolDay) },
  { name: 'how far from here by the hour', budget: 75_000, work: () => outline(byTheHour) },
  { name: 'how far from here, 72 directions, on the estuary', budget: 75_000, work: () => outline(petrolDay) },
  { name: 'the same with nothing given', budget: 75_000, work: () => outline({ ...petrolDay, ...unknown }) },
  { name: 'a plan of 20 legs with nothing given', work: () => plan(unknown, true) },
  { name: 'the trial runs of a day fitted', work: fitted() },
  // A tenth of twelve hours in a tenth of a second, the unit taken as 0.4 us.
  { name: 'a GPX track of 10,000 points to paired passes', budget: 250_000, work: trackDay(10_000) },
];
