import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Trip } from '../../src/core/trip/shapes.ts';
import { haven } from '../trips.ts';
import { holds } from './hold.ts';
import {
  between,
  byFuel,
  expectNoGreener,
  heavier,
  likelyTrips,
  planned,
  priorTimes,
  sameSpeeds,
  trips,
} from './trip-makers.ts';

const RUNS = { seed: 1852, numRuns: 500 };

/** Around the hump, where planing starts and ends. */
const awkwardSpeeds = between(2.5, 6.5);

describe('a verdict never turns greener', () => {
  it('with more aboard at the same speed', () => {
    holds(
      fc.property(fc.oneof(likelyTrips(), likelyTrips(undefined, awkwardSpeeds)), between(1, 150), (trip, kg) => {
        const plan = planned(trip, haven());
        const loaded = planned(heavier(trip, plan, kg), haven());
        if (sameSpeeds(plan, loaded)) expectNoGreener(loaded, plan);
      }),
      RUNS,
    );
  });

  it('with more wind from ahead on a trip one way', () => {
    holds(
      fc.property(
        fc.oneof(likelyTrips(), likelyTrips(undefined, awkwardSpeeds)),
        between(0, 10),
        between(0, 6),
        (trip, wind, more) => {
          const route = {
            ...trip.route,
            shape: 'one-way' as const,
            waypoints: trip.route.waypoints.slice(0, 2),
          };
          const { trackDeg } = planned({ ...trip, route }, haven()).legs[0]!;
          const blown = (speed: number) => {
            const conditions = { ...trip.conditions, wind: { fromDeg: trackDeg, speed } };
            return planned({ ...trip, route, conditions }, haven());
          };
          expectNoGreener(blown(wind + more), blown(wind));
        },
      ),
      RUNS,
    );
  });

  it('as far as fuel or charge decides, with less of it; the lighter boat may hold its speed better', () => {
    holds(
      fc.property(likelyTrips(), between(0, 1), between(0, 1), (trip, fill, share) => {
        const filled = (value: number) => {
          return byFuel(planned({ ...trip, load: { ...trip.load, fill: value } }, haven()));
        };
        expectNoGreener(filled(fill * share), filled(fill));
      }),
      RUNS,
    );
  });

  it('with less known of the boat', () => {
    holds(
      fc.property(likelyTrips(), between(0.1, 1), between(1, 9), (trip, scale, more) => {
        const known = (factor: number): Trip => {
          return { ...trip, craft: { ...trip.craft, calibration: priorTimes(trip.craft, factor) } };
        };
        expectNoGreener(planned(known(scale * more), haven()), planned(known(scale), haven()));
      }),
      RUNS,
    );
  });
});

