import { spoken } from '../words/spoken.ts';

/** What the arrows on the map mean, in English. */
export const arrowWords = spoken('arrowWords', {
  wind: 'Wind at the hour of sailing: where it blows to',
  stream: 'Stream at the hour of sailing: where it sets',
});
