import type { Waters } from '../route/waters.ts';
import type { Result } from '../units/result.ts';
import { type PlanBasis, planBasis } from './plan-basis.ts';
import { type Prepared, prepare } from './prepare.ts';
import type { Trip } from './shapes.ts';

/** A prepared trip with all that a plan is made from: where every further question starts. */
export interface Standing extends PlanBasis {
  readonly prepared: Prepared;
}

/**
 * Opens a checked trip; a route without two points or without length is a problem in words. `use` is a factor on every
 * consumption.
 */
export function standingOf(trip: Trip, waters: Waters | undefined, use = 1): Result<Standing> {
  const path = 'route.waypoints';
  if (trip.route.waypoints.length < 2) {
    const message = 'Draw a route with at least two points';
    return { ok: false, problems: [{ code: 'route-too-short', path, message, limit: 2 }] };
  }
  const prepared = prepare(trip, waters);
  if (prepared.stretches.reduce((sum, s) => sum + s.distance, 0) < 1) {
    return { ok: false, problems: [{ code: 'route-no-length', path, message: 'The route has no length' }] };
  }
  return { ok: true, value: { prepared, ...planBasis(prepared, use) } };
}
