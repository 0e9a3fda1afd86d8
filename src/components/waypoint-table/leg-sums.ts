import type { Route } from '../../core/route/shapes.ts';
import type { Amount, LegPlan } from '../../core/trip/shapes.ts';

export interface LegSum {
  readonly distance: number;
  readonly time: number;
  readonly use: Amount;
  /** Of its first stretch, through the water. */
  readonly speed: number;
}

/** What the stretches of each sailed leg come to: m, s, kg or J. */
export function legSums(legs: readonly LegPlan[]): Map<number, LegSum> {
  const sums = new Map<number, LegSum>();
  for (const { leg, distance, time, use, speedThroughWater } of legs) {
    const sum = sums.get(leg);
    sums.set(leg, {
      distance: distance + (sum?.distance ?? 0),
      time: time + (sum?.time ?? 0),
      use: use + (sum?.use ?? 0),
      speed: sum?.speed ?? speedThroughWater,
    });
  }
  return sums;
}

/** Which sailed legs run along the drawn leg that starts at a waypoint: the way out, and home if it is the same. */
export function sailedAlong(index: number, { shape, waypoints }: Route): { out: number; home?: number } | undefined {
  const drawn = waypoints.length - 1;
  if (index < drawn) return shape === 'out-and-home' ? { out: index, home: 2 * drawn - 1 - index } : { out: index };
  return shape === 'loop' && drawn > 0 ? { out: index } : undefined;
}
