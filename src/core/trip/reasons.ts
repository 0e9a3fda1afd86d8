import type { Reason, Verdict } from './shapes.ts';

const RANK = { 'no-go': 0, marginal: 1, note: 2 } as const;

/** Worst first; within a level in the order found. */
export function ordered(reasons: readonly Reason[]): readonly Reason[] {
  return [...reasons].sort((a, b) => RANK[a.level] - RANK[b.level]);
}

/** The best verdict that every reason allows. */
export function verdictOf(reasons: readonly Reason[]): Verdict {
  let verdict: Verdict = 'go';
  for (const { level } of reasons) {
    if (level === 'no-go') return 'no-go';
    if (level === 'marginal') verdict = 'marginal';
  }
  return verdict;
}
