import type { Track, TrackNote, TrackNoteCode, TrackPoint } from '../track/shapes.ts';
import { HOUR, MINUTE } from '../units/convert.ts';

/** A track while its file is read: points in the order of the file. */
export interface RawTrack {
  name: string;
  /** How many segments were opened so far. */
  segments: number;
  readonly points: RawPoint[];
  readonly faults: Map<TrackNoteCode, { count: number; readonly line: number }>;
}

interface RawPoint extends TrackPoint {
  readonly segment: number;
  readonly line: number;
}

/** What stands in the file for one point. */
export interface PointText {
  readonly lat?: string;
  readonly lon?: string;
  readonly time?: string;
  readonly line: number;
}

export function emptyTrack(): RawTrack {
  return { name: '', segments: 0, points: [], faults: new Map() };
}

/** Adds a point to its track, or what keeps it out. */
export function addPoint(track: RawTrack, { lat, lon, time, line }: PointText): void {
  const at = time === undefined || time.trim() === '' ? undefined : secondsOf(time);
  const place = { lat: degrees(lat, 90), lon: degrees(lon, 180) };
  if (at === undefined) fault(track, 'no-time', line);
  else if (Number.isNaN(at)) fault(track, 'bad-time', line);
  else if (Number.isNaN(place.lat) || Number.isNaN(place.lon)) fault(track, 'bad-place', line);
  else track.points.push({ time: at, ...place, segment: track.segments, line });
}

function fault(track: RawTrack, code: TrackNoteCode, line: number): void {
  const before = track.faults.get(code);
  if (before) before.count++;
  else track.faults.set(code, { count: 1, line });
}

const DECIMAL = /^\s*[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d{1,2})?\s*$/;

function degrees(text: string | undefined, most: number): number {
  const value = text !== undefined && DECIMAL.test(text) ? Number(text) : Number.NaN;
  return Math.abs(value) <= most ? value : Number.NaN;
}

/** xsd:dateTime with seconds; GPX means UTC where no zone is given. */
const DATE_TIME = /^\s*(\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(?:\.\d{1,9})?)(Z|[+-]\d\d:\d\d)?\s*$/;

function secondsOf(text: string): number {
  const [, clock, zone = 'Z'] = DATE_TIME.exec(text) ?? [];
  return clock === undefined ? Number.NaN : Date.parse(clock + zone) / 1000;
}

/** Clocks of recorder and reader may differ by this much. */
const AHEAD = 5 * MINUTE;
/** A recording this long is several outings, or was left running ashore. */
const LONG = 12 * HOUR;

/** The track in order of time with each time once, and what was found amiss. No track where no point is left. */
export function trackOfPoints(raw: RawTrack, otherName: string, now: number): { track?: Track; notes: TrackNote[] } {
  const name = raw.name.replace(/[\p{Cc}\p{Cf}\s]+/gu, ' ').trim() || otherName;
  const notes: TrackNote[] = [];
  const note = (code: TrackNoteCode, count: number, message: string, more: Partial<TrackNote> = {}) => {
    if (count > 0) notes.push({ code, track: name, count, message, ...more });
  };
  for (const [code, { count, line }] of raw.faults) {
    note(code, count, `${points(count)} ${FAULTS[code] ?? ''}, first at line ${line}, left out`, { line });
  }
  if (raw.points.length === 0) {
    const untimed = raw.faults.has('no-time');
    const message = untimed ? 'No point says when it was recorded' : 'It has no usable point';
    note(untimed ? 'untimed-track' : 'empty-track', 1, message);
    return { notes };
  }

  const { sorted, early } = inOrder(raw.points);
  const first = early[0];
  note('out-of-order', early.length, `${points(early.length)} earlier than the one before, put in order`, {
    line: first?.line,
    at: first?.time,
  });
  const kept = sorted.filter(({ time }, at) => at === 0 || time > sorted[at - 1]!.time);
  const again = sorted.find(({ time }, at) => at > 0 && time === sorted[at - 1]!.time);
  const repeats = sorted.length - kept.length;
  note('repeated-time', repeats, `${points(repeats)} with the time of the one before, left out`, { at: again?.time });

  const future = kept.filter(({ time }) => time > now + AHEAD);
  const ahead = future[0]?.time;
  note('future', future.length, `${points(future.length)} in the future, by the clock here`, { at: ahead });
  const seconds = kept.at(-1)!.time - kept[0]!.time;
  note('long', seconds > LONG ? 1 : 0, `It lasts ${Math.round(seconds / HOUR)} hours`, { seconds });

  const breaks = kept.flatMap(({ segment }, at) => (at > 0 && segment !== kept[at - 1]!.segment ? [at] : []));
  const plain = kept.map(({ time, lat, lon }): TrackPoint => ({ time, lat, lon }));
  return { track: { name, points: plain, breaks }, notes };
}

const FAULTS: Partial<Record<TrackNoteCode, string>> = {
  'no-time': 'without a time',
  'bad-time': 'with a time that is none',
  'bad-place': 'without a place on Earth',
};

function points(count: number): string {
  return count === 1 ? '1 point' : `${count} points`;
}

function inOrder(all: readonly RawPoint[]): { sorted: readonly RawPoint[]; early: readonly RawPoint[] } {
  const early = all.filter(({ time }, at) => at > 0 && time < all[at - 1]!.time);
  // Sorting is stable, so of equal times the first in the file stays first.
  return { sorted: early.length > 0 ? [...all].sort((a, b) => a.time - b.time) : all, early };
}
