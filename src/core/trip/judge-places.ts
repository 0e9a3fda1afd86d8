import { PLANING_FROUDE } from '../curve/hump.ts';
import type { LoadBalance } from '../load/balance.ts';
import { LEAST_FREEBOARD } from '../load/float-margins.ts';
import { helmReaches } from '../load/helm-reach.ts';
import { placed } from '../load/placing.ts';
import { type FloatLimits, IMMERSED, MADE_FOR, tubeBuoyancy } from './floating.ts';
import type { Prepared } from './prepare.ts';
import type { Run } from './sail.ts';
import type { Reason } from './shapes.ts';

/** Heavier than this is more likely a slip of the keys than a person, kg (common practice, no source). */
const HEAVIEST_PERSON = 200;
/** How far beyond the hull a place may lie and still be a slip of measuring, m. */
const SLACK = 0.3;

/** Reasons that lie in who is aboard, where they are, and how the boat floats under them. */
export function judgePlaces(
  prepared: Prepared,
  run: Run,
  balance: LoadBalance,
  floats: FloatLimits,
): readonly Reason[] {
  return [
    ...crewReasons(prepared, balance),
    ...placeReasons(prepared, run),
    ...floatReasons(prepared, balance, floats),
  ];
}

function crewReasons({ trip }: Prepared, balance: LoadBalance): Reason[] {
  const { items } = trip.load;
  if (balance.persons === 0) return [{ code: 'nobody-aboard', level: 'marginal', fixes: [{ code: 'give-value' }] }];
  const reasons: Reason[] = [];
  if (!items.some((item) => item.helm))
    reasons.push({ code: 'no-helm', level: 'marginal', fixes: [{ code: 'give-value' }] });
  if (!items.some((item) => item.kind === 'adult')) {
    reasons.push({ code: 'no-adult', level: 'no-go', fixes: [{ code: 'give-value' }] });
  }
  const heaviest = items.reduce((most, item) => (item.kind === 'gear' ? most : Math.max(most, item.mass)), 0);
  if (heaviest > HEAVIEST_PERSON) {
    reasons.push({
      code: 'odd-weight',
      level: 'marginal',
      measure: 'mass',
      value: heaviest,
      limit: HEAVIEST_PERSON,
      fixes: [{ code: 'give-value' }],
    });
  }
  const seats = trip.craft.hull.stations.filter(({ use }) => use === 'seat' || use === 'helm').length;
  if (seats > 0 && balance.persons > seats) {
    reasons.push({
      code: 'too-few-seats',
      level: 'marginal',
      measure: 'count',
      value: balance.persons,
      limit: seats,
      fixes: [{ code: 'leave-behind', measure: 'count', value: balance.persons - seats }],
    });
  }
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
  const helm = trip.load.items.find((item) => item.helm);
  const helmAt = helm && (helm.at ?? hull.stations.find(({ id }) => id === helm.station));
  if (helmAt && !helmReaches(hull, helmAt)) {
    reasons.push({ code: 'helm-far', level: 'marginal', fixes: [{ code: 'give-value' }] });
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

function floatReasons(prepared: Prepared, { allUpMass }: LoadBalance, floats: FloatLimits): Reason[] {
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
  reasons.push(...edgeReasons(floats));
  if (allUpMass < MADE_FOR.least || allUpMass > MADE_FOR.most) {
    const limit = allUpMass < MADE_FOR.least ? MADE_FOR.least : MADE_FOR.most;
    reasons.push({ code: 'outside-method', level: 'marginal', measure: 'mass', value: allUpMass, limit });
  }
  return reasons;
}

/** What the edge of the boat says: water over it, close to it, or over it once everybody goes to one side. */
function edgeReasons({ rest, oneSide: side }: FloatLimits): Reason[] {
  if (rest === undefined) return [];
  const lighter = [{ code: 'leave-behind' }, { code: 'move-across' }, { code: 'move-forward' }] as const;
  if (rest.state !== 'afloat') return [{ code: 'water-comes-in', level: 'no-go', name: rest.state, fixes: lighter }];
  const low = { measure: 'length', value: rest.freeboard, name: rest.lowest.part, fixes: lighter } as const;
  if (rest.freeboard < 0) return [{ code: 'water-comes-in', level: 'no-go', limit: 0, ...low }];
  const reasons: Reason[] = [];
  if (rest.freeboard < LEAST_FREEBOARD) {
    reasons.push({ code: 'low-freeboard', level: 'marginal', limit: LEAST_FREEBOARD, ...low });
  }
  if (side && (side.state !== 'afloat' || side.freeboard < 0)) {
    reasons.push({ code: 'one-side-under', level: 'marginal', fixes: [{ code: 'leave-behind' }] });
  }
  return reasons;
}
