import { type FuelVerdict, fallsShort, keepsReserve } from './fuel-verdict.ts';
import type { Fix, Reason } from './shapes.ts';

/** What to change when fuel or charge decides. */
export interface FuelFixes {
  /** Amount to add to what is in, as far as it fits. */
  readonly add: number | undefined;
  /** Route length that keeps the reserve, m. */
  readonly distance: number | undefined;
  /** Speed through the water of least use, m/s. */
  readonly speed: number | undefined;
}

/** Reasons that lie in fuel or charge, the no-go ones first. */
export function judgeFuel(fuel: FuelVerdict, fixes: FuelFixes): readonly Reason[] {
  const { run, usable, reserve, need90, keeps, badCase } = fuel;
  if (usable <= 0) return [{ code: 'nothing-usable', level: 'no-go', measure: 'amount', value: 0 }];
  if (!run.possible) return [];
  const mend = mends(fixes);
  const reasons: Reason[] = [];
  if (run.need > usable - reserve) {
    const left = usable - run.need;
    reasons.push({
      code: 'reserve-broken',
      level: 'no-go',
      measure: 'amount',
      value: left,
      limit: reserve,
      fixes: mend,
    });
  }
  if (need90 > usable) {
    reasons.push({ code: 'runs-dry', level: 'no-go', measure: 'amount', value: need90, limit: usable, fixes: mend });
  }
  if (reasons.length === 0 && !keepsReserve(fuel)) {
    reasons.push({
      code: 'reserve-unsure',
      level: 'marginal',
      measure: 'amount',
      value: keeps + reserve,
      limit: usable,
      fixes: mend,
    });
  }
  if (!fallsShort(fuel) && badCase.left <= 0) {
    const { need, kinds } = badCase;
    reasons.push({
      code: 'bad-case-dry',
      level: 'marginal',
      measure: 'amount',
      value: need,
      limit: fuel.badUsable,
      name: kinds.join(' '),
      fixes: mend,
    });
  }
  return reasons;
}

function mends({ add, distance, speed }: FuelFixes): readonly Fix[] {
  const fixes: Fix[] = [];
  if (add !== undefined) fixes.push({ code: 'add-fuel', measure: 'amount', value: add });
  if (speed !== undefined) fixes.push({ code: 'slow-down', measure: 'speed', value: speed });
  if (distance !== undefined) fixes.push({ code: 'shorten-route', measure: 'distance', value: distance });
  return fixes;
}
