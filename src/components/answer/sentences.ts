import type { Plan } from '../../core/trip/shapes.ts';
import type { Measures } from '../units/measures.ts';
import { badCaseText } from '../words/en.ts';

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
  const kept = `reserve ${show(plan.reserve)}.`;
  if (left.median === -Infinity) return `No amount of ${store} gets this trip ${home ? 'home' : 'to its end'}.`;
  if (left.median < 0) return `${show(-left.median)} short of getting ${home ? 'home' : 'there'}; ${kept}`;
  const band =
    left.low >= 0
      ? measures.band('amount', left, store)
      : left.low === -Infinity
        ? `anything up to ${show(left.high)}`
        : `from ${show(-left.low)} short to ${show(left.high)}`;
  return `${show(left.median)} left ${home ? 'at home' : 'at the end'}, ${band} likely; ${kept}`;
}

/** The same in two or three words, for a narrow strip. */
export function leftInShort({ left, store }: Pick<Plan, 'left' | 'store'>, measures: Measures): string {
  if (left.median === -Infinity) return 'no way home';
  const figure = measures.show('amount', Math.abs(left.median), store);
  return left.median < 0 ? `${figure} short` : `${figure} left`;
}

/** When home, after how long and how far. */
export function timeSentence(plan: Plan, departure: string | undefined, measures: Measures): string {
  const distance = measures.show('distance', plan.distance);
  if (!Number.isFinite(plan.time)) return `${distance} in all, more than can be sailed as planned.`;
  const took = `${measures.time(plan.time)} and ${distance}`;
  if (!departure) return `${took} in all.`;
  return `${endsAtHome(plan) ? 'Home' : 'There'} at ${measures.clock(departure, plan.time)}, after ${took}.`;
}

/** How often the reserve would be touched, never "never" and never "always". */
export function chanceSentence(probability: number): string {
  const touched = Math.round((1 - probability) * 100);
  if (touched >= 99) return 'In nearly all such trips the reserve would be touched.';
  return `In about ${Math.max(touched, 1)} of 100 such trips the reserve would be touched.`;
}

/** What the worst credible way home leaves. */
export function badCaseSentence({ badCase, store, legs }: Plan, measures: Measures): string {
  const when = badCase.kinds.length > 0 ? `On a bad day, ${badCaseText(badCase.kinds)}` : 'On a bad day';
  if (!Number.isFinite(badCase.need)) {
    return `${when}: the boat does not get ${endsAtHome({ legs }) ? 'home' : 'there'} at all.`;
  }
  const figure = measures.show('amount', Math.abs(badCase.left), store);
  const took = Number.isFinite(badCase.time) ? ` after ${measures.time(badCase.time)}` : '';
  return badCase.left < 0 ? `${when}: ${figure} short, so it does not last.` : `${when}: ${figure} left${took}.`;
}
