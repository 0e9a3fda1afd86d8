import type { Answerable, LatLon } from '../route/shapes.ts';
import type { Waters } from '../route/waters.ts';
import { planTrip } from '../trip/plan-trip.ts';
import type { Plan, ReserveRule, Trip, Verdict } from '../trip/shapes.ts';
import type { Result } from '../units/result.ts';
import { DAY, dayStart, timeAt } from '../water/clock.ts';
import { areaWaters } from './area-waters.ts';
import { type DeskFinding, deskFindings, deskVerdict } from './desk-findings.ts';
import { dueBack, slipEnd } from './hire-times.ts';
import { hireTrip } from './hire-trip.ts';
import type { HireRequest } from './hired-trip.ts';
import { conditionsNow } from './morning-now.ts';
import type { DueRule, Experience, Fleet, HireBoat, HireRoute, Morning } from './shapes.ts';

/** The six answers of the desk, and all that it set before. */
export interface CheckAsked extends Pick<HireRequest, 'weights' | 'fill' | 'fillKnownBy'> {
  readonly boat: HireBoat;
  readonly route: HireRoute | undefined;
  readonly rule: DueRule;
  readonly experience: Experience;
  readonly fleet: Fleet;
  readonly morning: Morning | undefined;
  /** s since 1970, and s east of UTC where the desk lies. */
  readonly now: number;
  readonly offset: number;
  readonly boatOut: boolean;
  /** Those of the set routes. */
  readonly waters: Waters | undefined;
  readonly reserve: readonly ReserveRule[];
  /** Gives the trip's boat the calibration its evidence allows. */
  readonly measured: (trip: Trip) => Trip;
}

export interface HireChecked {
  /** Leaving now. */
  readonly trip: Trip;
  readonly plan: Plan;
  readonly waters: Waters | undefined;
  /** The worst of: the plan now, the plan of the latest departure, and what the desk knows against it. */
  readonly verdict: Verdict;
  readonly findings: readonly DeskFinding[];
  /** The answer stands for every departure until then, of which the first and the last were worked out. */
  readonly validUntil: number;
  /** s from now to the time due. */
  readonly allowed: number;
}

/** Parts of a slip's life that are tried, until leaving at its end is no worse than leaving now. */
const LIVES = [1, 0.5, 0.25, 0.1];
const WORSE: Record<Verdict, number> = { go: 0, marginal: 1, 'no-go': 2 };

/** A reserve check of a desk. */
export function checkHire(asked: CheckAsked): Result<HireChecked> {
  const { now, offset, rule, fleet, morning } = asked;
  const start = fleet.at ?? asked.route?.waypoints[0] ?? fleet.routes[0]?.waypoints[0];
  const waters = asked.route
    ? asked.waters
    : fleet.area && start
      ? areaWaters(fleet.area, start, answerableOf(fleet))
      : undefined;
  const end = slipEnd({ now, morning, fleet, dayEnd: dayStart(now, offset) + DAY - 1 });
  const lastReturn = morning?.lastReturn;
  const leaving = (leaves: number) => {
    const allowed = dueBack(rule, leaves, lastReturn) - leaves;
    return { allowed, trip: asked.measured(tripLeaving(asked, leaves, allowed, start)) };
  };
  const first = leaving(now);
  const planned = planTrip(first.trip, waters);
  if (!planned.ok) return planned;
  const plan = planned.value;
  let verdict = plan.verdict;
  let validUntil = now;
  for (const life of LIVES) {
    validUntil = now + (end - now) * life;
    const later = planTrip(leaving(validUntil).trip, waters, { quick: true });
    if (!later.ok) return later;
    verdict = WORSE[later.value.verdict] > WORSE[plan.verdict] ? later.value.verdict : plan.verdict;
    if (verdict === plan.verdict) break;
  }
  const allowed = leaving(validUntil).allowed;
  const findings = deskFindings({ ...asked, allowed, routeSet: asked.route !== undefined });
  return {
    ok: true,
    value: {
      trip: first.trip,
      plan,
      waters,
      verdict: deskVerdict(verdict, findings),
      findings,
      validUntil: Math.floor(validUntil),
      allowed: first.allowed,
    },
  };
}

/** Of an area in words, whoever answers for the fleet. */
function answerableOf({ answers, surveyed, until }: Fleet): Answerable {
  return { responsible: answers, surveyed, validUntil: until };
}

function tripLeaving(asked: CheckAsked, leaves: number, allowed: number, start: LatLon | undefined): Trip {
  const { fleet, morning } = asked;
  const conditions = conditionsNow(morning, asked.now);
  return hireTrip({
    boat: asked.boat,
    weights: asked.weights,
    fill: asked.fill,
    fillKnownBy: asked.fillKnownBy,
    route: asked.route,
    timeAllowed: Math.max(allowed, 60),
    // Without a place nobody knows when the sun sets there.
    conditions: { ...conditions, departure: start ? timeAt(leaves, asked.offset) : undefined },
    policy: { reserve: asked.reserve, ...morning?.limits[asked.experience] },
    waters: fleet.waters ?? (fleet.localWaters ? fleet.localWaters.name || fleet.name : undefined),
    start,
  });
}
