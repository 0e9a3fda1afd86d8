import { spoken } from './spoken.ts';

/** What the author of a page is told of, and what stands in a piece used alone. */
export const hostWords = spoken('hostWords', {
  waters: 'The local waters could not be loaded or read. Give the address of a GeoJSON file, "haven", or "none".',
  problem: (attribute: string, message: string) => `${attribute}: ${message}`,
  title: 'For the author of this page',
  noSource: (id: string) => `There is no planner or other element with the id “${id}” on this page.`,
  waiting: 'This piece shows a trip as soon as it is given one.',
  noPlan: 'The trip is not complete yet: draw a route and answer what is asked.',
  boats: 'Boats of this site',
  chooseBoat: 'Choose',
  boatTaken: (name: string) => `${name} is now the boat of this trip.`,
});
