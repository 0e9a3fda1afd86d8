import { legBetween } from '../route/distance.ts';
import { inSeason } from '../route/season.ts';
import type { Hazard } from '../route/split-legs.ts';
import type { FuelVerdict } from './fuel-verdict.ts';
import { depthReason, shallower } from './judge-depth.ts';
import type { Prepared } from './prepare.ts';
import type { Reason, ReasonCode } from './shapes.ts';

/** How near a listed landing a shoal counts as its beach, m. */
const BEACH = 150;

const HAZARD = {
  land: ['crosses-land', 'no-go'],
  'keep-out': ['crosses-keep-out', 'no-go'],
  shoal: ['crosses-shoal', 'marginal'],
  outside: ['outside-waters', 'marginal'],
} as const satisfies Record<string, readonly [ReasonCode, 'no-go' | 'marginal']>;

/** Land, keep-outs and shoals in the way, and water of which nothing is known. */
export function judgeZones(prepared: Prepared, fuel: FuelVerdict): Reason[] {
  const { departure } = prepared.trip.conditions;
  const reasons: Reason[] = [];
  if (!prepared.waters) reasons.push({ code: 'waters-unknown', level: 'marginal' });
  for (const hazard of prepared.hazards) {
    if (hazard.kind === 'keep-out' && !inSeason(hazard.zone?.season, departure)) continue;
    const depth = hazard.kind === 'shoal' ? depthReason(prepared, fuel.run, hazard) : undefined;
    if (depth) {
      const same = reasons.findIndex((r) => r.code === depth.code && r.name === depth.name);
      if (same < 0) reasons.push(depth);
      else reasons[same] = shallower(reasons[same]!, depth);
      continue;
    }
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
