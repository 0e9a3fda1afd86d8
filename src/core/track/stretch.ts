import { compass, interpolate, legBetween } from '../route/distance.ts';
import type { LatLon } from '../route/shapes.ts';
import { DEGREE } from '../units/convert.ts';
import { type MeasuredTrack, measuredTrack } from './measured-track.ts';
import { type OverGround, overGround, STEP, WINDOW } from './over-ground.ts';
import { indexAt, type Piece, pieceOf, shareAt } from './piece.ts';
import type { Stretch, Track } from './shapes.ts';
import { DRIFTING, rangeOf, slopeOf, steadyRange, steadyTrend } from './steady.ts';

/** Shorter than this nothing can be told of, s. */
const SHORTEST = 15;
/** How far a receiver's place wanders from one end of a stretch to the other, m (from memory). */
const WANDER = 1;

/** From when to when, s since 1970. */
export interface Times {
  readonly start: number;
  readonly end: number;
}

/**
 * The part of a clean track between two times as one stretch, steady or not: for ends moved by hand. Times outside the
 * track become its ends. Undefined where less than 15 s or three points are left. Keep `measured` while ends move: it
 * is most of the work.
 */
export function stretchOf(
  track: Track,
  times: Times,
  measured: MeasuredTrack = measuredTrack(track),
): Stretch | undefined {
  const { time, noise } = measured;
  const start = Math.max(times.start, time[0] ?? 0);
  const end = Math.min(times.end, time[time.length - 1] ?? 0);
  if (!(end - start >= SHORTEST)) return undefined;
  const first = indexAt(time, start);
  const until = indexAt(time, end);
  const last = time[until]! < end ? until + 1 : until;
  if (last - first < 2) return undefined;
  const piece = pieceOf(track, first, last);

  // Means over a little time at each end: one fix is out by more than the mean of several.
  const part = Math.min(WINDOW, (end - start) / 3);
  const from = meanPlace(piece, start, part);
  const to = meanPlace(piece, end - part, part);
  const [east, north] = [to.east - from.east, to.north - from.north];
  const speed = Math.sqrt(east * east + north * north) / (end - start - part);

  const all = overGround(piece);
  const speeds = all ? within(all, all.speed, start, end) : [];
  const headings = all ? within(all, all.headingDeg, start, end) : [];
  const trend = slopeOf(speeds) * Math.max(0, speeds.length - 1);
  const range = steadyRange(speed, noise);
  const held = rangeOf(speeds) <= range.speed && rangeOf(headings) <= range.headingDeg;
  const broken = track.breaks.some((index) => index > first && index <= last);
  const begin = placeAt(track, time, start);
  const finish = placeAt(track, time, end);
  return {
    first,
    last,
    start,
    end,
    begin,
    finish,
    distance: legBetween(begin, finish).distance,
    speed,
    deviation: deviationOf(speeds, end - start),
    headingDeg: compass(Math.atan2(east, north) / DEGREE),
    trend,
    steady: !broken && held && speed >= DRIFTING && Math.abs(trend) <= steadyTrend(speed, noise),
  };
}

function placeAt({ points }: Track, time: Float64Array, moment: number): LatLon {
  const index = indexAt(time, moment);
  const from = points[index]!;
  return interpolate(from, points[index + 1] ?? from, shareAt(time, index, moment));
}

/** Mean place over some time on the plane of the piece, by the trapezium rule with points at most a second apart. */
function meanPlace({ time, east, north }: Piece, start: number, seconds: number): { east: number; north: number } {
  const steps = Math.ceil(seconds);
  const mean = { east: 0, north: 0 };
  for (let step = 0; step <= steps; step++) {
    const weight = (step === 0 || step === steps ? 0.5 : 1) / steps;
    const moment = start + (seconds * step) / steps;
    const index = indexAt(time, moment);
    const share = shareAt(time, index, moment);
    const next = Math.min(index + 1, time.length - 1);
    mean.east += weight * (east[index]! + share * (east[next]! - east[index]!));
    mean.north += weight * (north[index]! + share * (north[next]! - north[index]!));
  }
  return mean;
}

/** Those of the values whose windows lie between two times. */
function within({ start }: OverGround, values: Float64Array, from: number, to: number): Float64Array {
  const half = WINDOW / 2;
  return values.subarray(
    Math.max(0, Math.ceil((from + half - start) / STEP)),
    Math.max(0, Math.floor((to - half - start) / STEP) + 1),
  );
}

/** Standard deviation of the mean: scatter of windows that do not overlap, and what the receiver wanders. */
function deviationOf(speeds: ArrayLike<number>, seconds: number): number {
  const apart = WINDOW / STEP;
  const count = Math.floor((speeds.length - 1) / apart) + 1;
  const wander = (Math.SQRT2 * WANDER) / seconds;
  if (count < 2) return wander;
  let [sum, squares] = [0, 0];
  for (let at = 0; at < speeds.length; at += apart) {
    sum += speeds[at]!;
    squares += speeds[at]! ** 2;
  }
  const variance = Math.max(0, squares - (sum * sum) / count) / (count - 1);
  return Math.sqrt(variance / count + wander * wander);
}
