import { spoken } from './spoken.ts';

/** Clockwise from north, sixteen of them, as written where there is little room. */
export const compassWords = spoken('compassWords', {
  points: ['N', 'NNE', 'NE', 'ENE', 'E', 'ESE', 'SE', 'SSE', 'S', 'SSW', 'SW', 'WSW', 'W', 'WNW', 'NW', 'NNW'],
});

/** Sixteen points, for a direction in degrees: 225 is "SW". */
export function compassPoint(deg: number): string {
  return compassWords.points[((Math.round(deg / 22.5) % 16) + 16) % 16] ?? '';
}
