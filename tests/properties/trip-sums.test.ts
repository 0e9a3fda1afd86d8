import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Plan } from '../../src/core/trip/shapes.ts';
import { haven } from '../trips.ts';
import { holds } from './hold.ts';
import { between, heavier, likelyTrips, numbersOf, planned, same, sameSpeeds, trips } from './trip-makers.ts';

const RUNS = { seed: 2027, numRuns: 400 };
const FEW = { seed: 2028, numRuns: 60, share: 0.25 };

function sum(plan: Plan, of: (leg: Plan['legs'][number]) => number): number {
  return plan.legs.reduce((total, leg) => total + of(leg), 0);
}

describe('any plan of any trip', () => {
  it('has a figure in every place, with waters and without', () => {
    holds(
      fc.property(trips(), fc.boolean(), (trip, known) => {
        const plan = planned(trip, known ? haven() : undefined);
        for (const [path, value] of numbersOf(plan)) if (Number.isNaN(value)) throw new Error(`no figure at ${path}`);
      }),
      RUNS,
    );
  });

  it('has one with payload and tipping values too, and never a payload beyond the plate', () => {
    holds(
      fc.property(trips(), (trip) => {
        const { payload, balance, ...rest } = planned(trip, haven(), false);
        for (const [path, value] of numbersOf(rest)) if (Number.isNaN(value)) throw new Error(`no figure at ${path}`);
        if (payload.extra === undefined) return;
        const ashore = payload.extra <= -balance.peopleAndGear + 1e-9;
        expect(ashore || payload.counted + payload.extra <= payload.allowed! + 1e-9).toBe(true);
      }),
      FEW,
    );
  });

  it('accounts for all fuel or charge, time and distance', () => {
    holds(
      fc.property(likelyTrips(), (trip) => {
        const plan = planned(trip, haven());
        same(sum(plan, (leg) => leg.use) + plan.manoeuvring, plan.need.median);
        same(plan.needOut + plan.needHome + plan.manoeuvring, plan.need.median);
        same(sum(plan, (leg) => leg.time + leg.stop) + (trip.policy.manoeuvring ?? 450), plan.time);
        same(
          sum(plan, (leg) => leg.distance),
          plan.distance,
        );
        expect(plan.need.low).toBeLessThanOrEqual(plan.need.median);
        expect(plan.need.median).toBeLessThanOrEqual(plan.need.high);
        expect(plan.need.high).toBeLessThanOrEqual(plan.need95);
        if (plan.need.median === Infinity) return;
        for (const leg of plan.legs) {
          same(leg.flow * leg.time, leg.use);
          same(leg.speedOverGround * leg.time, leg.distance);
        }
        same(plan.legs[0]!.needFromHere + plan.manoeuvring / 2, plan.need.median);
      }),
      RUNS,
    );
  });

  it('is the same for the same trip saved and read again, bit by bit', () => {
    holds(
      fc.property(trips(), (trip) => {
        expect(planned(JSON.parse(JSON.stringify(trip)), haven())).toEqual(planned(trip, haven()));
      }),
      { ...RUNS, numRuns: 200 },
    );
  });

  it('reaches no farther with more aboard at the same speed', () => {
    holds(
      fc.property(likelyTrips(), between(1, 150), (trip, kg) => {
        const plan = planned(trip, haven());
        const loaded = planned(heavier(trip, plan, kg), haven());
        if (!sameSpeeds(plan, loaded)) return;
        expect(loaded.range.oneWay).toBeLessThanOrEqual(plan.range.oneWay * (1 + 1e-9));
        expect(loaded.range.outAndHome).toBeLessThanOrEqual(plan.range.outAndHome * (1 + 1e-9));
      }),
      RUNS,
    );
  });
});
