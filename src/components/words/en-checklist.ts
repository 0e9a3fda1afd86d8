import type { Condition } from '../checklist/shapes.ts';
import { spoken } from './spoken.ts';

/** What a point depends on, as it stands beside the point. */
export const checklistConditions = spoken<Readonly<Record<Condition, string>>>('checklistConditions', {
  petrol: 'petrol',
  electric: 'electric',
  'two-stroke': 'two-stroke',
  'four-stroke': 'four-stroke',
  'portable-tank': 'portable tank',
  'fixed-tank': 'built-in tank',
  lithium: 'lithium',
  'lead-acid': 'lead-acid',
  inflatable: 'inflatable',
  alone: 'alone',
  crew: 'with crew',
  children: 'with children',
  dog: 'with a dog',
  sea: 'sea water',
  fresh: 'fresh water',
  stream: 'stream',
  'fresh-wind': '4 Beaufort or more',
  'cold-water': 'water below 15 °C',
  dark: 'near or after dark',
  'one-way': 'one way',
});

/** Words of the checklists, on their pages and in the element. */
export const checklistWords = spoken('checklistWords', {
  done: (done: number, all: number) => `${done} of ${all} done`,
  doneLabel: 'Points done',
  clear: 'Clear all',
  cleared: 'All ticks cleared.',
  takeBack: 'Take back',
  back: 'Ticks are back.',
  print: 'Print',
  notKept: 'This browser does not let the page keep ticks; they last until it is closed.',
  old: (when: string) => `These ticks are from ${when}. Start afresh with “Clear all”.`,
  link: (text: string) => `Link to this point: ${text}`,
  yours: 'for your trip',
  trip: (holding: string) => `Fitted to the trip in the planner: ${holding}.`,
  noneOfThese: 'nothing this list asks about holds',
  unknown: (conditions: string) => `The trip does not tell: ${conditions}. Points about that stay on the list.`,
  showRest: (count: number) =>
    count === 1 ? 'Show 1 point that concerns other trips' : `Show ${count} points that concern other trips`,
  hideRest: 'Only the points for your trip',
  law: 'Local law comes first.',
  lawMore:
    'What you must carry and do differs from country to country and from harbour to harbour. The boat’s plate, the maker’s manual and the practice you are licensed or trained for stand above this list, and no list is complete.',
  sources: 'Where these points come from',
  sourcesMore: 'The words are our own, and nothing here is legal advice.',
  loading: 'The list is loading.',
  noList: (name: string) => `There is no list “${name}”. The lists are: `,
  notLoaded: 'The list could not be loaded. Is the connection gone?',
  badList: 'This list cannot be shown: ',
});
