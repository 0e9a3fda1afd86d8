import { describe, expect, it } from 'vitest';
import petrolDay from '../../../shared/trips/petrol-day.json' with { type: 'json' };
import { spentInLegs } from '../../../src/components/trials/planned-spent.ts';
import { readTrip } from '../../../src/core/files/trip-schema.ts';
import { planTrip } from '../../../src/core/trip/plan-trip.ts';

describe('spentInLegs', () => {
  it('adds up to the time under way of a plan, at no more speeds than the form holds', () => {
    const trip = readTrip(petrolDay);
    const plan = trip.ok ? planTrip(trip.value, undefined, { quick: true }) : trip;
    if (!plan.ok) throw new Error('the example trip cannot be planned');
    const sailed = plan.value.legs.reduce((sum, { time }) => sum + time, 0);
    const spent = spentInLegs(plan.value.legs, 600);
    expect(spent[0]).toEqual({ speed: 1, seconds: 600 });
    const total = spent.reduce((sum, { seconds }) => sum + seconds, 0);
    expect(Math.abs(total - 600 - sailed)).toBeLessThan(spent.length);
    expect(spent.length).toBeLessThanOrEqual(12);
  });

  it('takes legs of nearly the same speed together', () => {
    const leg = { speedOverGround: 5, time: 100 };
    const legs = [leg, { ...leg, speedOverGround: 5.1 }, { ...leg, speedOverGround: 2 }] as never;
    expect(spentInLegs(legs, 0)).toEqual([
      { speed: 2, seconds: 100 },
      { speed: 5.05, seconds: 200 },
    ]);
  });
});
