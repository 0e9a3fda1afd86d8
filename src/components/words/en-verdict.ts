import type { Verdict } from '../../core/trip/shapes.ts';
import type { StoreKind } from '../units/measures.ts';
import { spoken } from './spoken.ts';

/** The answer in the words of the screen. */
export const verdictWords = spoken<Record<Verdict, string>>('verdictWords', {
  go: 'Home with reserve',
  marginal: 'Not sure enough',
  'no-go': 'Not like this',
});

export const verdictWhyWords = spoken<Record<Verdict, (what: StoreKind) => string>>('verdictWhyWords', {
  go: (what) => `The likely trip leaves your reserve untouched, and even a bad day gets home with some ${what} left.`,
  marginal: () => 'It may well work, but too little is left, or too little is known, to count on it.',
  'no-go': () => 'As planned, this trip breaks the reserve or a limit. Change something before you go.',
});

/** One sentence on what the verdict means. */
export function verdictWhy(verdict: Verdict, store: StoreKind): string {
  return verdictWhyWords[verdict](store);
}
