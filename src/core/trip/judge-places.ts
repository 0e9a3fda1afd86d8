import { PLANING_FROUDE } from '../curve/hump.ts';
import type { LoadBalance } from '../load/balance.ts';
import { placed } from '../load/placing.ts';
import { IMMERSED, MADE_FOR, tubeBuoyancy } from './floating.ts';
import type { Prepared } from './prepare.ts';
import type { Run } from './sail.ts';
import type { Reason } from './shapes.ts';

/** How far beyond the hull a place may lie and still be a slip of measuring, m. */
const SLACK = 0.3;

/** Reasons that lie in who is aboard, where they are, and how the boat floats under them. */
export function judgePlaces(prepared: Prepared, run: Run, balance: LoadBalance): readonly Reason[] {
  return [...crewReasons(prepared, balance), ...placeReasons(prepared, run), ...floatReasons(prepared, balance)];
}

function crewReasons({ trip }: Prepared, balance: LoadBalance): Reason[] {
  const { items } = trip.load;
  if (balance.persons === 0) return [{ code: 'nobody-aboard', level: 'marginal', fixes: [{ code: 'give-value' }] }];
  const reasons: Reason[] = [];
  if (!items.some((item) => item.helm))
    reasons.push({ code: 'no-helm', level: 'marginal', fixes: [{ code: 'give-value' }] });
  if (!items.some((item) => item.kind === 'adult')) reasons.push({ code: 'no-adult', level: 'marginal' });
  return reasons;
}

function placeReasons({ trip }: Prepared, run: Run): Reason[] {
  const { hull } = trip.craft;
  const reasons: Reason[] = [];
  const { items } = placed(hull, trip.load);
  const outside = items.filter(
    ({ place }) => place.x < -2 * SLACK || place.x > hull.length + SLACK || Math.abs(place.y) > hull.beam / 2 + SLACK,
  );
  if (outside.length > 0) {
    reasons.push({
      code: 'outside-boat',
      level: 'no-go',
      measure: 'count',
      value: outside.length,
      fixes: [{ code: 'give-value' }],
    });
  }
  const onBow = trip.load.items.filter(({ at, station, kind }) => {
    if (at || (kind !== 'adult' && kind !== 'child')) return false;
    return hull.stations.find(({ id }) => id === station)?.use === 'bow-tube';
  });
  if (onBow.length > 0) {
    const planing = run.sailed.some((s) => s.steady.hull.froudeVolume >= PLANING_FROUDE);
    reasons.push({
      code: 'on-bow-tube',
      level: planing ? 'no-go' : 'marginal',
      measure: 'count',
      value: onBow.length,
      fixes: [{ code: 'give-value' }],
    });
  }
  return reasons;
}

function floatReasons(prepared: Prepared, { allUpMass }: LoadBalance): Reason[] {
  const reasons: Reason[] = [];
  const carried = tubeBuoyancy(prepared);
  const share = carried === undefined ? 0 : allUpMass / carried;
  if (share > IMMERSED.fine) {
    const sinking = share > IMMERSED.most;
    reasons.push({
      code: 'low-in-water',
      level: sinking ? 'no-go' : 'marginal',
      measure: 'share',
      value: share,
      limit: sinking ? IMMERSED.most : IMMERSED.fine,
      fixes: [{ code: 'leave-behind', measure: 'mass', value: allUpMass * (1 - IMMERSED.fine / share) }],
    });
  }
  if (allUpMass < MADE_FOR.least || allUpMass > MADE_FOR.most) {
    const limit = allUpMass < MADE_FOR.least ? MADE_FOR.least : MADE_FOR.most;
    reasons.push({ code: 'outside-method', level: 'marginal', measure: 'mass', value: allUpMass, limit });
  }
  return reasons;
}
