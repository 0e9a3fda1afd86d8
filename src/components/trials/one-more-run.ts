import type { Fitted } from '../../core/trials/fit.ts';
import { candidateRuns, type Help, helpfulRuns } from '../../core/trials/next-run.ts';
import type { Trials } from '../../core/trials/shapes.ts';
import { loadsTried } from './edit-trials.ts';
import type { Shown } from './fit-curves.ts';

/** Relative; less is not worth going out for. */
const WORTH = 0.02;
const SHOWN = 3;

/** The runs that would narrow consumption at these speeds most, at loads and setups that are at hand. */
export function oneMoreRun(trials: Trials, fit: Fitted, shown: Shown, speeds: readonly number[]): readonly Help[] {
  const setups = trials.setups.map(({ id }) => id);
  const candidates = candidateRuns(trials, fit, setups, loadsTried(trials));
  const helps = helpfulRuns(trials, fit, { ...shown, speeds }, candidates);
  return helps.filter(({ before, after }) => before - after > WORTH * before).slice(0, SHOWN);
}
