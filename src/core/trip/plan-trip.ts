import type { Waters } from '../route/waters.ts';
import type { Result } from '../units/result.ts';
import { departureTipping } from './departure-tipping.ts';
import { easierSpeed } from './easier-speed.ts';
import { fillNeeded } from './fill-needed.ts';
import { holding } from './holding.ts';
import { payload } from './payload.ts';
import { planFrom, quickPlan } from './quick-plan.ts';
import type { Plan, TippingValue, Trip } from './shapes.ts';
import { type Standing, standingOf } from './standing.ts';
import { tippingValues } from './tipping.ts';
import { economicalTurn } from './turn-back.ts';

export interface PlanOptions {
  /** Leave out payload, tipping values and the fill needed, which take most of the time. */
  readonly quick?: boolean;
  /** How far the departure may shift belongs to the tipping values: it takes many plans. */
  readonly departures?: boolean;
  /** Factor on every consumption, for a trip under way that has used more than planned; quick plans only. */
  readonly use?: number;
}

/**
 * The one question: with this boat, this load and this tank, there and back with the reserve whole? `trip` has passed
 * its door; without `waters` land, depth and shelter stay unchecked and the answer says so.
 */
export function planTrip(trip: Trip, waters: Waters | undefined, options: PlanOptions = {}): Result<Plan> {
  if (options.quick) return quickPlan(trip, waters, options.use);
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
  const plan = yield* planOf(found.value);
  if (!options.departures) return { ok: true, value: plan };
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
    const found = quickPlan(other, waters);
    return found.ok ? found.value.verdict : undefined;
  });
}

function* planOf(standing: Standing): Generator<void, Plan> {
  const { prepared, fuel, balance, floats, asked, humpSpeed } = standing;
  yield;
  const filled = fillNeeded(prepared, fuel, humpSpeed);
  yield;
  const plan = planFrom(standing, { filled, easierSpeed: () => easierSpeed(prepared, fuel) });
  const { run, usable, reserve } = fuel;
  const turnBackSlow = plan.turnBack && economicalTurn(prepared, run, usable - reserve, plan.turnBack);
  const holds = holding(prepared, run, asked);
  const spare = payload(prepared, fuel, balance, { holds, floats, humpSpeed });
  yield;
  const asking = { holds, floats, humpSpeed, payload: spare, filled };
  const tipping = yield* tippingValues(prepared, fuel, plan.reasons, balance, asking);
  return { ...plan, turnBackSlow, payload: spare, tipping, fillNeeded: filled };
}
