import type { Trip } from '../trip/shapes.ts';
import { timeAt } from '../water/clock.ts';
import type { Hire } from './shapes.ts';

/** The trip of a hire with its actual departure, once there is one, on a clock `offset` s east of UTC. */
export function asLeft({ trip, leftAt, due }: Pick<Hire, 'trip' | 'leftAt' | 'due'>, offset: number): Trip {
  if (leftAt === undefined || due === undefined) return trip;
  const { departure } = trip.conditions;
  return {
    ...trip,
    conditions: { ...trip.conditions, ...(departure !== undefined && { departure: timeAt(leftAt, offset) }) },
    policy:
      trip.policy.timeAllowed === undefined
        ? trip.policy
        : { ...trip.policy, timeAllowed: Math.max(Math.min(trip.policy.timeAllowed, due - leftAt), 60) },
  };
}
