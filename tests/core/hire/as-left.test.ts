import { describe, expect, it } from 'vitest';
import { asLeft } from '../../../src/core/hire/as-left.ts';
import type { Trip } from '../../../src/core/trip/shapes.ts';
import { HOUR } from '../../../src/core/units/convert.ts';
import { soundTrip } from '../../trips.ts';

const NOON = Date.parse('2027-06-19T12:00:00Z') / 1000;

function hire(timeAllowed: number | undefined, departure: string | undefined = '2027-06-19T11:30:00Z'): Trip {
  const trip = soundTrip();
  return {
    ...trip,
    conditions: { ...trip.conditions, departure },
    policy: { ...trip.policy, ...(timeAllowed !== undefined && { timeAllowed }) },
  };
}

describe('the trip of a hire as it left', () => {
  it('is the checked one until it leaves', () => {
    const trip = hire(2 * HOUR);
    expect(asLeft({ trip }, HOUR)).toBe(trip);
    expect(asLeft({ trip, leftAt: NOON }, HOUR)).toBe(trip);
    expect(asLeft({ trip, due: NOON }, HOUR)).toBe(trip);
  });

  it('departs when it did, on the clock of the desk; without a date it gets none', () => {
    const left = { leftAt: NOON, due: NOON + HOUR };
    expect(asLeft({ trip: hire(undefined), ...left }, HOUR).conditions.departure).toBe('2027-06-19T13:00:00+01:00');
    const undated = { ...hire(undefined), conditions: { ...hire(undefined).conditions, departure: undefined } };
    expect(asLeft({ trip: undated, ...left }, HOUR).conditions.departure).toBeUndefined();
  });

  it('has the time that is left until it is due, never more than was checked, and a minute at least', () => {
    const allowed = (due: number, checked: number | undefined = 2 * HOUR) =>
      asLeft({ trip: hire(checked), leftAt: NOON, due }, 0).policy.timeAllowed;
    expect(allowed(NOON + HOUR)).toBe(HOUR);
    expect(allowed(NOON + 3 * HOUR)).toBe(2 * HOUR);
    expect(allowed(NOON + 30)).toBe(60);
    expect(allowed(NOON - HOUR)).toBe(60);
    const free = { ...hire(undefined), policy: { ...hire(undefined).policy, timeAllowed: undefined } };
    expect(asLeft({ trip: free, leftAt: NOON, due: NOON + HOUR }, 0).policy.timeAllowed).toBeUndefined();
  });
});
