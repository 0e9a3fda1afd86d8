import { describe, expect, it } from 'vitest';
import { departureTipping } from '../../../src/core/trip/departure-tipping.ts';
import type { TippingValue, Trip, Verdict } from '../../../src/core/trip/shapes.ts';
import { secondsOf } from '../../../src/core/water/clock.ts';
import { soundTrip } from '../../trips.ts';

const NOON = '2027-06-19T12:00:00-02:00';
const MINUTE = 60;
const trip: Trip = { ...soundTrip(), conditions: { ...soundTrip().conditions, departure: NOON } };

/** What is found where the verdict follows from the shift alone, in minutes; undefined: it cannot be planned. */
function tipping(from: Verdict, verdictAt: (minutes: number) => Verdict | undefined): readonly TippingValue[] {
  const finding = departureTipping(trip, from, ({ conditions }) =>
    verdictAt((secondsOf(conditions.departure!) - secondsOf(NOON)) / MINUTE),
  );
  for (;;) {
    const { done, value } = finding.next();
    if (done) return value;
  }
}

describe('how far a departure may shift', () => {
  /** Told to five minutes, and never beyond what keeps the verdict. */
  const just = (found: TippingValue | undefined, [from, to]: readonly [number, number]) => {
    expect(found!.value / MINUTE).toBeGreaterThanOrEqual(from);
    expect(found!.value / MINUTE).toBeLessThanOrEqual(to);
  };

  it('is the last time that keeps the verdict, later and earlier, to five minutes', () => {
    const found = tipping('go', (minutes) => (minutes > 97 ? 'marginal' : minutes < -42 ? 'no-go' : 'go'));
    expect(found).toMatchObject([
      { knob: 'departure', from: 'go', to: 'marginal', now: 0, direction: 'up' },
      { knob: 'departure', from: 'go', to: 'no-go', now: 0, direction: 'down' },
    ]);
    just(found[0], [92, 97]);
    just(found[1], [-42, -37]);
  });

  it('of a no-go is the first time that mends it, to five minutes', () => {
    const found = tipping('no-go', (minutes) => (minutes > 97 ? 'go' : minutes < -42 ? 'marginal' : 'no-go'));
    expect(found).toMatchObject([
      { from: 'no-go', to: 'go', direction: 'up' },
      { from: 'no-go', to: 'marginal', direction: 'down' },
    ]);
    just(found[0], [97, 103]);
    just(found[1], [-48, -42]);
  });

  it('of a marginal one counts what gets worse, not what gets better', () => {
    expect(tipping('marginal', (minutes) => (minutes > 0 ? 'go' : minutes < 0 ? 'no-go' : 'marginal'))).toEqual([
      { knob: 'departure', from: 'marginal', to: 'no-go', value: 0, now: 0, direction: 'down' },
    ]);
  });

  it('is none at all where any other time turns it, and plain nought, not minus nought', () => {
    const both = tipping('go', (minutes) => (minutes === 0 ? 'go' : 'no-go'));
    expect(both.map(({ value }) => value)).toEqual([0, 0]);
    expect(both.map(({ value }) => Object.is(value, -0))).toEqual([false, false]);
  });

  it('is looked for up to six hours either way', () => {
    expect(tipping('go', (minutes) => (Math.abs(minutes) > 360 ? 'no-go' : 'go'))).toEqual([]);
    const found = tipping('go', (minutes) => (Math.abs(minutes) >= 360 ? 'no-go' : 'go'));
    just(found[0], [355, 359]);
    just(found[1], [-359, -355]);
  });

  it('ends where a trip of that hour cannot be planned', () => {
    expect(tipping('go', (minutes) => (minutes > 60 ? undefined : 'go'))).toMatchObject([
      { to: 'no-go', value: 60 * MINUTE },
    ]);
  });
});
