import type { FuelVerdict } from './fuel-verdict.ts';
import { judgeDepth } from './judge-depth.ts';
import { judgeRefill } from './judge-refill.ts';
import { judgeSea } from './judge-sea.ts';
import { judgeSurvey } from './judge-survey.ts';
import { judgeWind } from './judge-wind.ts';
import { judgeZones } from './judge-zones.ts';
import type { Prepared } from './prepare.ts';
import type { Reason } from './shapes.ts';

/** Spread of the time under way: speed made and weather of the legs, one standard deviation of the logarithm. */
const TIME_SPREAD = 0.09;

/** Reasons that lie in waters, wind, sea and time, given or not. */
export function judgeWater(prepared: Prepared, fuel: FuelVerdict): readonly Reason[] {
  return [
    ...judgeZones(prepared, fuel),
    ...judgeSurvey(prepared, fuel),
    ...clockReasons(prepared),
    ...judgeWind(prepared, fuel),
    ...streamReasons(prepared, fuel),
    ...unknownStore(prepared),
    ...judgeSea(prepared, fuel),
    ...judgeDepth(prepared, fuel),
    ...judgeRefill(prepared),
    ...timeReasons(prepared, fuel),
  ];
}

/** A forecast and streams by tide tell nothing of a trip without its hour. */
function clockReasons({ trip: { conditions }, around }: Prepared): Reason[] {
  const byClock =
    conditions.stream === 'by-tide' || (typeof conditions.wind === 'object' && 'forecast' in conditions.wind);
  return byClock && around.departs === undefined
    ? [{ code: 'departure-unknown', level: 'marginal', fixes: [{ code: 'give-value' }] }]
    : [];
}

/** A stream that is not told; and of streams by tide the stretches for which no place speaks at that hour. */
function streamReasons({ around }: Prepared, { run }: FuelVerdict): Reason[] {
  if (around.stream === undefined) {
    return [{ code: 'stream-unknown', level: 'marginal', fixes: [{ code: 'give-value' }] }];
  }
  const legs = new Set<number>();
  let name: string | undefined;
  for (const { stretch, told } of run.sailed) {
    if (told?.known !== false) continue;
    legs.add(stretch.leg);
    name ??= told.place;
  }
  if (legs.size === 0) return [];
  const told = name === undefined ? {} : { name };
  return [{ code: 'streams-short', level: 'marginal', legs: [...legs], ...told, fixes: [{ code: 'give-value' }] }];
}

function unknownStore({ trip }: Prepared): Reason[] {
  const reasons: Reason[] = [];
  if (trip.craft.drive.kind === 'electric' && trip.conditions.batteryTemperatureC === undefined) {
    reasons.push({ code: 'temperature-unknown', level: 'marginal', fixes: [{ code: 'give-value' }] });
  }
  if (trip.load.fill === undefined) {
    reasons.push({ code: 'fill-unknown', level: 'marginal', fixes: [{ code: 'give-value' }] });
  }
  return reasons;
}

function timeReasons({ trip }: Prepared, { run, slowest }: FuelVerdict): Reason[] {
  const allowed = trip.policy.timeAllowed;
  if (allowed === undefined || !run.possible) return [];
  const stopped = run.sailed.reduce((sum, s) => sum + s.stretch.stop, 0);
  const late = stopped + (slowest - stopped) * Math.exp(1.2816 * TIME_SPREAD);
  if (slowest > allowed) {
    return [
      {
        code: 'late',
        level: 'no-go',
        measure: 'time',
        value: slowest,
        limit: allowed,
        fixes: [{ code: 'shorten-route' }],
      },
    ];
  }
  if (late > allowed) {
    return [
      {
        code: 'late-likely',
        level: 'marginal',
        measure: 'time',
        value: late,
        limit: allowed,
        fixes: [{ code: 'shorten-route' }],
      },
    ];
  }
  return [];
}
