import { minimums } from '../trip/minimums.ts';
import { standingOf } from '../trip/standing.ts';
import type { HireChecked } from './check-hire.ts';
import type { Told } from './shapes.ts';

/** What a check comes to for the hirer; `unusable` is the part of a full tank or battery that stays in. */
export function toldOf(checked: HireChecked, lines: readonly string[], unusable: number): Told {
  const { plan, trip, verdict } = checked;
  const { fill } = trip.load;
  const turn = turnOf(checked);
  return {
    verdict,
    lines,
    store: plan.store,
    full: plan.full,
    ...(fill !== undefined && { start: fill * plan.full }),
    left: plan.left,
    reserve: plan.reserve,
    time: plan.time,
    distance: plan.distance,
    ...(turn && Number.isFinite(turn.with) && { turnWith: turn.with + unusable, turnAfter: turn.after }),
  };
}

/** At the far end of the way out: the least to go home with, and by when; half the time where no time is set. */
function turnOf({ trip, waters }: HireChecked): { readonly with: number; readonly after: number } | undefined {
  const standing = standingOf(trip, waters);
  if (!standing.ok) return undefined;
  const far = minimums(standing.value).findLast(({ part }) => part === 'out');
  return far && { with: far.home, after: Math.max(far.latest ?? far.arrives, 0) };
}
