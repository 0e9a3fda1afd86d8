import { categoryLimits } from '../load/plate.ts';
import { legBetween } from '../route/distance.ts';
import { inSeason } from '../route/season.ts';
import type { Hazard } from '../route/split-legs.ts';
import { beaufortOf } from '../water/beaufort.ts';
import { seaLimits } from '../water/sea-speed.ts';
import type { FuelVerdict } from './fuel-verdict.ts';
import type { Prepared } from './prepare.ts';
import type { Reason, ReasonCode } from './shapes.ts';

/** Boats below 6 m stay in from force 5 on exposed water unless they set another limit (common practice, no source). */
export const FRESH_BREEZE = 8;
/** From force 7 on no small open boat goes out, whatever its crew allows itself (common practice, no source). */
export const NEAR_GALE = 13.9;
/** How near a listed landing a shoal counts as its beach, m. */
const BEACH = 150;
/** Spread of the time under way: speed made and weather of the legs, one standard deviation of the logarithm. */
const TIME_SPREAD = 0.09;

const HAZARD = {
  land: ['crosses-land', 'no-go'],
  'keep-out': ['crosses-keep-out', 'no-go'],
  shoal: ['crosses-shoal', 'marginal'],
  outside: ['outside-waters', 'marginal'],
} as const satisfies Record<string, readonly [ReasonCode, 'no-go' | 'marginal']>;

/** Reasons that lie in waters, wind, sea and time, given or not. */
export function judgeWater(prepared: Prepared, fuel: FuelVerdict): readonly Reason[] {
  return [
    ...hazardReasons(prepared),
    ...windReasons(prepared),
    ...seaReasons(prepared),
    ...timeReasons(prepared, fuel),
  ];
}

function hazardReasons(prepared: Prepared): Reason[] {
  const { departure } = prepared.trip.conditions;
  const reasons: Reason[] = [];
  if (!prepared.waters) reasons.push({ code: 'waters-unknown', level: 'marginal' });
  for (const hazard of prepared.hazards) {
    if (hazard.kind === 'keep-out' && !inSeason(hazard.zone?.season, departure)) continue;
    const [code, strict] = HAZARD[hazard.kind];
    const level = hazard.kind === 'shoal' && atLanding(prepared, hazard) ? 'note' : strict;
    const known = reasons.find((r) => r.code === code && r.level === level && r.name === hazard.zone?.name);
    if (known) {
      (known.legs as number[]).push(hazard.leg);
      continue;
    }
    const shoal = hazard.kind === 'shoal' && hazard.zone?.dries_m !== undefined;
    reasons.push({
      code,
      level,
      ...(hazard.zone ? { name: hazard.zone.name } : {}),
      ...(shoal ? { measure: 'length' as const, value: hazard.zone?.dries_m } : {}),
      legs: [hazard.leg],
      at: hazard.at,
      fixes: [{ code: 'draw-round' }],
    });
  }
  return reasons;
}

/** A beach is landed on by crossing its own foot: a shoal touched only there is worth a note. */
function atLanding({ waters }: Prepared, { at, length }: Hazard): boolean {
  if (length === undefined || length > BEACH) return false;
  return (waters?.landings ?? []).some(({ geometry }) => {
    const [lon = 0, lat = 0] = geometry.coordinates;
    return legBetween(at, { lat, lon }).distance < BEACH;
  });
}

function windReasons({ trip }: Prepared): Reason[] {
  const { wind, stream, batteryTemperatureC } = trip.conditions;
  const reasons: Reason[] = [];
  if (wind === undefined) reasons.push({ code: 'wind-unknown', level: 'marginal', fixes: [{ code: 'give-value' }] });
  if (stream === undefined)
    reasons.push({ code: 'stream-unknown', level: 'marginal', fixes: [{ code: 'give-value' }] });
  if (trip.craft.drive.kind === 'electric' && batteryTemperatureC === undefined) {
    reasons.push({ code: 'temperature-unknown', level: 'marginal', fixes: [{ code: 'give-value' }] });
  }
  if (trip.load.fill === undefined) {
    reasons.push({ code: 'fill-unknown', level: 'marginal', fixes: [{ code: 'give-value' }] });
  }
  if (typeof wind !== 'object') return reasons;
  const own = trip.policy.maxWind;
  const refused = wind.speed >= NEAR_GALE || (own !== undefined && wind.speed > own);
  if (refused || wind.speed >= FRESH_BREEZE) {
    reasons.push({
      code: 'over-wind-limit',
      level: refused ? 'no-go' : 'marginal',
      measure: 'speed',
      value: wind.speed,
      limit: refused ? Math.min(own ?? NEAR_GALE, NEAR_GALE) : FRESH_BREEZE,
      fixes: [{ code: 'wait' }],
    });
  }
  const { maxBeaufort } = categoryOf(trip.craft.hull.plate);
  if (maxBeaufort !== undefined && beaufortOf(wind.speed) > maxBeaufort) {
    reasons.push({
      code: 'over-category',
      level: 'no-go',
      measure: 'count',
      value: beaufortOf(wind.speed),
      limit: maxBeaufort,
      name: 'wind',
      fixes: [{ code: 'wait' }],
    });
  }
  return reasons;
}

function seaReasons({ trip }: Prepared): Reason[] {
  const { sea } = trip.conditions;
  if (sea === undefined) return [{ code: 'sea-unknown', level: 'marginal', fixes: [{ code: 'give-value' }] }];
  if (sea === 'calm') return [];
  const reasons: Reason[] = [];
  const { hull } = trip.craft;
  const { fine, care } = seaLimits(hull.length);
  if (sea.height > fine) {
    const beyond = sea.height > care;
    reasons.push({
      code: beyond ? 'too-rough' : 'rough',
      level: beyond ? 'no-go' : 'marginal',
      measure: 'length',
      value: sea.height,
      limit: beyond ? care : fine,
      fixes: [{ code: 'wait' }],
    });
  }
  const { maxWave } = categoryOf(hull.plate);
  if (maxWave !== undefined && sea.height > maxWave) {
    reasons.push({
      code: 'over-category',
      level: 'no-go',
      measure: 'length',
      value: sea.height,
      limit: maxWave,
      name: 'sea',
      fixes: [{ code: 'wait' }],
    });
  }
  const own = trip.policy.maxWave;
  if (own !== undefined && sea.height > own) {
    reasons.push({
      code: 'over-wave-limit',
      level: 'no-go',
      measure: 'length',
      value: sea.height,
      limit: own,
      fixes: [{ code: 'wait' }],
    });
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

/** Limits of the design category on the plate, where one is read. */
export function categoryOf(plate: Prepared['trip']['craft']['hull']['plate']) {
  return plate && plate !== 'none' && plate.category
    ? categoryLimits(plate.category)
    : { maxBeaufort: undefined, maxWave: undefined };
}
