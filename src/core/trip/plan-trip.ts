import type { Waters } from '../route/waters.ts';
import type { Result } from '../units/result.ts';
import { assumptions } from './assumptions.ts';
import { departureTipping } from './departure-tipping.ts';
import { easierSpeed } from './easier-speed.ts';
import { fillNeeded } from './fill-needed.ts';
import type { FuelVerdict } from './fuel-verdict.ts';
import { holding } from './holding.ts';
import { judgeBoat } from './judge-boat.ts';
import { type FuelFixes, judgeFuel } from './judge-fuel.ts';
import { judgeLight } from './judge-light.ts';
import { judgePlaces } from './judge-places.ts';
import { judgeWater } from './judge-water.ts';
import { legPlans } from './leg-plans.ts';
import { needAt, probabilityWithin } from './need.ts';
import { payload } from './payload.ts';
import type { Prepared } from './prepare.ts';
import { ranges } from './ranges.ts';
import { ordered, verdictOf } from './reasons.ts';
import type { Payload, Plan, TippingValue, Trip } from './shapes.ts';
import { usableDeviation, withGauge } from './spread.ts';
import { type Standing, standingOf } from './standing.ts';
import { tippingValues } from './tipping.ts';
import { economicalTurn, turnPoints } from './turn-back.ts';

export interface PlanOptions {
  /** Leave out payload, tipping values and the fill needed, which take most of the time. */
  readonly quick?: boolean;
  /** How far the departure may shift belongs to the tipping values: it takes many plans. */
  readonly departures?: boolean;
  /** Factor on every consumption, for a trip under way that has used more than planned; quick plans only. */
  readonly use?: number;
}

const MOST_SURE = 0.99;

/**
 * The one question: with this boat, this load and this tank, there and back with the reserve whole? `trip` has passed
 * its door; without `waters` land, depth and shelter stay unchecked and the answer says so.
 */
export function planTrip(trip: Trip, waters: Waters | undefined, options: PlanOptions = {}): Result<Plan> {
  const steps = planSteps(trip, waters, options);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/**
 * The same whole plan with rests on the way, so that a page stays quick under the finger: what takes longest, fill needed,
 * payload and each tipping value, is a step of its own.
 */
export function planInSteps(trip: Trip, waters: Waters | undefined): Generator<void, Result<Plan>> {
  return planSteps(trip, waters, {});
}

function* planSteps(trip: Trip, waters: Waters | undefined, options: PlanOptions): Generator<void, Result<Plan>> {
  const found = standingOf(trip, waters, options.use);
  if (!found.ok) return found;
  const plan = yield* planOf(found.value, options);
  if (!options.departures || options.quick) return { ok: true, value: plan };
  const shifts = yield* departuresInSteps(trip, waters, plan);
  return { ok: true, value: { ...plan, tipping: [...plan.tipping, ...shifts] } };
}

/** How far the departure of a planned trip may shift, for the end of its tipping values; each step is a quick plan. */
export function departuresInSteps(
  trip: Trip,
  waters: Waters | undefined,
  { verdict }: Plan,
): Generator<void, readonly TippingValue[]> {
  return departureTipping(trip, verdict, (other) => {
    const found = planTrip(other, waters, { quick: true });
    return found.ok ? found.value.verdict : undefined;
  });
}

function* planOf(standing: Standing, options: PlanOptions): Generator<void, Plan> {
  const { prepared, fuel, balance, floats, asked: all, climb, humpSpeed } = standing;
  const { run, usable, reserve } = fuel;
  const spread = withGauge(prepared, run, fuel.need, usable);
  const low = Math.min(needAt(spread, 0.1), run.need);
  const high = Math.max(needAt(spread, 0.9), run.need);
  const turns = run.possible ? turnPoints(prepared, run, usable - reserve) : undefined;
  const slowTurn =
    turns && !options.quick ? economicalTurn(prepared, run, usable - reserve, turns.turnBack) : undefined;
  if (!options.quick) yield;
  const filled = options.quick ? undefined : fillNeeded(prepared, fuel, humpSpeed);
  if (!options.quick) yield;
  const fixes = fixesOf(prepared, fuel, filled, options.quick ?? false);
  const reasons = ordered([
    ...judgeFuel(fuel, fixes),
    ...judgeBoat(prepared, run, balance, { asked: all, ...climb }),
    ...judgePlaces(prepared, run, balance, floats),
    ...judgeWater(prepared, fuel),
    ...judgeLight(prepared, fuel),
  ]);
  const holds = options.quick ? undefined : holding(prepared, run, all);
  const spare: Payload = holds
    ? payload(prepared, fuel, balance, { holds, floats, humpSpeed })
    : { extra: undefined, binds: 'search-limit', counted: balance.counted };
  if (holds) yield;
  const tipping = holds ? yield* tippingValues(prepared, fuel, reasons, balance, { holds, floats, humpSpeed }) : [];
  return {
    verdict: verdictOf(reasons),
    reasons,
    store: prepared.burns ? 'fuel' : 'charge',
    usable,
    full: prepared.full,
    reserve,
    reserveRule: fuel.rule,
    need: { low, median: run.need, high },
    need95: needAt(spread, 0.95),
    needOut: run.needOut,
    needHome: run.needHome,
    manoeuvring: run.manoeuvring,
    left: { low: usable - high, median: usable - run.need, high: usable - low },
    probability: Math.min(probabilityWithin(fuel.need, usable - reserve, usableDeviation(prepared)), MOST_SURE),
    badCase: fuel.badCase,
    distance: run.sailed.reduce((sum, s) => sum + s.stretch.distance, 0),
    distanceOut: run.sailed.reduce((sum, s) => sum + (s.stretch.part === 'out' ? s.stretch.distance : 0), 0),
    time: run.time,
    legs: legPlans(prepared, run, usable, { low, high }),
    turnBack: turns?.turnBack,
    turnBackSlow: slowTurn,
    halfway: turns?.halfway,
    range: run.possible ? ranges(prepared, run, usable - reserve) : { oneWay: 0, outAndHome: 0 },
    balance,
    payload: spare,
    tipping,
    fillNeeded: filled,
    assumptions: assumptions(prepared, fuel),
  };
}

/** What would mend it; figures that would not are left out. */
function fixesOf(prepared: Prepared, fuel: FuelVerdict, filled: number | undefined, quick: boolean): FuelFixes {
  const { run } = fuel;
  if (fuel.verdict === 'go' || !run.possible) return { add: undefined, distance: undefined, speed: undefined };
  const { fill } = run.scenario;
  return {
    add: filled !== undefined && filled > fill ? (filled - fill) * prepared.full : undefined,
    distance: shorterRoute(fuel),
    speed: quick ? undefined : easierSpeed(prepared, fuel),
  };
}

/** Length at which reserve, likely need and bad case all fit, were all legs shortened alike, m. */
function shorterRoute({ run, usable, reserve, need90, badCase, badUsable }: FuelVerdict): number | undefined {
  const fixed = run.manoeuvring;
  const share = Math.min(
    (usable - reserve - fixed) / (run.need - fixed),
    (usable - fixed) / (need90 - fixed),
    badCase.need < Infinity ? (badUsable - fixed) / (badCase.need - fixed) : 0,
  );
  const length = run.sailed.reduce((sum, s) => sum + s.stretch.distance, 0);
  return share > 0 && share < 1 ? length * share : undefined;
}
