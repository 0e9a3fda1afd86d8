import { spoken } from './spoken.ts';

export const landingWords = spoken('landingWords', {
  nearest: 'Nearest landing',
  there: 'here',
  figures: (distance: string, need: string, time: string) => `${distance}, ${need}, ${time}`,
  noWay: 'no way made there at that hour',
  none: 'none found',
  fuel: 'fuel',
  power: 'power',
  over: (shoals: string) => `over ${shoals}`,
  note: 'Nearest landing: over water, at the speed planned there, with the boat as heavy as at departure. Look up on the chart whether it can be used that day.',
});
