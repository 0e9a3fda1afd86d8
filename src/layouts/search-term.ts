/** Words of other harbours for ours. */
const SAME: Readonly<Record<string, string>> = {
  gas: 'petrol',
  gasoline: 'petrol',
  lifejacket: 'jacket',
  lifejackets: 'jacket',
  lifevest: 'jacket',
  pfd: 'jacket',
  lanyard: 'cord',
  killcord: 'cord',
  killswitch: 'cord',
  prop: 'propeller',
  outboard: 'engine',
  current: 'stream',
  capsize: 'turned',
  capsized: 'turned',
  mob: 'overboard',
  float: 'passage',
};

/** Without accents and capitals. */
export const plainLetters = (word: string): string => word.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
/** The word as it is looked up. */
export const term = (word: string): string => SAME[plainLetters(word)] ?? plainLetters(word);
