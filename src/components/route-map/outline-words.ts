import type { Reach } from '../../core/trip/range-ray.ts';
import { spoken } from '../words/spoken.ts';

/** Eight directions, clockwise from north; as written where there is little room, and as said. */
const DIRECTIONS = [
  ['N', 'North'],
  ['NE', 'North-east'],
  ['E', 'East'],
  ['SE', 'South-east'],
  ['S', 'South'],
  ['SW', 'South-west'],
  ['W', 'West'],
  ['NW', 'North-west'],
] as const;

/** What the outline of ranges says, in English; one object per language. */
export const outlineWords = spoken('outlineWords', {
  name: 'How far from here',
  from: 'Look round from',
  waypoint: (number: number, name: string | undefined) => (name ? `${number}, ${name}` : `Waypoint ${number}`),
  start: 'Start',
  placeOf: (number: number) => `waypoint ${number}`,
  all: 'Show all of it',
  basis: 'At the planned speed, with the wind, stream, sea and load of this plan, and the reserve kept.',
  straight: 'In straight lines: what lies behind land or an area to keep out of is not counted.',
  takenOff: (number: number) => `The way to waypoint ${number} and back to the start is taken off.`,
  drawn: (percent: number) => `Distances as drawn; the way sailed is counted ${percent} % longer.`,
  beyond: 'It goes on past the waters known here, where nothing is known of land.',
  caption: (place: string) => `How far from ${place}, in eight directions`,
  direction: 'To',
  outAndHome: 'Out and home',
  oneWay: 'One way',
  ends: 'What ends it',
  toward: (index: number) => DIRECTIONS[index] ?? DIRECTIONS[0],
  why: ({ ends, name }: Reach, store: 'fuel' | 'charge'): string => {
    switch (ends) {
      case 'store':
        return store === 'fuel' ? 'Fuel' : 'Charge';
      case 'land':
        return name ?? 'Land';
      case 'keep-out':
        return `Keep out: ${name ?? ''}`;
      case 'no-headway':
        return 'No headway';
      case 'far':
        return 'Far enough';
      default:
        return ends satisfies never;
    }
  },
  none: 'Nothing yet: set the place where the trip starts.',
  nothing: 'Nothing is left for it once the reserve is kept.',
});