/** Given values that are no worse than what is assumed of the unknown: a bad truth may well be worse than not knowing. */
const benign: readonly [string, (trip: Trip, spot: number) => Trip, (trip: Trip) => Trip][] = [
  ['calm', given(() => ({ wind: 'calm' })), given(() => ({ wind: undefined }))],
  [
    'a light wind from anywhere',
    (trip, spot) => given((at) => ({ wind: { fromDeg: 360 * at, speed: 3 } }))(inKnownSea(trip), spot),
    (trip) => given(() => ({ wind: undefined }))(inKnownSea(trip)),
  ],
  ['slack water', given(() => ({ stream: 'slack' })), given(() => ({ stream: undefined }))],
  [
    'a weak stream any way',
    given((spot) => ({ stream: { setDeg: 360 * spot, rate: 0.2 } })),
    given(() => ({ stream: undefined })),
  ],
  ['a flat sea', given(() => ({ sea: 'calm' })), given(() => ({ sea: undefined }))],
  [
    'a low sea',
    (trip, spot) =>
      given(() => ({ wind: undefined, sea: { height: 0.04 * spot * trip.craft.hull.length } }))(allowingWaves(trip)),
    (trip) => given(() => ({ wind: undefined, sea: undefined }))(allowingWaves(trip)),
  ],
  ['a warm battery', given(() => ({ batteryTemperatureC: 15 })), given(() => ({ batteryTemperatureC: undefined }))],
  [
    'half a tank or more',
    (trip, spot) => ({ ...trip, load: { ...trip.load, fill: 0.5 + spot / 2 } }),
    (trip) => ({ ...trip, load: { ...trip.load, fill: undefined } }),
  ],
  [
    'a fill measured',
    (trip) => ({ ...trip, load: { ...trip.load, fillKnownBy: 'measured' } }),
    (trip) => ({ ...trip, load: { ...trip.load, fillKnownBy: undefined } }),
  ],
  ['every seat', (trip) => trip, (trip) => unseated(trip, () => true)],
  ['one seat', (trip) => trip, (trip) => unseated(trip, (index) => index === trip.load.items.length - 1)],
  [
    'trial runs',
    (trip, spot) => ({ ...trip, craft: { ...trip.craft, calibration: priorTimes(trip.craft, spot) } }),
    (trip) => ({ ...trip, craft: { ...trip.craft, calibration: undefined } }),
  ],
  [
    'a smaller reserve',
    (trip, spot) => ({ ...trip, policy: { ...trip.policy, reserve: [{ kind: 'share', share: 0.05 + 0.28 * spot }] } }),
    (trip) => ({ ...trip, policy: { ...trip.policy, reserve: [] } }),
  ],
  [
    'less manoeuvring',
    (trip, spot) => ({ ...trip, policy: { ...trip.policy, manoeuvring: 450 * spot } }),
    (trip) => ({ ...trip, policy: { ...trip.policy, manoeuvring: undefined } }),
  ],
];

function given(change: (spot: number) => Partial<Trip['conditions']>): (trip: Trip, spot?: number) => Trip {
  return (trip, spot = 0) => ({ ...trip, conditions: { ...trip.conditions, ...change(spot) } });
}

/** A limit below what is assumed of an unknown sea is broken by small waves that are given, whatever else. */
function allowingWaves(trip: Trip): Trip {
  return { ...trip, policy: { ...trip.policy, maxWave: undefined } };
}

/** With a wind given an unknown sea is worked out, and over open water it may be worse than what is assumed without. */
function inKnownSea(trip: Trip): Trip {
  return given(() => ({ sea: trip.conditions.sea ?? 'calm' }))(trip);
}

function unseated(trip: Trip, which: (index: number) => boolean): Trip {
  const items = trip.load.items.map((item, index) =>
    which(index) ? { ...item, station: undefined, at: undefined } : item,
  );
  return { ...trip, load: { ...trip.load, items } };
}

describe('leaving empty never turns a verdict greener than', () => {
  for (const [name, full, without] of benign) {
    it(name, () => {
      holds(
        fc.property(likelyTrips(), between(0, 1), (trip, spot) => {
          expectNoGreener(planned(without(trip), haven()), planned(full(trip, spot), haven()));
        }),
        { seed: 1853, numRuns: 120 },
      );
    });
  }

  it('a plate that was read: what was not read is never a go', () => {
    holds(
      fc.property(likelyTrips(), fc.constantFrom('maxLoad', 'persons', 'category', 'all'), (trip, field) => {
        const { plate } = trip.craft.hull;
        if (typeof plate !== 'object') return;
        const left = field === 'all' ? undefined : { ...plate, [field]: undefined };
        const unread = { ...trip, craft: { ...trip.craft, hull: { ...trip.craft.hull, plate: left } } };
        expect(planned(unread, haven()).verdict).not.toBe('go');
      }),
      { seed: 1854, numRuns: 100 },
    );
  });

  it('a trip with everything given: with everything unknown there is no go', () => {
    holds(
      fc.property(trips(), (trip) => {
        const bare: Trip = { ...trip, conditions: { water: 'sea' }, policy: { reserve: [] } };
        expect(planned(bare, haven()).verdict).not.toBe('go');
      }),
      { seed: 1855, numRuns: 100 },
    );
  });
});
