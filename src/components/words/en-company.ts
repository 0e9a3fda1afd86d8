import type { Verdict } from '../../core/trip/shapes.ts';
import { spoken } from './spoken.ts';

/** Words of boats in company. */
export const companyWords = spoken('companyWords', {
  title: 'Boats in company',
  about:
    'All go the way of the trip on screen, at its time and in its weather, each with its own crew, fuel or charge and reserve. Tick the saved trips of the other boats; a boat saved without a trip has nobody aboard, so save it as a trip first.',
  onScreen: 'The trip on screen',
  work: 'Work out',
  none: 'No saved trip to go along yet.',
  notPlanned: (name: string) => `${name} cannot be planned on this route.`,
  stale: 'Something has changed since: work it out again.',
  pace: (name: string, speed: string) => `${name} is the slowest: the others go at ${speed} with it.`,
  alone: (name: string) => `${name} goes alone.`,
  shortest: (name: string, store: 'fuel' | 'charge') => `${name} runs short of ${store} first.`,
  boats: 'Each boat in company',
  boat: 'Boat',
  answer: 'Answer',
  left: 'Left at the end',
  over: 'Over the reserve',
  ifAlone: 'Left if it went alone',
  time: 'Trip takes',
  helps: 'Who can help whom',
  helper: 'Helper',
  helped: 'Helped',
  tow: 'Tow home from the turn',
  people: 'Everybody aboard',
  towed: {
    go: (speed: string, left: string) => `yes, at ${speed}; ${left} left, reserve whole`,
    marginal: (speed: string, left: string) => `yes, at ${speed}, on the reserve; ${left} left`,
    'no-go': () => 'no: it does not last',
  } satisfies Record<Verdict, (speed: string, left: string) => string>,
  taken: {
    go: (people: number) => `yes, ${people} more`,
    marginal: (people: number) => `${people} more, but not surely`,
    'no-go': (people: number) => `not ${people} more: over what it may carry, or not home with them`,
  } satisfies Record<Verdict, (people: number) => string>,
  towNote:
    'Reckoned at half fuel in the towed boat and in the weather told. Taking a tow is a last means in waves; people come first, the boat after.',
  sheetTitle: (count: number) => `${count} boats in company`,
  print: 'Print one passage plan for all',
  save: 'Save it as text',
});
