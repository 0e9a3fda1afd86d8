import type { Need } from './need.ts';
import { needAt } from './need.ts';
import { type Prepared, scenariosOf, type WhatIf } from './prepare.ts';

import { strictestReserve } from './reserve.ts';
import { AS_PLANNED, type Run, sail, type Tweak } from './sail.ts';
import type { Scenario } from './scenario.ts';
import type { BadCase, ReserveRule, Verdict } from './shapes.ts';
import { factorSpread, needOf, withGauge } from './spread.ts';

/** What fuel or charge alone says of a trip. */
export interface FuelVerdict {
  readonly verdict: Verdict;
  readonly run: Run;
  readonly need: Need;
  readonly usable: number;
  readonly reserve: number;
  readonly rule: ReserveRule;
  readonly need90: number;
  readonly badCase: BadCase;
  /** What can be used in the bad case. */
  readonly badUsable: number;
  /** Standard deviation the factors leave in the need, relative; the same for the bad cases. */
  readonly spread: number;
  /** Time the slowest of the runs takes that the plan must stand, s. */
  readonly slowest: number;
}

export interface FuelQuestion extends WhatIf {
  readonly tweak?: Tweak;
  /** Reuse of a known factor spread saves the gradient. */
  readonly spread?: number;
  readonly humpSpeed?: number | undefined;
}

/**
 * Go: the median keeps the reserve whole, and the 95th percentile of need in the worst credible case gets home with
 * something left. No-go: the median breaks the reserve, or the 90th percentile runs dry. Marginal: in between.
 */
export function fuelVerdict(prepared: Prepared, question: FuelQuestion = {}): FuelVerdict {
  const tweak = question.tweak ?? AS_PLANNED;
  const { shown, bad } = scenariosOf(prepared, question.humpSpeed, question);
  const runs = shown.map((scenario) => sail(prepared, scenario, tweak, { gradient: question.spread === undefined }));
  const run = runs.reduce((a, b) => (b.need > a.need ? b : a));
  const spread = question.spread ?? factorSpread(prepared, run);
  const need = needOf(prepared, run, spread);
  const usable = prepared.usable(run.scenario);
  const slowest = Math.max(...runs.map(({ time }) => time));
  const { rule, amount: reserve } = strictestReserve(prepared.trip.policy, usable, meanFlow(run));
  const need90 = needAt(withGauge(prepared, run, need, usable), 0.9);
  const { badCase, badUsable } = worst(prepared, bad, tweak, spread);
  const verdict: Verdict =
    !run.possible || usable <= 0 || run.need > usable - reserve || need90 > usable
      ? 'no-go'
      : badCase.left > 0
        ? 'go'
        : 'marginal';
  return { verdict, run, need, usable, reserve, rule, need90, badCase, badUsable, spread, slowest };
}

/** Of the stretches alone: slow manoeuvring would thin a reserve told in minutes of it. */
function meanFlow(run: Run): number {
  const underWay = run.sailed.reduce((sum, s) => sum + s.time, 0);
  return run.possible && underWay > 0 ? (run.need - run.manoeuvring) / underWay : Infinity;
}

/** The bad case that leaves least, sailed at the speeds the boat can hold. */
function worst(
  prepared: Prepared,
  cases: readonly Scenario[],
  tweak: Tweak,
  spread: number,
): { readonly badCase: BadCase; readonly badUsable: number } {
  let found: { badCase: BadCase; badUsable: number } | undefined;
  for (const scenario of cases) {
    const run = sail(prepared, scenario, tweak, { yielding: true });
    const need = run.possible ? needAt(needOf(prepared, run, spread), 0.95) : Infinity;
    const badUsable = prepared.usable(scenario);
    const left = badUsable - need;
    if (!found || left < found.badCase.left) {
      found = { badCase: { kinds: scenario.kinds, need, left, time: run.time }, badUsable };
    }
  }
  return found!;
}
