import { AS_PLANNED, type Tweak } from './afloat-in.ts';
import type { Need } from './need.ts';
import { type Prepared, scenariosOf, type WhatIf } from './prepare.ts';
import { strictestReserve } from './reserve.ts';
import { type Run, type Sailed, sail } from './sail.ts';
import type { Scenario } from './scenario.ts';
import type { BadCase, ReserveRule, Verdict } from './shapes.ts';
import { factorSpread, needOf, needWithGauge } from './spread.ts';
import { wayIsClear } from './yielded-speed.ts';

/** “Home with reserve” is said where the reserve stays whole in as many trips as this (our judgement). */
const SURE_OF_RESERVE = 0.667;

/** What fuel or charge alone says of a trip. */
export interface FuelVerdict {
  readonly verdict: Verdict;
  readonly run: Run;
  readonly need: Need;
  readonly usable: number;
  readonly reserve: number;
  readonly rule: ReserveRule;
  readonly need90: number;
  /** What keeps the reserve whole in two trips of three, without the reserve. */
  readonly keeps: number;
  readonly badCase: BadCase;
  readonly badRun: Run;
  /** What can be used in the bad case. */
  readonly badUsable: number;
  /** Standard deviation the factors leave in the need, relative; the same for the bad cases. */
  readonly spread: number;
  /** Time the slowest of the runs takes that the plan must stand, s. */
  readonly slowest: number;
  /** Stretches that the waves slow, where the run that needs most keeps its speed through them: they must be held too. */
  readonly slowed: readonly Sailed[];
}

export interface FuelQuestion extends WhatIf {
  readonly tweak?: Tweak;
  /** Reuse of a known factor spread saves the gradient. */
  readonly spread?: number;
  readonly humpSpeed?: number | undefined;
}

/**
 * Go: the reserve stays whole in two trips of three, and the 95th percentile of need in the worst credible case gets home
 * with something left. No-go: the median breaks the reserve, or the 90th percentile runs dry. Marginal: in between.
 */
export function fuelVerdict(prepared: Prepared, question: FuelQuestion = {}): FuelVerdict {
  const { shown, bad } = scenariosOf(prepared, question.humpSpeed, question);
  const standing = shownVerdict(prepared, shown, question);
  const found = worst(prepared, bad, question.tweak ?? AS_PLANNED, standing.spread);
  return { ...standing, ...found, verdict: verdictOf(standing, found) };
}

/** The same trip with labouring at the hump on the way home added to what may go wrong. */
export function withHump(prepared: Prepared, known: FuelVerdict, humpSpeed: number, use = 1): FuelVerdict {
  const { bad } = scenariosOf(prepared, humpSpeed);
  const hump = bad.filter(({ kinds }) => kinds.includes('home-on-hump'));
  const found = worst(prepared, hump, { ...AS_PLANNED, use }, known.spread);
  if (found.badCase.left >= known.badCase.left) return known;
  return { ...known, ...found, verdict: verdictOf(known, found) };
}

export type Standing = Omit<FuelVerdict, 'verdict' | 'badCase' | 'badRun' | 'badUsable'>;

export type Worst = Pick<FuelVerdict, 'badCase' | 'badRun' | 'badUsable'>;

function verdictOf(standing: Standing, { badCase }: Worst): Verdict {
  if (fallsShort(standing)) return 'no-go';
  return badCase.left > 0 && keepsReserve(standing) ? 'go' : 'marginal';
}

/** Whether the reserve stays whole in so many trips that it can be promised. */
export function keepsReserve({ keeps, usable, reserve }: Pick<Standing, 'keeps' | 'usable' | 'reserve'>): boolean {
  return keeps <= usable - reserve;
}

export function fallsShort({ run, usable, reserve, need90 }: Standing): boolean {
  return !run.possible || usable <= 0 || run.need > usable - reserve || need90 > usable;
}

/** What the plan itself says, the bad cases left out. */
export function shownVerdict(prepared: Prepared, shown: readonly Scenario[], question: FuelQuestion): Standing {
  const tweak = question.tweak ?? AS_PLANNED;
  const runs: Run[] = [];
  for (const scenario of shown) {
    // What the waves do not slow has been sailed already.
    if (!runs.some((run) => asUnslowed(run, scenario))) runs.push(sail(prepared, scenario, tweak));
  }
  const run = runs.reduce((a, b) => (b.need > a.need ? b : a));
  const spread = question.spread ?? factorSpread(prepared, run, tweak);
  const need = needOf(prepared, run, spread);
  const usable = prepared.usable(run.scenario);
  const { rule, amount: reserve } = strictestReserve(prepared.trip.policy, usable, meanFlow(run));
  const need90 = needWithGauge(prepared, run, need, { usable, p: 0.9 });
  const keeps = needWithGauge(prepared, run, need, { usable: usable - reserve, p: SURE_OF_RESERVE });
  const slowest = Math.max(...runs.map(({ time }) => time));
  const slowed = runs
    .filter((other) => other !== run && run.scenario.unslowed && !other.scenario.unslowed)
    .flatMap(({ sailed }) => sailed.filter((s) => s.possible && s.speed < s.planned));
  return { run, need, usable, reserve, rule, need90, keeps, spread, slowest, slowed };
}

/** A run through waves at the planned speeds that would have been sailed like that anyhow. */
function asUnslowed({ scenario, slows }: Run, { unslowed, forward }: Scenario): boolean {
  return scenario.unslowed === true && !unslowed && !slows && scenario.forward === forward;
}

/** Of the stretches alone: slow manoeuvring would thin a reserve told in minutes of it. */
function meanFlow(run: Run): number {
  const underWay = run.sailed.reduce((sum, s) => sum + s.time, 0);
  return run.possible && underWay > 0 ? (run.used - run.manoeuvring) / underWay : Infinity;
}

/** The bad case that leaves least, sailed at the speeds the boat can hold; the first that runs dry, if that is `enough`. */
export function worst(
  prepared: Prepared,
  cases: readonly Scenario[],
  tweak: Tweak,
  spread: number,
  enough = false,
): Worst {
  let found: Worst | undefined;
  let like: Run | undefined;
  let asked: Scenario | undefined;
  let clear = false;
  for (const scenario of cases) {
    // All cases share load, wind and sea; only the unknown seats differ, and whether the waves slow the boat.
    if (!asked || asked.forward !== scenario.forward) {
      like = undefined;
      clear = wayIsClear(prepared, scenario, tweak);
    }
    asked = scenario;
    // What was not slowed by the waves has been sailed already.
    if (scenario.unslowed && like?.sailed.every((s) => s.speed >= s.planned)) continue;
    const run = sail(prepared, scenario, tweak, { yielding: true, clear, like: scenario.unslowed ? undefined : like });
    if (!scenario.unslowed) like ??= run;
    const badUsable = prepared.usable(scenario);
    const need = run.possible
      ? needWithGauge(prepared, run, needOf(prepared, run, spread), { usable: badUsable, p: 0.95 })
      : Infinity;
    const left = badUsable - need;
    if (!found || left < found.badCase.left) {
      found = { badCase: { kinds: scenario.kinds, need, left, time: run.time }, badRun: run, badUsable };
    }
    if (enough && left <= 0) break;
  }
  return found!;
}
