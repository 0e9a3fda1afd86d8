import { describe, expect, it } from 'vitest';
import { lastReturnPoint, pointOfNoReturnByAmount } from '../../src/core/route/turn-point.ts';
import { reserveOf, strictestReserve } from '../../src/core/trip/reserve.ts';
import { HOUR, KNOT } from '../../src/core/units/convert.ts';
import { check } from '../core/drive/checks.ts';
import { told } from './told.ts';

describe('the rule of thirds (Canadian pleasure craft study guide; US boating education column, 2021)', () => {
  const { inputs, expected, tolerance } = check('reserve-thirds');
  const usable = inputs.usable_L!;
  const reserve = reserveOf({ kind: 'thirds' }, usable, 0);
  // Litres per km at any speed out and home.
  const speed = 6 * KNOT;
  const flow = (inputs.cruise_L_km! / 1000) * speed;
  const turn = pointOfNoReturnByAmount(usable - reserve, { flow, speed }, { flow, speed });
  const near = (value: number, wanted: number, name: string) => {
    told('reserve-thirds', name, wanted, value);
    expect(Math.abs(value / wanted - 1)).toBeLessThanOrEqual(tolerance.relative!);
  };

  it('keeps a third', () => {
    near(reserve, expected.reserve_L!, 'reserve_L');
  });

  it('turns round after a third of the range, and out, back and reserve make up the tank', () => {
    near(turn.distance / 1000, expected.turnaround_distance_km!, 'turnaround_distance_km');
    const out = (turn.distance / speed) * flow;
    near(out, expected.out_L!, 'out_L');
    near(usable - reserve - out, expected.back_L!, 'back_L');
  });

  it('turns at the same place when the route is walked stretch by stretch', () => {
    const stretch = { distance: 10_000, needOnward: 1.5, needBack: 1.5, timeOnward: 3240, timeBack: 3240 };
    const last = lastReturnPoint([stretch, stretch, stretch, stretch, stretch, stretch], usable - reserve);
    near(last.distance / 1000, expected.turnaround_distance_km!, 'turnaround_distance_km');
  });
});

describe('other reserves (common practice, no source)', () => {
  const { inputs, expected } = check('reserve-other');
  const usable = inputs.usable_L!;
  const flow = inputs.cruise_L_h! / HOUR;

  it('keep a fifth, or half an hour at cruise', () => {
    expect(reserveOf({ kind: 'share', share: 0.2 }, usable, flow)).toBeCloseTo(expected.reserve_20pct_L!, 9);
    expect(reserveOf({ kind: 'minutes', minutes: 30 }, usable, flow)).toBeCloseTo(expected.reserve_30min_L!, 9);
  });

  it('give way to the strictest of those chosen', () => {
    const reserve = [{ kind: 'share', share: 0.2 } as const, { kind: 'minutes', minutes: 30 } as const];
    expect(strictestReserve({ reserve }, usable, flow).amount).toBeCloseTo(expected.reserve_20pct_L!, 9);
    expect(strictestReserve({ reserve: [...reserve, { kind: 'thirds' }] }, usable, flow).rule.kind).toBe('thirds');
  });
});
