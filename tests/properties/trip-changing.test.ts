import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Trip } from '../../src/core/trip/shapes.ts';
import type { Conditions } from '../../src/core/water/shapes.ts';
import { haven } from '../trips.ts';
import {
  between,
  changing,
  EQUATOR,
  ESTUARY,
  expectNoGreener,
  likelyTrips,
  numbersOf,
  planned,
  trips,
} from './trip-makers.ts';

const RUNS = { seed: 2204, numRuns: 250 };

function met(trip: Trip, change: Partial<Conditions>): Trip {
  return { ...trip, conditions: { ...trip.conditions, ...change } };
}

describe('any plan in wind, stream and sea that change by place and hour', () => {
  it('has a figure in every place, with waters and without', () => {
    fc.assert(
      fc.property(trips(), changing(ESTUARY), fc.boolean(), (trip, change, known) => {
        const plan = planned(met(trip, change), known ? haven() : undefined, !known);
        for (const [path, value] of numbersOf(plan)) if (Number.isNaN(value)) throw new Error(`no figure at ${path}`);
      }),
      RUNS,
    );
  });

  it('accounts for all fuel or charge and time', () => {
    fc.assert(
      fc.property(likelyTrips(), changing(ESTUARY), (trip, change) => {
        const plan = planned(met(trip, change), haven());
        if (plan.need.median === Infinity) return;
        const use = plan.legs.reduce((sum, leg) => sum + leg.use, plan.manoeuvring);
        expect(Math.abs(use / plan.need.median - 1)).toBeLessThan(1e-9);
        const time = plan.legs.reduce((sum, leg) => sum + leg.time + leg.stop, trip.policy.manoeuvring ?? 450);
        expect(Math.abs(time / plan.time - 1)).toBeLessThan(1e-9);
        const way = plan.legs.reduce((sum, leg) => sum + leg.distance, 0);
        expect(Math.abs(way / plan.distance - 1)).toBeLessThan(1e-9);
      }),
      RUNS,
    );
  });

  it('is never greener without its date, without its tide or with half of its forecast', () => {
    const less: readonly ((change: Partial<Conditions>) => Partial<Conditions>)[] = [
      (change) => ({ ...change, stream: 'by-tide', tide: undefined }),
      (change) => ({ ...change, stream: 'by-tide', departure: undefined }),
    ];
    fc.assert(
      fc.property(likelyTrips(EQUATOR), changing(EQUATOR), fc.constantFrom(...less), (trip, change, cut) => {
        expect(planned(met(trip, cut(change)), undefined).verdict).not.toBe('go');
      }),
      RUNS,
    );
  });

  it('is never greener in more wind at every hour on a trip one way straight against it', () => {
    fc.assert(
      fc.property(likelyTrips(EQUATOR), between(0, 8), between(0.1, 4), (trip, speed, more) => {
        const [from, to] = trip.route.waypoints;
        const ahead = { ...trip, route: { ...trip.route, shape: 'one-way' as const, waypoints: [from!, to!] } };
        const track = planned(ahead, undefined).legs[0]!.trackDeg;
        const blowing = (now: number): Trip =>
          met(ahead, {
            departure: '2026-07-15T10:00:00Z',
            wind: {
              forecast: [0, 3, 6, 9, 12, 15, 18, 21].map((hour) => ({
                time: `2026-07-15T${String(hour).padStart(2, '0')}:00:00Z`,
                fromDeg: track,
                speed: now + hour / 20,
              })),
            },
            sea: trip.conditions.sea ?? 'calm',
          });
        expectNoGreener(planned(blowing(speed + more), undefined), planned(blowing(speed), undefined));
      }),
      RUNS,
    );
  });
});
