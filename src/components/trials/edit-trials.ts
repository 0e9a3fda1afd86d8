import type { Hull } from '../../core/craft/shapes.ts';
import type { Load } from '../../core/load/shapes.ts';
import type { Refill, Run, Setup, Trials } from '../../core/trials/shapes.ts';
import { carriedOver } from '../craft-form/place-store.ts';
import { firstDraft } from '../planner/first-trip.ts';
import { seated } from '../planner/seated.ts';

/** An id that nothing of this kind carries yet: "r1", "r2". */
export function freshId(letter: 'r' | 'f' | 's' | 'p', taken: readonly { readonly id: string }[]): string {
  const ids = new Set(taken.map(({ id }) => id));
  let number = taken.length + 1;
  while (ids.has(`${letter}${number}`)) number++;
  return `${letter}${number}`;
}

/** The run put in the place of the one with its id, or at the end. */
export function withRun(trials: Trials, run: Run): Trials {
  return { ...trials, runs: replaced(trials.runs, run) };
}

export function withRuns(trials: Trials, runs: readonly Run[]): Trials {
  return runs.reduce(withRun, trials);
}

export function withoutRun(trials: Trials, id: string): Trials {
  return { ...trials, runs: trials.runs.filter((run) => run.id !== id) };
}

/** A copy right after its original, to be changed in a figure or two. */
export function duplicatedRun(trials: Trials, id: string): Trials {
  const at = trials.runs.findIndex((run) => run.id === id);
  const run = trials.runs[at];
  if (!run) return trials;
  return { ...trials, runs: trials.runs.toSpliced(at + 1, 0, { ...run, id: freshId('r', trials.runs) }) };
}

/** Left out of the fit, or taken in again. */
export function leftOut<T extends Run | Refill>(one: T, out: boolean): T {
  const { leftOut: _before, ...rest } = one;
  return (out ? { ...rest, leftOut: true } : rest) as T;
}

export function withRefill(trials: Trials, refill: Refill): Trials {
  return { ...trials, refills: replaced(trials.refills, refill) };
}

export function withoutRefill(trials: Trials, id: string): Trials {
  return { ...trials, refills: trials.refills.filter((refill) => refill.id !== id) };
}

export function withSetup(trials: Trials, setup: Setup): Trials {
  return { ...trials, setups: replaced(trials.setups, setup) };
}

/** A setup that no run was made with can go; the last one stays. */
export function withoutSetup(trials: Trials, id: string): Trials {
  if (trials.setups.length < 2 || usesOf(trials, id) > 0) return trials;
  return { ...trials, setups: trials.setups.filter((setup) => setup.id !== id) };
}

/** How many runs and refills were made with a setup. */
export function usesOf({ runs, refills }: Trials, id: string): number {
  return [...runs, ...refills].filter(({ setup }) => setup === id).length;
}

/** Another hull, or the same with other figures: everybody keeps a seat that it has too, tanks their place. */
export function onHull(trials: Trials, hull: Hull): Trials {
  const moved = <T extends Run | Refill>(one: T): T => ({ ...one, load: seated(one.load, hull, trials.hull) });
  const setups = trials.setups.map((setup) => ({ ...setup, store: carriedOver(setup.store, trials.hull, hull) }));
  return { ...trials, hull, setups, runs: trials.runs.map(moved), refills: trials.refills.map(moved) };
}

/** The load of the last run or refill entered, or the planner's first. */
export function lastLoad({ runs, refills }: Trials): Load {
  return runs.at(-1)?.load ?? refills.at(-1)?.load ?? firstDraft().trip.load;
}

/** Loads that runs were made with, each once, the last one first. */
export function loadsTried(trials: Trials): readonly Load[] {
  const found = new Map<string, Load>();
  for (const load of [...trials.runs.map((run) => run.load).toReversed(), lastLoad(trials)]) {
    const key = JSON.stringify(load);
    if (!found.has(key)) found.set(key, load);
  }
  return [...found.values()];
}

/** The load that most runs of a setup were made with; of several the last. */
export function usualLoad(trials: Trials, setup: string): Load {
  const uses = (load: Load) => {
    const key = JSON.stringify(load);
    return trials.runs.filter((run) => run.setup === setup && JSON.stringify(run.load) === key).length;
  };
  return loadsTried(trials).reduce((best, load) => (uses(load) > uses(best) ? load : best));
}

function replaced<T extends { readonly id: string }>(list: readonly T[], one: T): readonly T[] {
  const at = list.findIndex(({ id }) => id === one.id);
  return at < 0 ? [...list, one] : list.with(at, one);
}
