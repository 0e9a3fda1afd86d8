import type { Track, TrackNote, TrackNoteCode, TrackPoint } from '../track/shapes.ts';
import { HOUR, MINUTE } from '../units/convert.ts';

/** A track while its file is read: points in the order of the file, as rows of figures, which cost little to keep. */
export interface RawTrack {
  name: string;
  /** How many segments were opened so far. */
  segments: number;
  readonly time: number[];
  readonly lat: number[];
  readonly lon: number[];
  readonly segment: number[];
  readonly line: number[];
  readonly faults: Map<TrackNoteCode, { count: number; readonly line: number }>;
}

/** What stands in the file for one point. */
export interface PointText {
  readonly lat?: string;
  readonly lon?: string;
  readonly time?: string;
  readonly line: number;
}

export function emptyTrack(): RawTrack {
  return { name: '', segments: 0, time: [], lat: [], lon: [], segment: [], line: [], faults: new Map() };
}

/** Adds a point to its track, or what keeps it out. */
export function addPoint(track: RawTrack, text: PointText): void {
  const { line } = text;
  const time = text.time === undefined || text.time.trim() === '' ? undefined : secondsOf(text.time);
  const lat = degrees(text.lat, 90);
  const lon = degrees(text.lon, 180);
  if (time === undefined) fault(track, 'no-time', line);
  else if (Number.isNaN(time)) fault(track, 'bad-time', line);
  else if (Number.isNaN(lat) || Number.isNaN(lon)) fault(track, 'bad-place', line);
  else {
    track.time.push(time);
    track.lat.push(lat);
    track.lon.push(lon);
    track.segment.push(track.segments);
    track.line.push(line);
  }
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
  if (raw.time.length === 0) {
    const untimed = raw.faults.has('no-time');
    const message = untimed ? 'No point says when it was recorded' : 'It has no usable point';
    note(untimed ? 'untimed-track' : 'empty-track', 1, message);
    return { notes };
  }

  const { time } = raw;
  const early = time.flatMap((at, index) => (index > 0 && at < time[index - 1]! ? [index] : []));
  const first = early[0];
  if (first !== undefined) {
    const message = `${points(early.length)} earlier than the one before, put in order`;
    note('out-of-order', early.length, message, { line: raw.line[first], at: time[first] });
  }
  const found: TrackPoint[] = [];
  const breaks: number[] = [];
  const again: number[] = [];
  let segment = 0;
  for (const index of inOrder(time, early.length > 0)) {
    const at = time[index]!;
    if (at === found.at(-1)?.time) {
      again.push(at);
      continue;
    }
    if (found.length > 0 && raw.segment[index] !== segment) breaks.push(found.length);
    segment = raw.segment[index]!;
    found.push({ time: at, lat: raw.lat[index]!, lon: raw.lon[index]! });
  }
  note('repeated-time', again.length, `${points(again.length)} with the time of the one before, left out`, {
    at: again[0],
  });

  const ahead = found.filter((point) => point.time > now + AHEAD);
  note('future', ahead.length, `${points(ahead.length)} in the future, by the clock here`, { at: ahead[0]?.time });
  const seconds = found.at(-1)!.time - found[0]!.time;
  note('long', seconds > LONG ? 1 : 0, `It lasts ${Math.round(seconds / HOUR)} hours`, { seconds });
  return { track: { name, points: found, breaks }, notes };
}

const FAULTS: Partial<Record<TrackNoteCode, string>> = {
  'no-time': 'without a time',
  'bad-time': 'with a time that is none',
  'bad-place': 'without a place on Earth',
};

function points(count: number): string {
  return count === 1 ? '1 point' : `${count} points`;
}

/** Indices in order of time. Sorting is stable, so of equal times the first in the file stays first. */
function inOrder(time: readonly number[], mixed: boolean): Iterable<number> {
  return mixed ? [...time.keys()].sort((a, b) => time[a]! - time[b]!) : time.keys();
}
