import { checklistConditions, checklistWords as words } from '../words/en-checklist.ts';
import type { Condition, Holding } from './shapes.ts';

/** What the trip says of the conditions that a list asks about, and what it leaves open. */
export function tripSaid(holding: Holding, asked: ReadonlySet<Condition>): string {
  const named = (answer: boolean | undefined) =>
    [...asked].filter((condition) => holding[condition] === answer).map((condition) => checklistConditions[condition]);
  const yes = named(true);
  const open = named(undefined);
  const parts = [
    words.trip(yes.length > 0 ? yes.join(', ') : words.noneOfThese),
    open.length > 0 ? words.unknown(open.join(', ')) : '',
  ];
  return parts.filter(Boolean).join(' ');
}
