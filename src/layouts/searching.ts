import MiniSearch from 'minisearch';
import { term } from './search-term.ts';

/** One place that a search can lead to, as the build writes it into search.json. */
export interface Place {
  readonly to: string;
  readonly page: string;
  readonly heading: string;
  readonly text: string;
  /** Where it is not English. */
  readonly lang?: string;
}

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
