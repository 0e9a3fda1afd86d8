import { spoken } from './spoken.ts';

/** Words that stand in many places. */
export const commonWords = spoken('commonWords', {
  notKnown: 'Not known',
  /** A word that stands by itself, put into the middle of a sentence. */
  within: (word: string) => word.toLowerCase(),
});
