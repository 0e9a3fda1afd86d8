import hireHull from '../../../shared/trips/hire-hull.json' with { type: 'json' };
import type { Hire, Morning } from '../../../src/core/hire/shapes.ts';
import type { Trip } from '../../../src/core/trip/shapes.ts';
import type { Conditions } from '../../../src/core/water/shapes.ts';

/** A summer noon at the invented slip, s since 1970. */
export const NOON = Date.parse('2027-06-19T12:00:00-02:00') / 1000;
export const OFFSET = -2 * 3600;
export const MORNING: Conditions = {
  water: 'sea',
  wind: { fromDeg: 240, speed: 2 },
  stream: 'slack',
  sea: { height: 0.1 },
};

export function aMorning(change: Partial<Morning> = {}): Morning {
  return {
    setAt: NOON - 3 * 3600,
    until: NOON + 11 * 3600,
    conditions: MORNING,
    limits: { new: { maxWind: 5, maxWave: 0.3 }, some: { maxWind: 8, maxWave: 0.5 }, used: {} },
    slipLife: 1800,
    ...change,
  };
}

export function aHire(change: Partial<Hire> = {}): Hire {
  return {
    id: 'h1',
    boatId: 'open-hull',
    boat: 'Open hull',
    trip: hireHull as Trip,
    experience: 'some',
    rule: { kind: 'after', seconds: 7200 },
    told: {
      verdict: 'go',
      lines: ['Enough fuel.'],
      store: 'fuel',
      full: 8.94,
      start: 8.5,
      left: { low: 5, median: 5.5, high: 6 },
      reserve: 3,
      time: 5400,
      distance: 12_000,
    },
    checkedAt: NOON,
    validUntil: NOON + 1800,
    shown: {},
    ...change,
  };
}
