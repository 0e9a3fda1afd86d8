import { chartable, interpolate, legBetween } from '../route/distance.ts';
import type { Track, TrackNote, TrackNoteCode, TrackPoint } from './shapes.ts';

/** Faster than any boat this tool is for, m/s: 58 kn (common practice, no source). */
const IMPLAUSIBLE_SPEED = 30;
/** Scatter of a fix that is no fault, m, and braking or turning that no small boat does, m/s2 (from memory). */
const SCATTER = 10;
const IMPLAUSIBLE_ACCELERATION = 10;
/** So many points that agree with each other are a place the boat was at, though it cannot have got there. */
const AGREEING = 5;
/** Recorders that thin out straight lines still write this often, s (common practice, no source). */
const SHORTEST_GAP = 20;
/** A gap is so many times the usual interval. */
const GAP_INTERVALS = 6;

export interface CleanTrack {
  readonly track: Track;
  readonly notes: readonly TrackNote[];
}

/**
 * The track without points where the boat cannot have been: beyond 85 degrees of latitude, reached at over 30 m/s, or
 * beside the line between their neighbours. It is interrupted where nothing was recorded for long, or where it goes on
 * elsewhere.
 */
export function cleanTrack(track: Track): CleanTrack {
  const notes: TrackNote[] = [];
  const note = (code: TrackNoteCode, count: number, first: number | undefined, message: string) => {
    if (first !== undefined) notes.push({ code, track: track.name, count, at: first, message });
  };
  const far = track.points.filter((point) => !chartable(point));
  note('beyond-latitude', far.length, far[0]?.time, `${points(far.length)} beyond 85 degrees of latitude, left out`);

  const { kept, left, moved } = withoutJumps(far.length > 0 ? track.points.filter(chartable) : track.points);
  const { smooth, spikes } = withoutSpikes(kept);
  const wild = [...left, ...spikes].sort((a, b) => a - b);
  note('jump', wild.length, wild[0], `${points(wild.length)} where the boat cannot have been, left out`);
  note('moved', moved.length, moved[0], `It goes on where the boat cannot have got to in time, ${times(moved.length)}`);

  const gaps = gapsOf(smooth);
  const ends = gaps.map((index) => smooth[index]!.time);
  if (gaps.length > 0) {
    const seconds = gaps.reduce((most, at) => Math.max(most, smooth[at]!.time - smooth[at - 1]!.time), 0);
    const message = `Nothing was recorded for up to ${Math.round(seconds)} s, ${times(gaps.length)}`;
    notes.push({ code: 'gap', track: track.name, count: gaps.length, at: ends[0], seconds, message });
  }
  const interruptions = [...track.breaks.map((index) => track.points[index]!.time), ...moved, ...ends];
  return { track: { name: track.name, points: smooth, breaks: indicesOf(interruptions, smooth) }, notes };
}

function points(count: number): string {
  return count === 1 ? '1 point' : `${count} points`;
}

function times(count: number): string {
  return count === 1 ? 'once' : `${count} times`;
}

function reachable(from: TrackPoint, to: TrackPoint): boolean {
  return legBetween(from, to).distance <= SCATTER + IMPLAUSIBLE_SPEED * (to.time - from.time);
}

/** Follows the place the boat was at; points elsewhere are left out, unless enough of them agree. */
function withoutJumps(all: readonly TrackPoint[]): { kept: TrackPoint[]; left: number[]; moved: number[] } {
  const kept: TrackPoint[] = [];
  const left: number[] = [];
  const moved: number[] = [];
  let elsewhere: TrackPoint[] = [];
  const leave = (dropped: readonly TrackPoint[]) => {
    for (const { time } of dropped) left.push(time);
  };
  for (const point of all) {
    const last = kept.at(-1);
    const lastElsewhere = elsewhere.at(-1);
    if (!last || reachable(last, point)) {
      kept.push(point);
      leave(elsewhere);
      elsewhere = [];
    } else if (lastElsewhere && reachable(lastElsewhere, point)) {
      elsewhere.push(point);
      if (elsewhere.length < AGREEING) continue;
      // A beginning too short to be believed itself was the fault.
      if (kept.length < AGREEING) leave(kept.splice(0));
      else moved.push(elsewhere[0]!.time);
      for (const agreed of elsewhere) kept.push(agreed);
      elsewhere = [];
    } else {
      leave(elsewhere);
      elsewhere = [point];
    }
  }
  leave(elsewhere);
  return { kept, left, moved };
}

/** Leaves out single points off the line between their neighbours by more than scatter and hard braking make. */
function withoutSpikes(all: readonly TrackPoint[]): { smooth: TrackPoint[]; spikes: number[] } {
  const smooth: TrackPoint[] = [];
  const spikes: number[] = [];
  all.forEach((point, index) => {
    const before = smooth.at(-1);
    const after = all[index + 1];
    // Where the neighbours do not agree either, the boat is found elsewhere.
    if (before && after && reachable(before, after)) {
      const since = point.time - before.time;
      const until = after.time - point.time;
      const off = SCATTER + (IMPLAUSIBLE_ACCELERATION / 2) * since * until;
      const between = interpolate(before, after, since / (since + until));
      if (legBetween(between, point).distance > off) {
        spikes.push(point.time);
        return;
      }
    }
    smooth.push(point);
  });
  return { smooth, spikes };
}

/** Indices of points that come long after the one before. */
function gapsOf(all: readonly TrackPoint[]): number[] {
  const intervals = all.slice(1).map(({ time }, index) => time - all[index]!.time);
  const usual = Float64Array.from(intervals).sort()[Math.floor(intervals.length / 2)] ?? 0;
  const long = Math.max(SHORTEST_GAP, GAP_INTERVALS * usual);
  return intervals.flatMap((seconds, index) => (seconds > long ? [index + 1] : []));
}

/** Of each time, the first point at or after it; those before all or after all points interrupt nothing. */
function indicesOf(interruptions: readonly number[], all: readonly TrackPoint[]): number[] {
  const sorted = [...interruptions].sort((a, b) => a - b);
  const found: number[] = [];
  let next = 0;
  all.forEach(({ time }, index) => {
    if (next >= sorted.length || sorted[next]! > time) return;
    while (next < sorted.length && sorted[next]! <= time) next++;
    if (index > 0) found.push(index);
  });
  return found;
}
