import { interpolate, legBetween, lonBetween } from '../route/distance.ts';
import type { LatLon } from '../route/shapes.ts';
import type { Stretch } from './shapes.ts';

/** Passes on one line are no further apart in time, s, from the end of one to the start of the next. */
const PAUSE = 20 * 60;
/** Nor in direction, degrees: a stream across turns the courses made good. */
const ASKEW = 20;
/** Nor in place: their middles, m, or the length of the longer (all three common practice, no source). */
const APART = 600;

/** Stretches sailed to and fro along the same line, in order of time; those alone on theirs are lines of one. */
export function passLines(stretches: readonly Stretch[]): Stretch[][] {
  const lines: Stretch[][] = [];
  for (const stretch of [...stretches].sort((a, b) => a.start - b.start)) {
    const line = lines.findLast((sailed) => followsOn(sailed.at(-1)!, stretch));
    if (line) line.push(stretch);
    else lines.push([stretch]);
  }
  return lines;
}

function followsOn(before: Stretch, after: Stretch): boolean {
  if (after.start - before.end > PAUSE) return false;
  const turn = Math.abs(lonBetween(before.headingDeg, after.headingDeg));
  if (Math.min(turn, 180 - turn) > ASKEW) return false;
  const apart = legBetween(middleOf(before), middleOf(after)).distance;
  return apart <= Math.max(APART, before.distance, after.distance);
}

function middleOf({ begin, finish }: Stretch): LatLon {
  return interpolate(begin, finish, 0.5);
}
