import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Plan } from '../../src/core/trip/shapes.ts';
import type { Conditions } from '../../src/core/water/shapes.ts';
import { holds } from './hold.ts';
import { mirroredBoat, mirroredEast, mirroredNorth } from './mirror.ts';
import { changing, EQUATOR, likelyTrips, planned, same, trips } from './trip-makers.ts';

const RUNS = { seed: 3018, numRuns: 250 };

function expectSameWay(plan: Plan, other: Plan): void {
  same(plan.need.median, other.need.median);
  same(plan.need95, other.need95);
  same(plan.time, other.time);
  same(plan.distance, other.distance);
}

/** Of two places of a stream that hurt as much, rounding would take one here and the other in the mirror. */
function onePlace(change: Partial<Conditions>): Partial<Conditions> {
  return { ...change, ...(change.streamPlaces && { streamPlaces: change.streamPlaces.slice(0, 1) }) };
}

describe('a mirrored boat', () => {
  it('needs the same, leans to the other side and gets the same answer', () => {
    holds(
      fc.property(trips(EQUATOR), (trip) => {
        const plan = planned(trip);
        const other = planned(mirroredBoat(trip));
        expectSameWay(plan, other);
        // Sums in the same order of numbers of the other sign.
        expect(other.balance.lateral).toBeCloseTo(-plan.balance.lateral, 12);
        expect(other.verdict).toBe(plan.verdict);
        expect(other.reasons.map(({ code }) => code)).toEqual(plan.reasons.map(({ code }) => code));
      }),
      RUNS,
    );
  });
});

describe('a mirrored route', () => {
  it('needs the same north and south of the equator with wind and stream turned over', () => {
    holds(
      fc.property(likelyTrips(EQUATOR), (trip) => {
        const plan = planned(trip);
        const other = planned(mirroredNorth(trip));
        expectSameWay(plan, other);
        expect(other.verdict).toBe(plan.verdict);
      }),
      RUNS,
    );
  });

  it('needs the same east and west of a meridian', () => {
    holds(
      fc.property(likelyTrips(EQUATOR), (trip) => {
        const plan = planned(trip);
        const other = planned(mirroredEast(trip, EQUATOR.centre.lon));
        expectSameWay(plan, other);
        expect(other.verdict).toBe(plan.verdict);
      }),
      RUNS,
    );
  });

  it('needs the same in wind and stream by the hour', () => {
    holds(
      fc.property(likelyTrips(EQUATOR), changing(EQUATOR), (trip, change) => {
        const met = { ...trip, conditions: { ...trip.conditions, ...onePlace(change) } };
        expectSameWay(planned(met), planned(mirroredNorth(met)));
        expectSameWay(planned(met), planned(mirroredEast(met, EQUATOR.centre.lon)));
      }),
      RUNS,
    );
  });
});
