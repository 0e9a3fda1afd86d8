import { describe, expect, it } from 'vitest';
import { destination } from '../../../src/core/route/distance.ts';
import { planTrip } from '../../../src/core/trip/plan-trip.ts';
import type { Trip } from '../../../src/core/trip/shapes.ts';
import { planOf, soundTrip } from '../../trips.ts';

/** Planing out to sea and home again, with as much aboard as is asked. */
function farOut(fill: number): Trip {
  const trip = soundTrip();
  const from = { lat: 45, lon: -30 };
  return {
    ...trip,
    waters: undefined,
    load: { ...trip.load, fill },
    route: { shape: 'out-and-home', waypoints: [from, destination(from, 180, 16_000)], speed: 8 },
  };
}

function planned(trip: Trip) {
  const found = planTrip(trip, undefined);
  if (!found.ok) throw new Error('the trip can be planned');
  return found.value;
}

describe('the last point to turn back at the most economical speed', () => {
  const trip = farOut(0.5);
  const plan = planned(trip);

  it('lies beyond the one at the planned speed where planing home costs more', () => {
    expect(plan.turnBack!.onRoute).toBe(true);
    expect(plan.turnBackSlow!.distance).toBeGreaterThan(1.02 * plan.turnBack!.distance);
    expect(plan.turnBackSlow!.time).toBeGreaterThan(plan.turnBack!.time);
  });

  it('is where planing out and going home at that speed uses all but the reserve', () => {
    const [from] = trip.route.waypoints;
    const { at } = plan.turnBackSlow!;
    const home = planned({
      ...trip,
      route: { shape: 'one-way', waypoints: [{ ...from!, speed: 8 }, { ...at, speed: 'best' }, from!], speed: 8 },
    });
    expect(home.need.median / (plan.usable - plan.reserve)).toBeCloseTo(1, 2);
  });

  it('is not told where the whole trip fits, nor in haste', () => {
    expect(planned(farOut(1)).turnBack!.onRoute).toBe(false);
    expect(planned(farOut(1)).turnBackSlow).toBeUndefined();
    expect(planOf(soundTrip(), { quick: true }).turnBackSlow).toBeUndefined();
  });
});
