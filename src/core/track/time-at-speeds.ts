import { interpolate, legBetween } from '../route/distance.ts';
import type { LatLon } from '../route/shapes.ts';
import { indexAt, shareAt } from './piece.ts';
import type { Track } from './shapes.ts';
import { DRIFTING } from './steady.ts';

/** A stop long enough that the engine may have been off; s since 1970. */
export interface Stop {
  readonly start: number;
  readonly end: number;
  readonly at: LatLon;
}

export interface TimeAtSpeeds {
  /** Time at each speed over ground, ascending; the speed is the mean within its bin, 0 a short stop. */
  readonly spent: readonly { readonly speed: number; readonly seconds: number }[];
  /** Not counted in `spent`: whether the engine ran, only those aboard know. */
  readonly stops: readonly Stop[];
  /** Of the time counted, what was not recorded and is taken as sailed straight from one end to the other, s. */
  readonly unrecorded: number;
}

/** Speeds are means over about this long, s: short enough for turns, long enough for a receiver's scatter. */
const BLOCK = 5;
/** So many blocks together say whether the boat lies still. */
const TOGETHER = 5;
/** A stop from this length on is told apart, s (common practice, no source). */
const LONG_STOP = 300;

interface Block {
  readonly start: number;
  readonly end: number;
  readonly at: LatLon;
  readonly speed: number;
  readonly recorded: boolean;
}

/** Time spent at each speed on a whole trip, in bins of `bin` m/s: for a refill. The track is clean. */
export function timeAtSpeeds(track: Track, bin = 0.5): TimeAtSpeeds {
  const blocks = blocksOf(track);
  const still = blocks.map((_, at) => {
    const near = blocks.slice(Math.max(0, at - (TOGETHER >> 1)), at + (TOGETHER >> 1) + 1);
    return medianSpeed(near) < DRIFTING;
  });
  const bins = new Map<number, { seconds: number; distance: number }>();
  const count = (number: number, seconds: number, distance: number) => {
    const before = bins.get(number) ?? { seconds: 0, distance: 0 };
    bins.set(number, { seconds: before.seconds + seconds, distance: before.distance + distance });
  };
  const stops: Stop[] = [];
  let unrecorded = 0;
  for (let at = 0; at < blocks.length; at++) {
    const { start, at: place, speed, recorded } = blocks[at]!;
    if (!still[at]) {
      const seconds = blocks[at]!.end - start;
      count(Math.floor(speed / bin) + 1, seconds, speed * seconds);
      if (!recorded) unrecorded += seconds;
      continue;
    }
    while (still[at + 1]) at++;
    const { end } = blocks[at]!;
    if (end - start >= LONG_STOP) stops.push({ start, end, at: place });
    else count(0, end - start, 0);
  }
  const spent = [...bins.entries()].sort(([a], [b]) => a - b);
  return {
    spent: spent.map(([, { seconds, distance }]) => ({ speed: distance / seconds, seconds })),
    stops,
    unrecorded,
  };
}

/** A track as blocks of even length, none across an interruption; an interruption is a block of its own. */
function blocksOf({ points, breaks }: Track): Block[] {
  const time = Float64Array.from(points, (point) => point.time);
  const placeAt = (moment: number): LatLon => {
    const index = indexAt(time, moment);
    const from = points[index]!;
    return interpolate(from, points[index + 1] ?? from, shareAt(time, index, moment));
  };
  const blocks: Block[] = [];
  const add = (from: LatLon, to: LatLon, [start, end]: readonly [number, number], recorded: boolean) => {
    if (!(end > start)) return;
    blocks.push({ start, end, at: from, speed: legBetween(from, to).distance / (end - start), recorded });
  };
  const starts = [0, ...breaks];
  for (const [piece, first] of starts.entries()) {
    const last = (starts[piece + 1] ?? points.length) - 1;
    const [start, end] = [time[first] ?? 0, time[last] ?? 0];
    if (piece > 0) add(points[first - 1]!, points[first]!, [time[first - 1]!, start], false);
    const count = Math.max(1, Math.round((end - start) / BLOCK));
    let from: LatLon | undefined = points[first];
    for (let at = 0; at < count && from; at++) {
      const [since, until] = [start + ((end - start) * at) / count, start + ((end - start) * (at + 1)) / count];
      const to: LatLon = at + 1 === count ? points[last]! : placeAt(until);
      add(from, to, [since, until], true);
      from = to;
    }
  }
  return blocks;
}

function medianSpeed(blocks: readonly Block[]): number {
  const speeds = blocks.map(({ speed }) => speed).sort((a, b) => a - b);
  return speeds[speeds.length >> 1] ?? 0;
}
