import { describe, expect, it } from 'vitest';
import { departuresInSteps, planTrip } from '../../../src/core/trip/plan-trip.ts';
import type { TippingValue, Trip } from '../../../src/core/trip/shapes.ts';
import { secondsOf, timeAt } from '../../../src/core/water/clock.ts';
import { haven, soundTrip } from '../../trips.ts';

function leaving(departure: string | undefined, trip = soundTrip()): Trip {
  return { ...trip, conditions: { ...trip.conditions, departure } };
}

function shifts(trip: Trip): readonly TippingValue[] {
  const found = planTrip(trip, haven(), { departures: true });
  if (!found.ok) throw new Error('the trip can be planned');
  return found.value.tipping.filter(({ knob }) => knob === 'departure');
}

function verdictAt(trip: Trip, shift: number): string {
  const { departure } = trip.conditions;
  const found = planTrip(leaving(timeAt(secondsOf(departure!) + shift, 0), trip), haven(), { quick: true });
  if (!found.ok) throw new Error('the trip can be planned');
  return found.value.verdict;
}

const MINUTE = 60;

describe('how far a departure may shift', () => {
  it('ends where the evening or the morning gets too dark, and the plan of that hour says the same', () => {
    const trip = leaving('2027-06-19T17:00:00-02:00');
    const [later] = shifts(trip).filter(({ direction }) => direction === 'up');
    expect(later).toMatchObject({ from: 'go', now: 0 });
    expect(verdictAt(trip, later!.value)).toBe('go');
    expect(verdictAt(trip, later!.value + 5 * MINUTE)).toBe(later!.to);
  });

  it('tells of wind that gets up how much longer one may wait for it', () => {
    const day = leaving('2027-06-19T10:00:00-02:00');
    const forecast = Array.from({ length: 13 }, (_, hour) => ({
      time: timeAt(secondsOf('2027-06-19T08:00:00-02:00') + hour * 3600, -7200),
      fromDeg: 180,
      speed: hour < 5 ? 1 : 12,
    }));
    const trip = { ...day, conditions: { ...day.conditions, wind: { forecast } } };
    const [later] = shifts(trip).filter(({ direction }) => direction === 'up');
    expect(verdictAt(trip, 0)).toBe('go');
    expect(later!.value).toBeGreaterThanOrEqual(30 * MINUTE);
    expect(later!.value).toBeLessThan(3 * 3600);
    expect(verdictAt(trip, later!.value)).toBe('go');
    expect(verdictAt(trip, later!.value + 5 * MINUTE)).not.toBe('go');
  });

  it('of a trip refused for the dark says how much earlier it would do', () => {
    const trip = leaving('2027-06-19T22:00:00-02:00');
    const [earlier] = shifts(trip).filter(({ direction }) => direction === 'down');
    expect(earlier).toMatchObject({ from: 'no-go', direction: 'down' });
    expect(earlier!.value).toBeLessThan(0);
    expect(verdictAt(trip, earlier!.value)).toBe(earlier!.to);
    expect(earlier!.to).not.toBe('no-go');
  });

  it('is not told without an hour, nor where nobody asked for it', () => {
    expect(shifts(leaving(undefined))).toEqual([]);
    const whole = planTrip(leaving('2027-06-19T17:00:00-02:00'), haven());
    expect(whole.ok && whole.value.tipping.some(({ knob }) => knob === 'departure')).toBe(false);
  });

  it('is the same asked step by step of a plan made before', () => {
    const trip = leaving('2027-06-19T17:00:00-02:00');
    const plan = planTrip(trip, haven());
    if (!plan.ok) throw new Error('the trip can be planned');
    const steps = departuresInSteps(trip, haven(), plan.value);
    let step = steps.next();
    while (!step.done) step = steps.next();
    expect(step.value).toEqual(shifts(trip));
  });
});
