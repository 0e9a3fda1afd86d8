import { describe, expect, it } from 'vitest';
import { flowsOf } from '../../../src/components/route-map/flow-arrows.ts';
import { planTrip } from '../../../src/core/trip/plan-trip.ts';
import type { Trip } from '../../../src/core/trip/shapes.ts';
import { haven, shipped } from '../../trips.ts';

const trip = shipped('petrol-day');

function flows(conditions: Partial<Trip['conditions']>) {
  const of: Trip = { ...trip, conditions: { ...trip.conditions, ...conditions } };
  const plan = planTrip(of, haven());
  if (!plan.ok) throw new Error(plan.problems.map(({ message }) => message).join());
  return { legs: plan.value.legs, flows: flowsOf(plan.value.legs, of) };
}

describe('arrows beside the route', () => {
  it('point where the wind blows to and the stream sets', () => {
    const { legs, flows: found } = flows({ wind: { fromDeg: 225, speed: 5 }, stream: { setDeg: 80, rate: 0.5 } });
    expect(found).toHaveLength(legs.length);
    expect(new Set(found.map(({ wind }) => wind))).toEqual(new Set([45]));
    expect(new Set(found.map(({ stream }) => stream))).toEqual(new Set([80]));
  });

  it('are not there in a calm, in slack water, nor for what nobody told', () => {
    expect(flows({ wind: 'calm', stream: 'slack' }).flows).toEqual([]);
    expect(flows({ wind: undefined, stream: 'slack' }).flows).toEqual([]);
  });

  it('follow a wind that veers while the boat is under way, and end where the forecast does', () => {
    const departure = trip.conditions.departure!;
    const later = (minutes: number) => new Date(Date.parse(departure) + minutes * 60_000).toISOString();
    const forecast = [
      { time: later(0), fromDeg: 200, speed: 5 },
      { time: later(60), fromDeg: 260, speed: 5 },
    ];
    const { legs, flows: found } = flows({ wind: { forecast }, stream: 'slack' });
    const winds = found.map(({ wind }) => wind!);
    expect(winds.length).toBeGreaterThan(1);
    expect(winds.length).toBeLessThan(legs.length);
    expect(winds).toEqual([...winds].sort((a, b) => a - b));
    expect(winds[0]).toBeGreaterThan(20);
    expect(winds.at(-1)).toBeLessThan(80);
  });
});
