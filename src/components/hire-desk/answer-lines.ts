import type { HireChecked } from '../../core/hire/check-hire.ts';
import type { DueRule, Told } from '../../core/hire/shapes.ts';
import type { Measures } from '../units/measures.ts';
import { hirerReasons, hirerWords as words } from '../words/en-desk.ts';
import { reasonText } from '../words/en-reasons.ts';
import { clockText } from './desk-time.ts';
import { levelText } from './level-text.ts';

export interface AnswerLine {
  readonly level: 'no-go' | 'marginal' | 'note';
  readonly text: string;
}

/** Why the answer is what it is, in a hirer's words: what stands against it first, each thing once. */
export function answerLines({ findings, plan }: HireChecked, m: Measures): readonly AnswerLine[] {
  const lines: AnswerLine[] = [
    ...findings.map(({ code, level }) => ({ level, text: words.findings[code] })),
    ...plan.reasons
      .filter(({ level }) => level !== 'note')
      .map((reason) => ({
        level: reason.level,
        text: (hirerReasons as Partial<Record<string, string>>)[reason.code] ?? reasonText(reason, m, plan.store),
      })),
  ];
  const rank = { 'no-go': 0, marginal: 1, note: 2 };
  const seen = new Set<string>();
  return lines.filter(({ text }) => !seen.has(text) && seen.add(text)).sort((a, b) => rank[a.level] - rank[b.level]);
}

/** What is left at the end, in one sentence. */
export function leftLine({ left, reserve, store }: Pick<Told, 'left' | 'reserve' | 'store'>, m: Measures): string {
  const show = (amount: number) => m.show('amount', amount, store);
  if (left.median < 0) return words.short(show(-left.median));
  const band = m.band('amount', { ...left, low: Math.max(left.low, 0) }, store);
  return words.left(show(left.median), band, show(reserve));
}

export interface DueAsked {
  readonly rule: DueRule;
  readonly lastReturn: number | undefined;
  readonly now: number;
}

/** "Be back by 14:30", or so long after leaving. */
export function dueLine({ rule, lastReturn, now }: DueAsked, m: Measures): string {
  if (rule.kind === 'after') {
    // The last return comes first where it would come first at any departure from now on.
    if (lastReturn === undefined || now + rule.seconds < lastReturn) return words.backAfter(m.time(rule.seconds));
    return words.backBy(clockText(lastReturn, now, m.lang));
  }
  return words.backBy(clockText(Math.min(rule.time, lastReturn ?? Infinity), now, m.lang));
}

/** When to turn: by the clock once the boat has left, and by the gauge. */
export function turnLine(told: Told, leftAt: number | undefined, now: number, m: Measures): string | undefined {
  const { turnWith, turnAfter, full, store } = told;
  if (turnWith === undefined || turnAfter === undefined) return undefined;
  const when =
    leftAt === undefined
      ? words.turnAfter(m.time(turnAfter))
      : words.turnAt(clockText(leftAt + turnAfter, now, m.lang));
  return words.turn(levelText(turnWith, full, store, m), when);
}
