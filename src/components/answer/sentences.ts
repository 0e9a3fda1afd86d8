import type { Plan } from '../../core/trip/shapes.ts';
import type { Measures } from '../units/measures.ts';
import { answerWords as words } from '../words/en-answer.ts';
import { badCaseText } from '../words/en-bad-case.ts';

/** A trip that ends elsewhere has no way home. */
export function endsAtHome({ legs }: Pick<Plan, 'legs'>): boolean {
  return legs.length === 0 || legs.some((leg) => leg.part === 'home');
}

type Left = Pick<Plan, 'left' | 'reserve' | 'store' | 'legs'>;

/** "3.9 L left at home, 2.8 to 4.8 L likely; reserve 3.6 L." or by how much it falls short. */
export function leftSentence(plan: Left, measures: Measures): string {
  const { left, store } = plan;
  const show = (amount: number) => measures.show('amount', amount, store);
  const home = endsAtHome(plan);
  const kept = words.kept(show(plan.reserve));
  if (left.median === -Infinity) return words.noAmount(store, home);
  if (left.median < 0) return words.shortOf(show(-left.median), home, kept);
  const band =
    left.low >= 0
      ? measures.band('amount', left, store)
      : left.low === -Infinity
        ? words.upTo(show(left.high))
        : words.shortTo(show(-left.low), show(left.high));
  return words.left(show(left.median), home, band, kept);
}

/** The same in two or three words, for a narrow strip. */
export function leftInShort({ left, store }: Pick<Plan, 'left' | 'store'>, measures: Measures): string {
  if (left.median === -Infinity) return words.noWayHome;
  const figure = measures.show('amount', Math.abs(left.median), store);
  return left.median < 0 ? words.missingShort(figure) : words.leftShort(figure);
}

/** When home, after how long and how far. */
export function timeSentence(plan: Plan, departure: string | undefined, measures: Measures): string {
  const distance = measures.show('distance', plan.distance);
  if (!Number.isFinite(plan.time)) return words.tooFar(distance);
  const took = words.took(measures.time(plan.time), distance);
  if (!departure) return words.inAll(took);
  return words.arrives(measures.clock(departure, plan.time), endsAtHome(plan), took);
}

/** How often the reserve would be touched, never "never" and never "always". */
export function chanceSentence(probability: number): string {
  const touched = Math.round((1 - probability) * 100);
  if (touched >= 99) return words.nearlyAll;
  return words.touched(Math.max(touched, 1));
}

/** What the worst credible way home leaves. */
export function badCaseSentence({ badCase, store, legs }: Plan, measures: Measures): string {
  const when = badCase.kinds.length > 0 ? words.badDayOf(badCaseText(badCase.kinds)) : words.badDay;
  if (!Number.isFinite(badCase.need)) return words.badNever(when, endsAtHome({ legs }));
  const figure = measures.show('amount', Math.abs(badCase.left), store);
  if (badCase.left < 0) return words.badShort(when, figure);
  return Number.isFinite(badCase.time)
    ? words.badLeftAfter(when, figure, measures.time(badCase.time))
    : words.badLeft(when, figure);
}
