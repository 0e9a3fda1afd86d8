import type { Waters } from '../route/waters.ts';
import type { Problem, Result } from '../units/result.ts';
import { streamPlacesOf } from './around.ts';
import { type PlanBasis, planBasis } from './plan-basis.ts';
import { type Prepared, prepare } from './prepare.ts';
import type { Trip } from './shapes.ts';

/** A prepared trip with all that a plan is made from: where every further question starts. */
export interface Standing extends PlanBasis {
  readonly prepared: Prepared;
}

/**
 * Opens a checked trip; a route without two points or without length, or a stream of an unknown place, is a problem in
 * words. `use` is a factor on every consumption.
 */
export function standingOf(trip: Trip, waters: Waters | undefined, use = 1): Result<Standing> {
  const path = 'route.waypoints';
  if (trip.route.waypoints.length < 2) {
    const message = 'Draw a route with at least two points';
    return { ok: false, problems: [{ code: 'route-too-short', path, message, limit: 2 }] };
  }
  const problems = streamPlaceProblems(trip, waters);
  if (problems.length > 0) return { ok: false, problems };
  const prepared = prepare(trip, waters);
  if (prepared.stretches.reduce((sum, s) => sum + s.distance, 0) < 1) {
    return { ok: false, problems: [{ code: 'route-no-length', path, message: 'The route has no length' }] };
  }
  return { ok: true, value: { prepared, ...planBasis(prepared, use) } };
}

/**
 * Legs that ask for the stream of a place that nobody knows. While the trip's own waters are missing the place may be
 * theirs: the plan then says that no stream is told there.
 */
function streamPlaceProblems({ conditions, route, waters: wanted }: Trip, waters: Waters | undefined): Problem[] {
  if (conditions.stream !== 'by-tide' || (wanted !== undefined && waters === undefined)) return [];
  const known = new Set(streamPlacesOf(conditions, waters).map(({ name }) => name));
  return route.waypoints.flatMap(({ streamPlace }, i) => {
    if (streamPlace === undefined || known.has(streamPlace)) return [];
    const message = `The leg from waypoint ${i + 1} takes the stream of ${JSON.stringify(streamPlace)}, a place that is not listed`;
    return [{ code: 'no-such-stream-place', path: `route.waypoints.${i}.streamPlace`, message }];
  });
}
