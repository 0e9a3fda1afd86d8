import { type Fleet, HANDOVER, type Hire } from '../../core/hire/shapes.ts';
import type { Measures } from '../units/measures.ts';
import { handoverWords, hirerWords, slipWords as words } from '../words/en-desk.ts';
import { turnLine } from './answer-lines.ts';
import { clockText } from './desk-time.ts';
import { levelText } from './level-text.ts';

export interface SlipLine {
  readonly name: string;
  readonly text: string;
}

/** When it leaves and is due, as far as that is known yet. */
export function timeLines(hire: Hire, m: Measures): readonly SlipLine[] {
  const { leftAt, due, rule, checkedAt, validUntil, lastReturn } = hire;
  const at = (seconds: number) => clockText(seconds, checkedAt, m.lang);
  if (leftAt !== undefined && due !== undefined) {
    return [
      { name: words.left, text: at(leftAt) },
      { name: words.due, text: at(due) },
    ];
  }
  const back =
    rule.kind === 'at'
      ? at(Math.min(rule.time, lastReturn ?? Infinity))
      : [
          words.afterLeaving(m.time(rule.seconds)),
          ...(lastReturn !== undefined && checkedAt + rule.seconds > lastReturn - 7200 ? [at(lastReturn)] : []),
        ].join(' / ');
  return [
    { name: words.leave, text: at(validUntil) },
    { name: words.due, text: back },
  ];
}

/** The slip as names and texts, for paper and for plain text. */
export function slipLines(hire: Hire, fleet: Pick<Fleet, 'call' | 'rescue'>, m: Measures): readonly SlipLine[] {
  const { told, route, area, leftAt, checkedAt } = hire;
  const turn = turnLine(told, leftAt, checkedAt, m);
  const where = route ?? area;
  return [
    ...(where ? [{ name: words.where, text: where }] : []),
    ...(told.start === undefined
      ? []
      : [{ name: words.level(told.store), text: levelText(told.start, told.full, told.store, m) }]),
    ...(turn ? [{ name: words.turn, text: turn }] : []),
    ...(fleet.call ? [{ name: words.call, text: fleet.call }] : []),
    ...(fleet.rescue ? [{ name: words.rescue, text: fleet.rescue }] : []),
  ];
}

/** The slip as plain text, for the code where no site can be reached. Nothing in it says who. */
export function slipText(hire: Hire, fleet: Pick<Fleet, 'name' | 'call' | 'rescue'>, m: Measures): string {
  const lines = [
    fleet.name,
    hire.boat,
    hirerWords.verdicts[hire.told.verdict],
    ...[...timeLines(hire, m), ...slipLines(hire, fleet, m)].map(({ name, text }) => `${name}: ${text}`),
    ...hire.told.lines,
    words.late,
    hirerWords.cautions,
  ];
  // Plain signs make a smaller code, and every reader knows them.
  return lines
    .join('\n')
    .replace(/[\u00a0\u202f]/g, ' ')
    .replace(/[\u2018\u2019]/g, "'")
    .replace(/[\u201c\u201d]/g, '"')
    .replace(/[\u2012-\u2015\u2212]/g, '-');
}

/** What was shown, with the initials, in the order of the handover. */
export function shownLines({ shown }: Pick<Hire, 'shown'>): readonly SlipLine[] {
  return HANDOVER.map((point) => ({ name: handoverWords.points[point], text: shown[point] ?? '' }));
}
