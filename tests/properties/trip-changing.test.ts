import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Trip } from '../../src/core/trip/shapes.ts';
import type { Conditions } from '../../src/core/water/shapes.ts';
import { haven } from '../trips.ts';
import { holds } from './hold.ts';
import {
  between,
  byFuel,
  changing,
  EQUATOR,
  ESTUARY,
  expectNoGreener,
  heavier,
  likelyTrips,
  numbersOf,
  OFFING,
  planned,
  priorTimes,
  sameSpeeds,
  trips,
} from './trip-makers.ts';

const RUNS = { seed: 2204, numRuns: 250 };

function met(trip: Trip, change: Partial<Conditions>): Trip {
  return { ...trip, conditions: { ...trip.conditions, ...change } };
}

describe('any plan in wind, stream and sea that change by place and hour', () => {
  it('has a figure in every place, with waters and without', () => {
    holds(
      fc.property(trips(), changing(ESTUARY), fc.boolean(), (trip, change, known) => {
        const plan = planned(met(trip, change), known ? haven() : undefined, !known);
        for (const [path, value] of numbersOf(plan)) if (Number.isNaN(value)) throw new Error(`no figure at ${path}`);
      }),
      RUNS,
    );
  });

  it('accounts for all fuel or charge and time', () => {
    holds(
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
    holds(
      fc.property(likelyTrips(EQUATOR), changing(EQUATOR), fc.constantFrom(...less), (trip, change, cut) => {
        expect(planned(met(trip, cut(change)), undefined).verdict).not.toBe('go');
      }),
      RUNS,
    );
  });

  it('is never greener in more wind at every hour on a trip one way straight against it', () => {
    holds(
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

  it('is never greener with more aboard at the same speed', () => {
    holds(
      fc.property(likelyTrips(), changing(OFFING), between(1, 150), (trip, change, kg) => {
        const plan = planned(met(trip, change), haven());
        const loaded = planned(heavier(met(trip, change), plan, kg), haven());
        if (sameSpeeds(plan, loaded)) expectNoGreener(loaded, plan);
      }),
      RUNS,
    );
  });

  it('is never greener as far as fuel or charge decides, with less of it', () => {
    holds(
      fc.property(likelyTrips(), changing(OFFING), between(0, 1), between(0, 1), (trip, change, fill, share) => {
        const filled = (value: number) => {
          const plan = planned({ ...met(trip, change), load: { ...trip.load, fill: value } }, haven());
          return byFuel(plan);
        };
        expectNoGreener(filled(fill * share), filled(fill));
      }),
      RUNS,
    );
  });

  it('is never greener with less known of the boat', () => {
    holds(
      fc.property(likelyTrips(), changing(OFFING), between(0.1, 1), between(1, 9), (trip, change, scale, more) => {
        const known = (factor: number): Trip => {
          return met({ ...trip, craft: { ...trip.craft, calibration: priorTimes(trip.craft, factor) } }, change);
        };
        expectNoGreener(planned(known(scale * more), haven()), planned(known(scale), haven()));
      }),
      RUNS,
    );
  });
});
