import MiniSearch from 'minisearch';

/** One place that a search can lead to, as the build writes it into search.json. */
export interface Place {
  readonly to: string;
  readonly page: string;
  readonly heading: string;
  readonly text: string;
}

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

const plainLetters = (word: string): string => word.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
const term = (word: string): string => SAME[plainLetters(word)] ?? plainLetters(word);

/** Ready to find places by the words in them: all words first, then any of them. */
export function searchOf(places: readonly Place[]): (words: string) => readonly Place[] {
  const index = new MiniSearch<Place & { id: number }>({
    fields: ['page', 'heading', 'text'],
    processTerm: term,
    searchOptions: { prefix: true, fuzzy: (word) => (word.length > 4 ? 0.2 : false), boost: { page: 3, heading: 2 } },
  });
  index.addAll(places.map((place, id) => ({ id, ...place })));
  return (words) => {
    const all = index.search(words, { combineWith: 'AND' });
    const found = all.length > 0 ? all : index.search(words, { combineWith: 'OR' });
    return found.map(({ id }) => places[Number(id)]!);
  };
}

/** The part of a text around the first of the words, at most `length` characters, cut between words. */
export function excerpt(text: string, words: string, length = 180): string {
  if (text.length <= length) return text;
  const plain = plainLetters(text);
  const hits = words
    .split(/\s+/)
    .map((word) => plain.indexOf(term(word)))
    .filter((at) => at >= 0);
  const near = Math.max(0, Math.min(...hits, text.length) - length / 3);
  const from = hits.length === 0 || near === 0 ? 0 : text.indexOf(' ', near) + 1;
  const cut = text.slice(from, from + length);
  const whole = from + length < text.length ? cut.slice(0, cut.lastIndexOf(' ')) : cut;
  return `${from > 0 ? '… ' : ''}${whole}${from + length < text.length ? ' …' : ''}`;
}
