import { DEGREE } from '../units/convert.ts';
import { type Piece, shareAt } from './piece.ts';

/** Time over which speed is averaged, s: a good receiver's mean of 10 s is within 0.05 m/s (published practice). */
export const WINDOW = 10;
/** Apart, s; counted from 1970, so that a track cut in two is asked at the same moments. */
export const STEP = 5;

/** Velocity over ground at moments `STEP` apart, each the mean of `WINDOW` around it. */
export interface OverGround {
  /** Of the first moment, s since 1970. */
  readonly start: number;
  /** m/s */
  readonly speed: Float64Array;
  /** Degrees, unwrapped: no step of more than 180 from one to the next. */
  readonly headingDeg: Float64Array;
}

/** The speeds and headings of an uninterrupted piece of track. Undefined where it is shorter than one window. */
export function overGround({ time, east, north }: Piece): OverGround | undefined {
  const half = WINDOW / 2;
  const start = Math.ceil((time[0]! + half) / STEP) * STEP;
  const count = Math.floor((time[time.length - 1]! - half - start) / STEP) + 1;
  if (!(count > 0)) return undefined;
  const places = placesAt({ time, east, north }, start - half, count + WINDOW / STEP);
  const speed = new Float64Array(count);
  const headingDeg = new Float64Array(count);
  for (let at = 0; at < count; at++) {
    const east = places.east[at + WINDOW / STEP]! - places.east[at]!;
    const north = places.north[at + WINDOW / STEP]! - places.north[at]!;
    speed[at] = Math.sqrt(east * east + north * north) / WINDOW;
    const heading = Math.atan2(east, north) / DEGREE;
    const before = at > 0 ? headingDeg[at - 1]! : heading;
    headingDeg[at] = heading + 360 * Math.round((before - heading) / 360);
  }
  return { start, speed, headingDeg };
}

/** Places at `count` moments `STEP` apart, straight and even between points. */
function placesAt({ time, east, north }: Omit<Piece, 'first'>, start: number, count: number) {
  const places = { east: new Float64Array(count), north: new Float64Array(count) };
  let index = 0;
  for (let at = 0; at < count; at++) {
    const moment = start + at * STEP;
    while (index + 1 < time.length && time[index + 1]! <= moment) index++;
    const share = shareAt(time, index, moment);
    places.east[at] = between(east, index, share);
    places.north[at] = between(north, index, share);
  }
  return places;
}

function between(values: Float64Array, index: number, share: number): number {
  const from = values[index]!;
  return share === 0 ? from : from + (values[index + 1]! - from) * share;
}
