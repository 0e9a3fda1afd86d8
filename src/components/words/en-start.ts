import { spoken } from './spoken.ts';

export const startWords = spoken('startWords', {
  intro: 'The same trip left at every half hour of that day. Press one to plan with it.',
  none: 'Give a departure, and its day is looked at here.',
  working: (done: number) => `${done} departures worked out`,
  cell: (clock: string, answer: string, left: string) => `${clock}: ${answer}, ${left} left`,
  best: 'uses least',
  bestTold: (clock: string, need: string) => `Of these ${clock} uses least: ${need}.`,
  noneFits: 'No departure of that day fits.',
  fits: (answer: string, spans: string) => `Best answer of that day: ${answer}, when left ${spans}.`,
  span: (from: string, to: string) => (from === to ? `at ${from}` : `from ${from} to ${to}`),
  planned: 'planned',
  table: 'Every departure as a table',
  leave: 'Leave',
  answer: 'Answer',
  left: 'Left at the end',
  home: 'At the end',
  why: 'Because',
  nothing: 'nothing stands against it',
  oneTide:
    'The tide given holds for half a day: hours far from its high water count as not known. From a station it is worked out for each departure.',
  taken: (clock: string) => `Departure is now ${clock}.`,
  depthTitle: 'When there is water enough',
  depthIntro: (depth: string, spare: string) =>
    `Hours of that day with ${depth} of water and ${spare} more for pressure and wind. Indicative, from the height of the tide given.`,
  depthNone:
    'Give the tide of the day with its height, and the hours with water enough over shoals on the route and at landings show here.',
  depthNothing: 'No shoal lies on the route, and no landing here has a height told.',
  place: 'Place',
  dries: 'Dries',
  least: 'Least depth',
  hours: 'Water enough',
  allDay: 'all that day',
  never: 'not that day',
  notTold: (spans: string) => `not told ${spans}`,
});
