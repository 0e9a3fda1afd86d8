import type { Waters } from '../route/waters.ts';
import type { Result } from '../units/result.ts';
import { assumptions } from './assumptions.ts';
import type { FuelVerdict } from './fuel-verdict.ts';
import { judgeBoat } from './judge-boat.ts';
import { type FuelFixes, judgeFuel } from './judge-fuel.ts';
import { judgeLight } from './judge-light.ts';
import { judgePlaces } from './judge-places.ts';
import { judgeWater } from './judge-water.ts';
import { legPlans } from './leg-plans.ts';
import { probabilityWithin } from './need.ts';
import { ranges } from './ranges.ts';
import { ordered, verdictOf } from './reasons.ts';
import type { Plan, Trip } from './shapes.ts';
import { needWithGauge, usableDeviation } from './spread.ts';
import { type Standing, standingOf } from './standing.ts';
import { turnPoints } from './turn-back.ts';

/** What takes most of the time of a plan, worked out by `planTrip`; the verdict is the same without. */
export interface SlowFigures {
  readonly filled?: number | undefined;
  /** Speed home that would mend it, m/s; asked only where something has to be mended. */
  readonly easierSpeed?: () => number | undefined;
}

const MOST_SURE = 0.99;

/**
 * The plan without payload, tipping values and the fill needed: the same verdict for a fraction of the time. `use` is a
 * factor on every consumption, for a trip under way that has used more than planned.
 */
export function quickPlan(trip: Trip, waters: Waters | undefined, use?: number): Result<Plan> {
  const found = standingOf(trip, waters, use);
  return found.ok ? { ok: true, value: planFrom(found.value) } : found;
}

/** A plan of what stands; with slower figures its fixes say how much and how fast. */
export function planFrom(standing: Standing, { filled, easierSpeed }: SlowFigures = {}): Plan {
  const { prepared, fuel, balance, floats, asked, climb } = standing;
  const { run, usable, reserve } = fuel;
  const needTo = (p: 0.1 | 0.9 | 0.95): number => needWithGauge(prepared, run, fuel.need, { usable, p });
  const low = Math.min(needTo(0.1), run.need);
  const high = Math.max(needTo(0.9), run.need);
  const turns = run.possible ? turnPoints(prepared, run, usable - reserve) : undefined;
  const reasons = ordered([
    ...judgeFuel(fuel, fixesOf(prepared.full, fuel, filled, easierSpeed)),
    ...judgeBoat(prepared, run, balance, { asked, ...climb }),
    ...judgePlaces(prepared, run, balance, floats),
    ...judgeWater(prepared, fuel),
    ...judgeLight(prepared, fuel),
  ]);
  return {
    verdict: verdictOf(reasons),
    reasons,
    store: prepared.burns ? 'fuel' : 'charge',
    usable,
    full: prepared.full,
    reserve,
    reserveRule: fuel.rule,
    need: { low, median: run.need, high },
    need95: needTo(0.95),
    needOut: run.needOut,
    needHome: run.needHome,
    manoeuvring: run.manoeuvring,
    left: { low: usable - high, median: usable - run.need, high: usable - low },
    probability: Math.min(probabilityWithin(fuel.need, usable - reserve, usableDeviation(prepared)), MOST_SURE),
    badCase: fuel.badCase,
    distance: run.sailed.reduce((sum, s) => sum + s.stretch.distance, 0),
    distanceOut: run.sailed.reduce((sum, s) => sum + (s.stretch.part === 'out' ? s.stretch.distance : 0), 0),
    time: run.time,
    legs: legPlans(prepared, run, usable, { low, high }),
    turnBack: turns?.turnBack,
    turnBackSlow: undefined,
    halfway: turns?.halfway,
    range: run.possible ? ranges(prepared, run, usable - reserve) : { oneWay: 0, outAndHome: 0 },
    balance,
    payload: { extra: undefined, binds: 'search-limit', counted: balance.counted },
    tipping: [],
    fillNeeded: filled,
    assumptions: assumptions(prepared, fuel),
  };
}

/** What would mend it; figures that would not are left out. */
function fixesOf(
  full: number,
  fuel: FuelVerdict,
  filled: number | undefined,
  easierSpeed: SlowFigures['easierSpeed'],
): FuelFixes {
  const { run } = fuel;
  if (fuel.verdict === 'go' || !run.possible) return { add: undefined, distance: undefined, speed: undefined };
  const { fill } = run.scenario;
  return {
    add: filled !== undefined && filled > fill ? (filled - fill) * full : undefined,
    distance: shorterRoute(fuel),
    speed: easierSpeed?.(),
  };
}

/** Length at which reserve, likely need and bad case all fit, were all legs shortened alike, m. */
function shorterRoute({ run, usable, reserve, need90, keeps, badCase, badUsable }: FuelVerdict): number | undefined {
  const fixed = run.manoeuvring;
  const share = Math.min(
    (usable - reserve - fixed) / (run.need - fixed),
    (usable - fixed) / (need90 - fixed),
    (usable - reserve - fixed) / (keeps - fixed),
    badCase.need < Infinity ? (badUsable - fixed) / (badCase.need - fixed) : 0,
  );
  const length = run.sailed.reduce((sum, s) => sum + s.stretch.distance, 0);
  return share > 0 && share < 1 ? length * share : undefined;
}
