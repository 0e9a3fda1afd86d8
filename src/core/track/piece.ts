import { legBetween } from '../route/distance.ts';
import { DEGREE } from '../units/convert.ts';
import type { Track } from './shapes.ts';

/** An uninterrupted piece of a track on a plane that follows it: m east and north of its first point. */
export interface Piece {
  /** Index in the track of its first point. */
  readonly first: number;
  /** s since 1970, ascending. */
  readonly time: Float64Array;
  readonly east: Float64Array;
  readonly north: Float64Array;
}

/** The points of a track from one index to another, both counted in; to 10 ppm while a track spans less than 200 km. */
export function pieceOf({ points }: Track, first: number, last: number): Piece {
  const count = Math.max(0, last - first + 1);
  const [time, east, north] = [new Float64Array(count), new Float64Array(count), new Float64Array(count)];
  for (let at = 0; at < count; at++) {
    const point = points[first + at]!;
    time[at] = point.time;
    if (at === 0) continue;
    const { distance, trackDeg } = legBetween(points[first + at - 1]!, point);
    east[at] = east[at - 1]! + distance * Math.sin(trackDeg * DEGREE);
    north[at] = north[at - 1]! + distance * Math.cos(trackDeg * DEGREE);
  }
  return { first, time, east, north };
}

/** Index of the last point at or before a time; -1 before the first. */
export function indexAt(time: Float64Array, at: number): number {
  let low = 0;
  let high = time.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (time[middle]! <= at) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}

/** Share of the way from point `index` to the next at a time; 0 at the last point. */
export function shareAt(time: Float64Array, index: number, at: number): number {
  const until = time[index + 1];
  return until === undefined ? 0 : (at - time[index]!) / (until - time[index]!);
}
