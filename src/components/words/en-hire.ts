import { spoken } from './spoken.ts';

/** Words of the hire desk's reserve check. */
export const hireWords = spoken('hireWords', {
  boat: 'Boat',
  weights: 'Weights of everyone and their things',
  weightsHint: (unit: string) => `In ${unit}, with commas between: 85, 70, 32`,
  weightsMissing: 'Type the weights of everyone aboard and the hours allowed',
  weightsProblem: 'Type weights as numbers above 0, with commas or spaces between.',
  route: 'Route',
  hoursOnly: 'No set route: engine running all the time allowed',
  allowed: 'Time allowed',
  allowedHint: 'In hours, such as 3 or 2.5',
  allowedProblem: 'Type the hours allowed, more than 0 and at most 12.',
  today: 'Today on the water',
  todayHint: 'Set in the morning; kept on this computer until tomorrow.',
  todayOld: 'Wind, stream and sea are from an earlier day and count as not known. Set them again.',
  back: (time: string) => `Back within ${time}`,
  seats: 'Seats',
  print: 'Print',
  clear: 'Next hirer',
  demo: 'Boats, plates and routes here are invented. A desk lists its own.',
  answers: (name: string, until: string) => `${name} answers for boats, plates and routes, until ${until}.`,
  noFleet: 'The boats of this desk are not here, so nothing can be checked.',
  noWaters: 'Without a set route nobody has checked land, depth and limits.',
});
