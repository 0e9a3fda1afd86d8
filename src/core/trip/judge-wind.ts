import { categoryLimits } from '../load/plate.ts';
import { beaufortOf } from '../water/beaufort.ts';
import { strongestWind } from '../water/wind-by-time.ts';
import type { FuelVerdict } from './fuel-verdict.ts';
import type { Prepared } from './prepare.ts';
import type { Reason } from './shapes.ts';
import { byTime, strongestTold } from './wind-law.ts';

/** Boats below 6 m stay in from force 5 on exposed water unless they set another limit (common practice, no source). */
export const FRESH_BREEZE = 8;
/** From force 7 on no small open boat goes out, whatever its crew allows itself (common practice, no source). */
export const NEAR_GALE = 13.9;

/** What wind is told, and whether it is too much: the strongest mean wind from departure until the slowest run is home. */
export function judgeWind({ trip, around }: Prepared, { run, slowest }: FuelVerdict): readonly Reason[] {
  const { wind, departs } = around;
  const reasons: Reason[] = [];
  if (trip.conditions.wind === undefined) {
    reasons.push({ code: 'wind-unknown', level: 'marginal', fixes: [{ code: 'give-value' }] });
  }
  if (typeof wind !== 'object') return reasons;
  let speed = 0;
  if (byTime(wind)) {
    const from = departs ?? 0;
    const to = from + (run.possible ? slowest : around.horizon);
    speed = strongestTold(wind, from, to);
    const whole = strongestWind(wind, from, to);
    if (!whole.known) {
      const until =
        whole.until === undefined ? {} : { measure: 'time' as const, value: Math.max(whole.until - from, 0) };
      reasons.push({ code: 'forecast-short', level: 'marginal', ...until, fixes: [{ code: 'give-value' }] });
    } else if (whole.gust !== undefined && whole.gust >= NEAR_GALE && speed < NEAR_GALE) {
      reasons.push({
        code: 'gusty',
        level: 'marginal',
        measure: 'speed',
        value: whole.gust,
        limit: NEAR_GALE,
        fixes: [{ code: 'wait' }],
      });
    }
  } else speed = wind.speed;
  const own = trip.policy.maxWind;
  const refused = speed >= NEAR_GALE || (own !== undefined && speed > own);
  if (refused || speed >= FRESH_BREEZE) {
    reasons.push({
      code: 'over-wind-limit',
      level: refused ? 'no-go' : 'marginal',
      measure: 'speed',
      value: speed,
      limit: refused ? Math.min(own ?? NEAR_GALE, NEAR_GALE) : FRESH_BREEZE,
      fixes: [{ code: 'wait' }],
    });
  }
  const { maxBeaufort } = categoryOf(trip.craft.hull.plate);
  if (maxBeaufort !== undefined && beaufortOf(speed) > maxBeaufort) {
    reasons.push({
      code: 'over-category',
      level: 'no-go',
      measure: 'count',
      value: beaufortOf(speed),
      limit: maxBeaufort,
      name: 'wind',
      fixes: [{ code: 'wait' }],
    });
  }
  return reasons;
}

/** Limits of the design category on the plate, where one is read. */
export function categoryOf(plate: Prepared['trip']['craft']['hull']['plate']) {
  return plate && plate !== 'none' && plate.category
    ? categoryLimits(plate.category)
    : { maxBeaufort: undefined, maxWave: undefined };
}
