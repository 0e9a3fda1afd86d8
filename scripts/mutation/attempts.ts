import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { privateCopy, removeCopy } from './copy.ts';
import type { Mutant } from './mutators.ts';
import { isKept, type Reach, type TestFile, testsOf } from './reach.ts';
import { Worker } from './worker.ts';

export type Fate = 'noticed' | 'endless' | 'survived' | 'unreached';

export interface Attempt {
  readonly mutant: Mutant;
  readonly fate: Fate;
  /** Test files that it met, and those that reach it but were beyond the budget. */
  readonly met: number;
  readonly unmet: number;
  /** Noticed by kept answers, after all tests asked that state something had let it pass. */
  readonly keptAlone: boolean;
}

/** Share of the budget that is left to kept answers, which are asked last. */
const KEPT_SHARE = 0.4;

/** ms waited for each ms of processor time of the tests, on a machine that does other work. */
const WAIT = 15;

/** The great circle doubled, which a dozen tests have to notice, and a space that none can. */
const DISTANCE = 'src/core/route/distance.ts';

/** Puts every mutant in place, one after the other, in so many copies at once; none is begun after `until`, ms. */
export async function attempts(
  root: string,
  mutants: readonly Mutant[],
  reach: Reach,
  {
    atOnce,
    budget,
    until,
    told,
  }: { atOnce: number; budget: number; until: number; told: (attempt: Attempt, done: number) => void },
): Promise<readonly Attempt[]> {
  const found: Attempt[] = [];
  let next = 0;
  let done = 0;
  const work = async () => {
    const copy = privateCopy(root);
    const worker = new Worker(copy);
    try {
      await control(root, worker, reach);
      while (next < mutants.length && performance.now() < until) {
        const i = next++;
        found[i] = await attempt(worker, mutants[i]!, reach, budget);
        told(found[i], ++done);
      }
      // Once more, so that what was found meanwhile can be trusted as well.
      await control(root, worker, reach);
    } finally {
      worker.close();
      removeCopy(copy);
    }
  };
  await Promise.all(Array.from({ length: atOnce }, work));
  return found;
}

async function attempt(worker: Worker, mutant: Mutant, reach: Reach, budget: number): Promise<Attempt> {
  const all = testsOf(reach, mutant);
  const tests = within(all, budget);
  const seen = { mutant, met: tests.length, unmet: all.length - tests.length, keptAlone: false };
  if (tests.length === 0) return { ...seen, fate: 'unreached' };
  const patience = WAIT * Math.max(...tests.map(({ ms }) => ms));
  const { end, by } = await worker.attempt(
    mutant,
    tests.map(({ file }) => file),
    patience,
  );
  const keptAlone = by !== undefined && isKept(by);
  return { ...seen, keptAlone, fate: end === 'passed' ? 'survived' : end === 'failed' ? 'noticed' : 'endless' };
}

/** Tests that fit into the budget (ms): of those that state something, then of kept answers; the first of each in any case. */
export function within(tests: readonly TestFile[], budget: number): readonly TestFile[] {
  const kept = fitting(
    tests.filter(({ file }) => isKept(file)),
    KEPT_SHARE * budget,
  );
  const taken = kept.reduce((sum, { ms }) => sum + ms, 0);
  const stating = fitting(
    tests.filter(({ file }) => !isKept(file)),
    budget - taken,
  );
  return [...stating, ...kept];
}

/** The first, and of the others those that fit. */
function fitting(tests: readonly TestFile[], budget: number): readonly TestFile[] {
  let left = budget;
  return tests.filter(({ ms }, i) => {
    if (i > 0 && ms > left) return false;
    left -= ms;
    return true;
  });
}

/** A fault that must be noticed and a change that changes nothing, in turn: without the right answers nothing counts. */
async function control(root: string, worker: Worker, reach: Reach): Promise<void> {
  const text = readFileSync(join(root, DISTANCE), 'utf8');
  const sign = 'return Math.sqrt(';
  const start = text.indexOf(sign);
  if (start < 0) throw new Error(`The control finds no "${sign}" in ${DISTANCE}`);
  const place = { file: DISTANCE, kind: 'control', start, end: start + sign.length, line: 0 };
  const doubled: Mutant = { ...place, replacement: 'return 2 * Math.sqrt(' };
  const nothing: Mutant = { ...place, replacement: `${sign} ` };
  const tests = within(testsOf(reach, doubled), 1000).map(({ file }) => file);
  for (const [mutant, wanted] of [
    [doubled, 'failed'],
    [nothing, 'passed'],
    [doubled, 'failed'],
    [nothing, 'passed'],
  ] as const) {
    const { end } = await worker.attempt(mutant, tests, 0);
    if (end === wanted) continue;
    const what = mutant === doubled ? 'Distances doubled' : 'A space more';
    throw new Error(`${what}: the tests ${end}, so no figure of this run would mean anything.`);
  }
}
