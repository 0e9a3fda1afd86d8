import { describe, expect, it } from 'vitest';
import { legSums, sailedAlong } from '../../../src/components/waypoint-table/leg-sums.ts';
import { sailedLegs } from '../../../src/core/route/sailed-legs.ts';
import type { Route } from '../../../src/core/route/shapes.ts';
import type { LegPlan } from '../../../src/core/trip/shapes.ts';

const waypoints = [
  { lat: 46, lon: -32 },
  { lat: 46.01, lon: -32 },
  { lat: 46.02, lon: -32.01 },
];

function stretch(leg: number, distance: number): LegPlan {
  return { leg, distance, time: distance / 2, use: distance / 10, speedThroughWater: leg + 1 } as LegPlan;
}

describe('legSums', () => {
  it('adds the stretches inside and outside a speed limit to one leg', () => {
    const sums = legSums([stretch(0, 100), stretch(0, 300), stretch(1, 50)]);
    expect(sums.get(0)).toEqual({ distance: 400, time: 200, use: 40, speed: 1 });
    expect(sums.get(1)?.distance).toBe(50);
  });
});

describe('sailedAlong', () => {
  it.each(['out-and-home', 'loop', 'one-way'] as const)('names legs that run along the drawn one: %s', (shape) => {
    const route: Route = { shape, waypoints, speed: 'best' };
    const { legs } = sailedLegs(route);
    const named = waypoints.flatMap((_, index) => {
      const along = sailedAlong(index, route);
      const next = waypoints[(index + 1) % waypoints.length]!;
      if (along) expect([legs[along.out]?.from, legs[along.out]?.to]).toEqual([waypoints[index], next]);
      if (along?.home !== undefined) {
        expect([legs[along.home]?.to, legs[along.home]?.from]).toEqual([waypoints[index], next]);
      }
      return along ? [along.out, ...(along.home === undefined ? [] : [along.home])] : [];
    });
    expect(named.sort()).toEqual(legs.map((_, leg) => leg));
  });
});
