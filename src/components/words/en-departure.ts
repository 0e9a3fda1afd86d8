import { spoken } from './spoken.ts';

/** Words of the departure: its day, clock and zone. */
export const departureWords = spoken('departureWords', {
  zone: 'Clock of the place',
  asWritten: (offset: string) => `${offset}, as given in this trip`,
  thisDevice: (zone: string) => `${zone} (this device)`,
  hint: (offset: string) => (offset ? `Date and clock time there, ${offset}` : 'Date and clock time there'),
  skipped: (from: string, shown: string) =>
    `On that day the clock goes forward past ${from}: right after comes ${shown}. There is no such time, so no departure counts yet.`,
  takeShown: (shown: string) => `Take ${shown}`,
  twice: 'On that day the clock goes back and shows this time twice. Which one?',
  first: (offset: string) => `The first, ${offset}`,
  second: (offset: string) => `The second, ${offset}`,
  noZone: 'This browser does not know that zone: the offset stays as it was.',
});
