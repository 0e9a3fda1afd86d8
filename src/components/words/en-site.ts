import { spoken } from './spoken.ts';

/** Words of the search page. */
export const searchWords = spoken('searchWords', {
  loading: 'Looking ...',
  found: (count: number, asked: string, most: number) =>
    count === 0
      ? `Nothing on these pages about “${asked}”. Try another word, or one of the pages below.`
      : count === 1
        ? `One place about “${asked}”.`
        : `${count} places about “${asked}”${count > most ? `; the first ${most} are shown` : ''}.`,
  failed: 'The texts to search could not be loaded. The pages below can still be opened.',
});

/** Words about working offline and new versions. */
export const offlineWords = spoken('offlineWords', {
  ready: 'A new version is ready.',
  use: 'Use it now',
  later: 'Later',
  lost: 'This page does not keep what you typed. It is lost if the new version is loaded now.',
  anyway: 'Load it all the same',
  other: 'The new version is in use in another tab. This one goes on as it is until it is loaded again.',
  reload: 'Load again',
});
