import type { Reason } from '../../core/trip/shapes.ts';
import { answerWords } from '../words/en-answer.ts';

export interface ReasonGroup {
  readonly level: Reason['level'];
  readonly title: string;
  /** Shown at once, and what waits behind a button. */
  readonly first: readonly Reason[];
  readonly more: readonly Reason[];
}

const LEVELS = ['no-go', 'marginal', 'note'] as const;

/** More than this at once nobody reads. */
const FIRST = 6;

/** Reasons by weight, each group in the order given; groups without any are left out. */
export function orderedReasons(reasons: readonly Reason[]): readonly ReasonGroup[] {
  return LEVELS.map((level) => {
    const title = answerWords.levels[level];
    const own = reasons.filter((reason) => reason.level === level);
    // One more row costs no more than the button that hides it.
    const cut = own.length > FIRST + 1 ? FIRST : own.length;
    return { level, title, first: own.slice(0, cut), more: own.slice(cut) };
  }).filter((group) => group.first.length > 0);
}
