import type { Waters } from '../route/waters.ts';
import { HOUR, MINUTE } from '../units/convert.ts';
import { offsetOf, secondsOf, timeAt } from '../water/clock.ts';
import { planTrip } from './plan-trip.ts';
import type { Plan, Trip, Verdict } from './shapes.ts';

const RANK: Readonly<Record<Verdict, number>> = { go: 0, marginal: 1, 'no-go': 2 };

/** Apart, s, of the departures tried; a change for the worse and back within this is not seen. */
const STEP = 15 * MINUTE;
/** No further than this after departure; and where wind or stream was told as one figure, which nobody gives for longer. */
const FURTHEST = 12 * HOUR;
const ONE_FIGURE = 3 * HOUR;

export interface LatestStart {
  /** s after the planned departure, whole minutes. */
  readonly later: number;
  /** What ends it: a worse answer, the end of the forecast, one figure for the day, or the end of the search. */
  readonly ends: 'answer' | 'forecast' | 'one-figure' | 'search';
}

/**
 * How long after the planned departure the trip may still begin with an answer no worse, due back at the same hour of
 * the clock. Yields after each plan, some thirty at most. Undefined without a departure or for a trip that does not fit.
 */
export function* latestStart(
  trip: Trip,
  waters: Waters | undefined,
  plan: Pick<Plan, 'verdict' | 'time'>,
): Generator<undefined, LatestStart | undefined, void> {
  const { departure } = trip.conditions;
  if (departure === undefined || plan.verdict === 'no-go') return undefined;
  const leaves = secondsOf(departure);
  const bound = told(trip, leaves, plan.time);
  const sound = (later: number): boolean => {
    const planned = planTrip(leavingLater(trip, later), waters, { quick: true });
    return planned.ok && RANK[planned.value.verdict] <= RANK[plan.verdict];
  };
  let good = 0;
  while (good < bound.later) {
    let next = Math.min(good + STEP, bound.later);
    const fits = sound(next);
    yield;
    if (fits) {
      good = next;
      continue;
    }
    while (next - good > MINUTE) {
      const middle = Math.round((good + next) / 2 / MINUTE) * MINUTE;
      if (middle <= good || middle >= next) break;
      if (sound(middle)) good = middle;
      else next = middle;
      yield;
    }
    return { later: good, ends: 'answer' };
  }
  return bound;
}

/** How far what was told of the day reaches, whole minutes. */
function told({ conditions: { wind, stream } }: Trip, leaves: number, time: number): LatestStart {
  const whole = (s: number): number => Math.max(Math.floor(s / MINUTE) * MINUTE, 0);
  const byHour = typeof wind === 'object' && 'forecast' in wind;
  const furthest: LatestStart =
    !byHour || (stream !== undefined && stream !== 'by-tide')
      ? { later: ONE_FIGURE, ends: 'one-figure' }
      : { later: FURTHEST, ends: 'search' };
  if (!byHour) return furthest;
  const end = Math.max(...wind.forecast.map((entry) => secondsOf(entry.time)));
  const later = whole(end - leaves - time);
  return later < furthest.later ? { later, ends: 'forecast' } : furthest;
}

/** The same trip begun later; the hour to be back by stays, so less time is left. */
function leavingLater(trip: Trip, later: number): Trip {
  const { departure } = trip.conditions;
  if (departure === undefined) return trip;
  const begins = timeAt(secondsOf(departure) + later, offsetOf(departure));
  const { timeAllowed } = trip.policy;
  return {
    ...trip,
    conditions: { ...trip.conditions, departure: begins },
    policy: timeAllowed === undefined ? trip.policy : { ...trip.policy, timeAllowed: Math.max(timeAllowed - later, 1) },
  };
}
