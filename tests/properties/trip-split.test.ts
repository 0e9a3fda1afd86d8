import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { interpolate } from '../../src/core/route/distance.ts';
import type { Waypoint } from '../../src/core/route/shapes.ts';
import { planTrip } from '../../src/core/trip/plan-trip.ts';
import type { Trip, Verdict } from '../../src/core/trip/shapes.ts';
import { holds } from './hold.ts';
import { between, likelyTrips, type Place, planned } from './trip-makers.ts';

/** Legs of up to 30 km. */
const WIDE: Place = { centre: { lat: 45.5, lon: -32 }, span: 0.12 };

/** The same way with a waypoint more on every leg. */
function split(trip: Trip, share: number): Trip {
  const { waypoints, shape } = trip.route;
  const more: Waypoint[] = [];
  waypoints.forEach((from, i) => {
    more.push(from);
    const to = waypoints[i + 1] ?? (shape === 'loop' ? waypoints[0] : undefined);
    if (to) more.push({ ...interpolate(from, to, share), ...(from.speed !== undefined && { speed: from.speed }) });
  });
  return { ...trip, route: { ...trip.route, waypoints: more } };
}

function verdictUsing(trip: Trip, use: number): Verdict {
  const found = planTrip(trip, undefined, { quick: true, use });
  if (!found.ok) throw new Error(found.problems.map(({ message }) => message).join(' '));
  return found.value.verdict;
}

// The weight of the petrol is taken half way along each leg; what is left of its steps stays below a thousandth.
const NEAR = 1e-3;

describe('a leg cut in two', () => {
  it('gives the same plan', () => {
    holds(
      fc.property(likelyTrips(WIDE), between(0.05, 0.95), (trip, share) => {
        const whole = planned(trip);
        const cut = planned(split(trip, share));
        // A trip on the very edge of a verdict may fall to either side of it for what the steps leave.
        expect([whole.verdict, ...[1 - NEAR, 1 + NEAR].map((use) => verdictUsing(trip, use))]).toContain(cut.verdict);
        if (whole.need.median === Infinity || whole.need.median > whole.usable) return;
        expect(Math.abs(cut.need.median / whole.need.median - 1)).toBeLessThan(NEAR);
        expect(Math.abs(cut.time / whole.time - 1)).toBeLessThan(NEAR);
        expect(Math.abs(cut.probability - whole.probability)).toBeLessThan(0.005);
      }),
      { seed: 1609, numRuns: 500 },
    );
  });
});
