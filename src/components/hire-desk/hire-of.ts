import type { CheckAsked, HireChecked } from '../../core/hire/check-hire.ts';
import type { Hire } from '../../core/hire/shapes.ts';
import { toldOf } from '../../core/hire/told-of.ts';
import { unusableIn } from '../planner/unusable.ts';
import type { Measures } from '../units/measures.ts';
import { answerLines, leftLine } from './answer-lines.ts';

/** The hire that a check becomes when its slip is made. The trip goes without a name, the boat's stays. */
export function hireOf(checked: HireChecked, asked: CheckAsked, id: string, m: Measures): Hire {
  const { trip, validUntil } = checked;
  const { calibration: _, ...craft } = trip.craft;
  const lines = [...answerLines(checked, m).map(({ text }) => text), leftLine(checked.plan, m)];
  const lastReturn = asked.morning?.lastReturn;
  return {
    id,
    boatId: asked.boat.id,
    boat: asked.boat.name,
    ...(asked.route ? { route: asked.route.name } : asked.fleet.area ? { area: asked.fleet.area } : {}),
    // A calibration is worked out from the evidence each time, never kept.
    trip: JSON.parse(JSON.stringify({ ...trip, craft })),
    experience: asked.experience,
    rule: asked.rule,
    ...(lastReturn !== undefined && { lastReturn }),
    told: finite(toldOf(checked, lines, unusableIn(trip))),
    checkedAt: Math.floor(asked.now),
    validUntil,
    shown: {},
  };
}

/** A trip that cannot be sailed has figures without an end, which no file holds. */
function finite<T>(told: T): T {
  return JSON.parse(
    JSON.stringify(told, (_, value) =>
      typeof value === 'number' && !Number.isFinite(value) ? (value > 0 ? 1e7 : -1e7) : value,
    ),
  );
}
