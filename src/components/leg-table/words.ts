import { spoken } from '../words/spoken.ts';

/** What this element says, in English. */
export const legWords = spoken('legWords', {
  empty: 'Courses, times and what is left after each leg show here once there is a route.',
  caption: 'Leg by leg, courses true',
  leg: 'Leg',
  starts: 'Starts',
  steer: 'Steer',
  distance: 'Distance',
  through: 'Through water',
  over: 'Over ground',
  time: 'Time',
  use: 'Uses',
  left: 'Left after it',
  engine: 'Engine',
  rpm: (figure: string) => `${figure}\u00a0rpm`,
  limit: 'Limit',
  out: 'Out',
  home: 'Home',
  to: (name: string) => `to ${name}`,
  stop: (time: string) => `then ${time} stop`,
  manoeuvring: 'Manoeuvring',
  total: 'Whole trip',
  all: (count: string) => `Show all ${count} legs`,
  fewer: 'Show fewer',
});
