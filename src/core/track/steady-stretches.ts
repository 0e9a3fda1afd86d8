import { measuredTrack } from './measured-track.ts';
import { type OverGround, STEP } from './over-ground.ts';
import type { Stretch, Track } from './shapes.ts';
import { DRIFTING, rangeOf, STEADY_SPEED, slopeOf, steadyRange } from './steady.ts';
import { stretchOf } from './stretch.ts';

/** Passes of a minute and more are good practice; of a minute 40 s are left when both ends have settled, s. */
const SHORTEST = 40;

/** Moments from one to another, both counted in. */
interface Span {
  readonly from: number;
  readonly to: number;
}

/**
 * Finds where a clean track was sailed at one speed on one heading for at least `shortest` seconds; where two compete,
 * the longer one. In order of time. Yields the share done, 0 to 1; leave off to cancel.
 */
export function* findingStretches(track: Track, shortest = SHORTEST): Generator<number, Stretch[]> {
  const measured = measuredTrack(track);
  const { pieces, noise } = measured;
  const found: Stretch[] = [];
  for (const [index, piece] of pieces.entries()) {
    yield (index + 1) / (pieces.length + 1);
    for (const { from, to } of steadySpans(piece, noise, shortest / STEP)) {
      const times = { start: piece.start + from * STEP, end: piece.start + to * STEP };
      const stretch = stretchOf(track, times, measured);
      if (stretch?.steady) found.push(stretch);
    }
  }
  return found;
}

/** The same in one go. */
export function steadyStretches(track: Track, shortest = SHORTEST): Stretch[] {
  const finding = findingStretches(track, shortest);
  for (;;) {
    const { done, value } = finding.next();
    if (done) return value;
  }
}

/** Spans of at least `least` steps on which speed and heading keep to their range; they do not overlap. */
function steadySpans(speeds: OverGround, noise: number, least: number): Span[] {
  const taken = new Uint8Array(speeds.speed.length);
  const chosen: Span[] = [];
  const byLength = longestSpans(speeds, noise, least).sort(
    (a, b) => b.to - b.from - (a.to - a.from) || a.from - b.from,
  );
  for (const span of byLength) {
    if (gathersWay(speeds, span)) continue;
    const free = trimmed(speeds, noise, longestFree(taken, span));
    if (free.to - free.from < least) continue;
    taken.fill(1, free.from, free.to + 1);
    chosen.push(free);
  }
  return chosen.sort((a, b) => a.from - b.from);
}

/** All spans that cannot be made longer either way. Two ends move along; two queues keep the extremes between them. */
function longestSpans({ speed, headingDeg }: OverGround, noise: number, least: number): Span[] {
  const spans: Span[] = [];
  const extremes = [new Extremes(speed), new Extremes(headingDeg)] as const;
  let from = 0;
  let sum = 0;
  for (let to = 0; to <= speed.length; to++) {
    const drifting = to === speed.length || speed[to]! < DRIFTING;
    const before = from;
    if (drifting) {
      from = to + 1;
    } else {
      sum += speed[to]!;
      for (const each of extremes) each.add(to);
      for (;;) {
        const range = steadyRange(sum / (to - from + 1), noise);
        if (extremes[0].range <= range.speed && extremes[1].range <= range.headingDeg) break;
        sum -= speed[from]!;
        from++;
        for (const each of extremes) each.forget(from);
      }
    }
    if (from > before && to - 1 - before >= least) spans.push({ from: before, to: to - 1 });
    if (drifting) {
      sum = 0;
      for (const each of extremes) each.forget(from);
    }
  }
  return spans;
}

/** Least and greatest of the values between two ends that only move on. */
class Extremes {
  readonly #values: Float64Array;
  readonly #least: number[] = [];
  readonly #most: number[] = [];
  #leastAt = 0;
  #mostAt = 0;

  constructor(values: Float64Array) {
    this.#values = values;
  }

  get range(): number {
    return this.#values[this.#most[this.#mostAt]!]! - this.#values[this.#least[this.#leastAt]!]!;
  }

  add(index: number): void {
    const value = this.#values[index]!;
    while (this.#least.length > this.#leastAt && this.#values[this.#least.at(-1)!]! >= value) this.#least.pop();
    while (this.#most.length > this.#mostAt && this.#values[this.#most.at(-1)!]! <= value) this.#most.pop();
    this.#least.push(index);
    this.#most.push(index);
  }

  /** Forgets what lies before an index. */
  forget(before: number): void {
    while (this.#leastAt < this.#least.length && this.#least[this.#leastAt]! < before) this.#leastAt++;
    while (this.#mostAt < this.#most.length && this.#most[this.#mostAt]! < before) this.#mostAt++;
  }
}

/** Of the range of speeds, the part that an even gain or loss from one end to the other makes up. */
const EVEN_GAIN = 0.75;

/** The boat gains or loses way all along: no part of this is steady, however little it changes. */
function gathersWay({ speed }: OverGround, { from, to }: Span): boolean {
  const speeds = speed.subarray(from, to + 1);
  const range = rangeOf(speeds);
  return range > STEADY_SPEED && Math.abs(slopeOf(speeds)) * (to - from) > EVEN_GAIN * range;
}

/** The longest part of a span that is not taken; empty (to before from) where all is. */
function longestFree(taken: Uint8Array, { from, to }: Span): Span {
  let longest: Span = { from, to: from - 1 };
  let start = from;
  for (let at = from; at <= to + 1; at++) {
    if (at <= to && taken[at] === 0) continue;
    if (at - 1 - start > longest.to - longest.from) longest = { from: start, to: at - 1 };
    start = at + 1;
  }
  return longest;
}

/** Without what still settles at its ends: the outer half of the range about the middle. */
function trimmed({ speed, headingDeg }: OverGround, noise: number, { from, to }: Span): Span {
  if (to < from) return { from, to };
  const middleSpeed = median(speed.slice(from, to + 1));
  const middleHeading = median(headingDeg.slice(from, to + 1));
  const range = steadyRange(middleSpeed, noise);
  const settled = (at: number) =>
    Math.abs(speed[at]! - middleSpeed) <= range.speed / 4 &&
    Math.abs(headingDeg[at]! - middleHeading) <= range.headingDeg / 4;
  let [start, end] = [from, to];
  while (start < end && !settled(start)) start++;
  while (end > start && !settled(end)) end--;
  return { from: start, to: end };
}

function median(values: Float64Array): number {
  return values.sort()[values.length >> 1]!;
}
