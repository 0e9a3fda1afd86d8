import { describe, expect, it } from 'vitest';
import { planTrip } from '../../../src/core/trip/plan-trip.ts';
import type { Trip, Verdict } from '../../../src/core/trip/shapes.ts';
import { haven, shipped, soundTrip } from '../../trips.ts';
import { slowFigures } from './questions-asked.ts';

const day = soundTrip();
const slow = { ...day, route: { ...day.route, speed: 2 } };
const withFill = (fill: number | undefined, trip: Trip = day): Trip => ({
  ...trip,
  load: { ...trip.load, fill } as Trip['load'],
});

function verdict(trip: Trip): Verdict {
  const found = planTrip(trip, haven(), { quick: true });
  if (!found.ok) throw new Error(found.problems[0]!.message);
  return found.value.verdict;
}

describe('the fill that a trip needs', () => {
  it.each([
    ['a short trip', day],
    ['a slow one', slow],
    ['a day out', shipped('petrol-day')],
    ['an electric tender', shipped('electric-tender')],
  ] as const)('makes %s a go, and half a percent less does not', (_name, trip) => {
    const { value } = slowFigures(trip).fill;
    expect(verdict(withFill(value, trip))).toBe('go');
    expect(verdict(withFill(value! - 0.0051, trip))).not.toBe('go');
  });

  it('is the same to half a percent whatever is aboard now, told or not', () => {
    const { value } = slowFigures(day).fill;
    for (const fill of [0, 0.18, undefined]) {
      expect(Math.abs(slowFigures(withFill(fill)).fill.value! - value!)).toBeLessThanOrEqual(0.005);
    }
  });

  it('is none where a full tank is not enough: 95 % of it, a battery to the brim', () => {
    const far = (trip: Trip, times: number) => ({ ...trip, policy: { ...trip.policy, drawnFactor: times } });
    // By and by too far: the last fill before is close to full, never beyond it.
    for (const [trip, full] of [
      [slow, 0.95],
      [shipped('electric-tender'), 1],
    ] as const) {
      const values: number[] = [];
      let beyond = 0;
      for (let times = full === 1 ? 1 : 4; beyond === 0; times *= 1.06) {
        const { value } = slowFigures(far(trip, times)).fill;
        if (value === undefined) beyond++;
        else values.push(value);
      }
      expect(beyond).toBeGreaterThan(0);
      expect(Math.max(...values)).toBeLessThanOrEqual(full);
      expect(Math.max(...values)).toBeGreaterThan(full - 0.08);
    }
  });

  it.each([
    ['a short trip', day, 17],
    ['a slow one with little aboard', withFill(0.2, slow), 7],
    ['one short of fuel', withFill(0.17), 16],
    ['a day out', shipped('petrol-day'), 6],
    ['an electric tender', shipped('electric-tender'), 5],
    ['a hired boat', shipped('hire-hull'), 8],
  ] as const)('of %s is found in few questions', (_name, trip, tank) => {
    expect(slowFigures(trip).fill.asked.tank).toBeLessThanOrEqual(tank);
  });
});
