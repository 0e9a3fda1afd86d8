import { describe, expect, it } from 'vitest';
import { marginOf } from '../../../src/core/curve/hump.ts';
import { knownToAllow } from '../../../src/core/trip/fuel-allows.ts';
import { type FuelVerdict, fuelVerdict } from '../../../src/core/trip/fuel-verdict.ts';
import { prepare } from '../../../src/core/trip/prepare.ts';
import type { Trip } from '../../../src/core/trip/shapes.ts';
import { haven, soundTrip } from '../../trips.ts';

function judged(trip: Trip) {
  const prepared = prepare(trip, haven());
  return { prepared, fuel: fuelVerdict(prepared) };
}

describe('what is known of a verdict', () => {
  /** 12 usable, 4 of them the reserve; the bad case has 10 and needs 8. */
  const known = (change: object = {}, need = 5, badLeft = 2): FuelVerdict =>
    ({
      run: { need, possible: true },
      usable: 12,
      reserve: 4,
      need90: 7,
      badCase: { need: 8, left: badLeft },
      badUsable: 10,
      verdict: 'go',
      ...change,
    }) as unknown as FuelVerdict;
  const holds = (fuel: FuelVerdict) => [knownToAllow(fuel, 'go').holds, knownToAllow(fuel, 'marginal').holds];

  it('allows what keeps the reserve to the last drop and one trip in ten to the last, and no more', () => {
    expect(holds(known())).toEqual([true, true]);
    expect(holds(known({}, 8))).toEqual([true, true]);
    expect(holds(known({}, 8.01))).toEqual([false, false]);
    expect(holds(known({ need90: 12 }))).toEqual([true, true]);
    expect(holds(known({ need90: 12.01 }))).toEqual([false, false]);
    expect(holds(known({ usable: 0, reserve: 0, need90: 0 }, 0))).toEqual([false, false]);
    expect(holds(known({ run: { need: 5, possible: false } }))).toEqual([false, false]);
    expect(holds(known({ verdict: 'marginal' }))).toEqual([false, true]);
  });

  it('has the slack of what falls shortest: reserve, one in ten, and for a go the bad case', () => {
    expect(knownToAllow(known(), 'marginal').slack).toBeCloseTo(Math.log(8 / 5), 12);
    expect(knownToAllow(known(), 'go').slack).toBeCloseTo(Math.log(10 / 8), 12);
    expect(knownToAllow(known({ need90: 11 }), 'go').slack).toBeCloseTo(Math.log(12 / 11), 12);
    // Where the reserve is broken the bad case is not asked.
    expect(knownToAllow(known({}, 9), 'go').slack).toBeCloseTo(Math.log(8 / 9), 12);
  });
});

describe('a reserve in minutes', () => {
  it('is told at the mean flow under way: manoeuvring and stops would thin it', () => {
    const trip = soundTrip();
    const waypoints = trip.route.waypoints.map((point, i) => (i === 1 ? { ...point, stop: 7200 } : point));
    const reserve = [{ kind: 'minutes', minutes: 20 } as const];
    const { fuel } = judged({ ...trip, route: { ...trip.route, waypoints }, policy: { ...trip.policy, reserve } });
    const { sailed } = fuel.run;
    const use = sailed.reduce((sum, s) => sum + s.use, 0);
    const time = sailed.reduce((sum, s) => sum + s.time, 0);
    expect(fuel.reserve).toBeCloseTo((1200 * use) / time, 9);
  });
});

describe('the bad case', () => {
  it('is sailed at speeds that the boat holds, however fast the plan', () => {
    const trip = soundTrip();
    const { prepared, fuel } = judged({ ...trip, route: { ...trip.route, speed: 14 } });
    const boat = prepared.boatAt(fuel.badRun.scenario.batteryTemperatureC);
    const margin = (s: (typeof fuel.run.sailed)[number]) => marginOf(boat, s.afloat, s.steady.drive);
    expect(Math.min(...fuel.run.sailed.map(margin))).toBeLessThan(1);
    expect(Math.min(...fuel.badRun.sailed.map(margin))).toBeGreaterThanOrEqual(1);
    expect(fuel.badCase.need).toBeLessThan(Infinity);
    expect(fuel.badCase.left).toBeCloseTo(fuel.badUsable - fuel.badCase.need, 9);
    expect(fuel.badCase.time).toBe(fuel.badRun.time);
  });
});
