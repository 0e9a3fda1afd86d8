import { describe, expect, it } from 'vitest';
import profile from '../../../shared/trials-demo/sample-boat.json' with { type: 'json' };
import { measuredTrip } from '../../../src/components/planner/fitter.ts';
import { DEMO_FLEET } from '../../../src/components/reserve-check/demo-fleet.ts';
import { hireTrip } from '../../../src/core/hire/hire-trip.ts';
import type { HireRequest } from '../../../src/core/hire/hired-trip.ts';
import type { HireBoat } from '../../../src/core/hire/shapes.ts';
import type { BoatProfile } from '../../../src/core/trials/shapes.ts';
import { planTrip } from '../../../src/core/trip/plan-trip.ts';

const request = (boat: HireBoat): HireRequest => ({
  boat,
  weights: [80, 75],
  fill: 0.9,
  fillKnownBy: 'measured',
  route: undefined,
  timeAllowed: 2 * 3600,
  conditions: { water: 'sea', wind: 'calm', stream: 'slack', sea: 'calm' },
  policy: { reserve: [{ kind: 'thirds' }] },
});

describe('a measured boat of a hire desk', () => {
  const { plate, speed } = DEMO_FLEET.boats[0]!;
  const boat: HireBoat = { id: 'own', name: 'Measured boat', speed, plate, profile: profile as BoatProfile };
  const trip = hireTrip(request(boat));

  it('goes out as its profile says it usually does', () => {
    const { trials, usual } = profile as BoatProfile;
    expect(trip.craft.drive).toEqual(trials.setups.find(({ id }) => id === usual)!.drive);
    expect(trip.craft.hull.plate).toEqual(plate);
    expect(trip.trials).toBe(trials);
  });

  it('is surer of its consumption than an unmeasured one', () => {
    const spread = (asked: typeof trip) => {
      const plan = planTrip(asked, undefined);
      if (!plan.ok) throw new Error(plan.problems[0]!.message);
      return plan.value.need.high / plan.value.need.median;
    };
    expect(spread(measuredTrip(trip, '2027-06-19').trip)).toBeLessThan(spread(trip));
  });
});
