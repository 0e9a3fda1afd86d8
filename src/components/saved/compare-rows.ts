import type { Plan } from '../../core/trip/shapes.ts';
import type { Measures } from '../units/measures.ts';
import { savedWords as words } from '../words/en-saved.ts';
import { verdictWords } from '../words/en-verdict.ts';

export interface Compared {
  readonly plan: Plan | undefined;
  readonly departure: string | undefined;
}

/** Two plans row by row; a trip without a plan has dashes. */
export function compareRows(pair: readonly [Compared, Compared], m: Measures): readonly (readonly string[])[] {
  const row = (label: string, text: (plan: Plan, departure: string | undefined) => string): readonly string[] => [
    label,
    ...pair.map(({ plan, departure }) => (plan ? text(plan, departure) : '–')),
  ];
  const { compareRows: rows } = words;
  const amount = (value: number, { store }: Plan): string =>
    Number.isFinite(value) ? m.show('amount', value, store) : '–';
  return [
    row(rows.answer, (plan) => verdictWords[plan.verdict]),
    row(rows.left, (plan) => amount(plan.left.median, plan)),
    row(rows.likely, (plan) => (Number.isFinite(plan.left.low) ? m.band('amount', plan.left, plan.store) : '–')),
    row(rows.badDay, (plan) => amount(plan.badCase.left, plan)),
    row(rows.reserve, (plan) => amount(plan.reserve, plan)),
    row(rows.whole, (plan) => m.show('share', plan.probability)),
    row(rows.need, (plan) => amount(plan.need.median, plan)),
    row(rows.distance, (plan) => m.show('distance', plan.distance)),
    row(rows.time, (plan) => m.show('time', plan.time)),
    row(rows.home, (plan, departure) => m.clock(departure, plan.time)),
    row(rows.aboard, (plan) => m.show('mass', plan.balance.peopleAndGear)),
    row(rows.range, (plan) => m.show('distance', plan.range.outAndHome)),
  ];
}
