import { offsetOf, secondsOf, timeAt } from '../water/clock.ts';
import type { FuelVerdict } from './fuel-verdict.ts';
import type { Prepared } from './prepare.ts';
import type { Assumption, Reason } from './shapes.ts';

/**
 * Local waters hold from the day of their survey to the day somebody answers for, both included, on the clock of the
 * departure. A trip that begins before or ends after that is at best marginal.
 */
export function judgeSurvey({ trip, waters }: Prepared, { run }: FuelVerdict): Reason[] {
  const { departure } = trip.conditions;
  const { surveyed, validUntil } = waters?.answerable ?? {};
  if (departure === undefined) return [];
  const reasons: Reason[] = [];
  if (validUntil !== undefined && dayOn(departure, run.time) > validUntil) {
    reasons.push({ code: 'waters-expired', level: 'marginal', name: validUntil });
  }
  if (surveyed !== undefined && dayOn(departure, 0) < surveyed) {
    reasons.push({ code: 'waters-not-yet', level: 'marginal', name: surveyed });
  }
  return reasons;
}

/** What nobody said of the waters, or what cannot be told of them without a day. */
export function surveyAssumptions({ trip, waters }: Prepared): Assumption[] {
  if (!waters) return [];
  const { responsible, surveyed, validUntil } = waters.answerable;
  const list: Assumption[] = [];
  if (!responsible) list.push({ code: 'waters-unanswered' });
  if (surveyed === undefined || validUntil === undefined) list.push({ code: 'waters-undated' });
  if (validUntil !== undefined && trip.conditions.departure === undefined) {
    list.push({ code: 'waters-date-unknown', name: validUntil });
  }
  return list;
}

/** The ISO date `seconds` after a departure, on its own clock; dates of four-digit years compare as text. */
function dayOn(departure: string, seconds: number): string {
  const longest = Number.isFinite(seconds) ? seconds : 0;
  return timeAt(secondsOf(departure) + longest, offsetOf(departure)).slice(0, 10);
}
