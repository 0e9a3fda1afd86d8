import { DEGREE, HOUR } from '../units/convert.ts';
import { secondsOf } from './clock.ts';
import type { Wind, WindAt } from './shapes.ts';

/** Entries further apart than this say nothing of what lies between, s (common practice, no source). */
const LONGEST_GAP = 12 * HOUR;

/** A forecast ready for many questions: entries in order of time, each time once. */
export interface WindTable {
  readonly entries: readonly TimedWind[];
}

interface TimedWind extends Wind {
  /** s since 1970 */
  readonly at: number;
  readonly gust?: number;
  /** Of the direction it comes from: how far east and north of one. */
  readonly east: number;
  readonly north: number;
}

export type WindFound =
  | {
      readonly known: true;
      readonly wind: Wind;
      /** m/s, not below the mean; undefined where neither entry tells one. */
      readonly gust?: number;
      /** Degrees by which the wind turns between the two entries: above 90 the direction between them is a guess. */
      readonly turnsDeg: number;
    }
  | WindUnknown;

export interface WindUnknown {
  readonly known: false;
  readonly why: 'no-entries' | 'before-first' | 'after-last' | 'gap';
  /** The last or next time, s since 1970, at which it is known; undefined without entries. */
  readonly until?: number;
}

/** Puts a forecast in order. Of several entries for one time the strongest stands. */
export function windTable(entries: readonly WindAt[]): WindTable {
  const sorted = entries
    .map(({ time, fromDeg, speed, gust }): TimedWind => {
      const [east, north] = [Math.sin(fromDeg * DEGREE), Math.cos(fromDeg * DEGREE)];
      return { at: secondsOf(time), fromDeg, speed, gust, east, north };
    })
    .sort((a, b) => a.at - b.at || b.speed - a.speed);
  return { entries: sorted.filter(({ at }, i) => i === 0 || at !== sorted[i - 1]!.at) };
}

/**
 * Wind of a forecast at an instant, s since 1970. Between entries the direction is that of the mean vector and the speed
 * is the mean of the speeds. The vector's own length would be less wherever the wind turns (two equal winds 90 degrees
 * apart give 71 % of either), so by the triangle inequality this never under-reads it. Unknown before the first entry,
 * after the last and in gaps of more than 12 h.
 */
export function windAt({ entries }: WindTable, seconds: number): WindFound {
  const last = entries[entries.length - 1];
  if (!last) return { known: false, why: 'no-entries' };
  const after = firstFrom(entries, seconds);
  if (after === entries.length) return { known: false, why: 'after-last', until: last.at };
  const b = entries[after]!;
  if (b.at === seconds) return found(b, b, 1);
  const a = entries[after - 1];
  if (!a) return { known: false, why: 'before-first', until: b.at };
  if (b.at - a.at > LONGEST_GAP) return { known: false, why: 'gap', until: b.at };
  return found(a, b, (seconds - a.at) / (b.at - a.at));
}

/**
 * Strongest mean wind and gust between two instants, both included; speed is linear between entries, so it lies at one
 * of them or at an end. Unknown where any of the span is.
 */
export function strongestWind(
  table: WindTable,
  from: number,
  to: number,
): { readonly known: true; readonly speed: number; readonly gust?: number } | WindUnknown {
  let speed = 0;
  let gust: number | undefined;
  for (const at of instants(table, from, to)) {
    const there = windAt(table, at);
    if (!there.known) return there;
    speed = Math.max(speed, there.wind.speed);
    if (there.gust !== undefined) gust = Math.max(gust ?? 0, there.gust);
  }
  return { known: true, speed, gust };
}

/**
 * Mean speed over the time before an instant, m/s, for waves that grew over it, and the share of that time, 0 to 1, that
 * the forecast covers. The part before the first entry and gaps do not count. Unknown where the wind of the instant is.
 */
export function meanWindBefore(
  table: WindTable,
  seconds: number,
  span: number,
): { readonly known: true; readonly speed: number; readonly covered: number } | WindUnknown {
  const now = windAt(table, seconds);
  if (!now.known) return now;
  let distance = 0;
  let time = 0;
  let before: { at: number; speed: number } | undefined;
  for (const at of instants(table, seconds - span, seconds)) {
    const there = windAt(table, at);
    const middle = before && windAt(table, (before.at + at) / 2);
    if (there.known && before && middle?.known) {
      distance += ((before.speed + there.wind.speed) / 2) * (at - before.at);
      time += at - before.at;
    }
    before = there.known ? { at, speed: there.wind.speed } : undefined;
  }
  if (time === 0) return { known: true, speed: now.wind.speed, covered: 0 };
  return { known: true, speed: distance / time, covered: Math.min(1, time / span) };
}

/** Index of the first entry not before an instant. */
function firstFrom(entries: readonly TimedWind[], seconds: number): number {
  let low = 0;
  let high = entries.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (entries[middle]!.at < seconds) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Both ends of a span and every entry within, each once, in order; a middle of every gap, so that gaps are noticed. */
function instants({ entries }: WindTable, from: number, to: number): number[] {
  const within = entries.filter(({ at }) => at > from && at < to).map(({ at }) => at);
  const ends = [from, ...within, to].filter((at, i, all) => i === 0 || at !== all[i - 1]);
  return ends.flatMap((at, i) => {
    const next = ends[i + 1];
    return next !== undefined && next - at > LONGEST_GAP ? [at, (at + next) / 2] : [at];
  });
}

function found(a: TimedWind, b: TimedWind, share: number): WindFound {
  const speed = a.speed + (b.speed - a.speed) * share;
  const gust = gustBetween(a, b, share);
  const turn = ((((b.fromDeg - a.fromDeg) % 360) + 540) % 360) - 180;
  return {
    known: true,
    wind: { fromDeg: directionBetween(a, b, share), speed },
    gust: gust === undefined ? undefined : Math.max(gust, speed),
    turnsDeg: a.speed === 0 || b.speed === 0 ? 0 : Math.abs(turn),
  };
}

function gustBetween(a: TimedWind, b: TimedWind, share: number): number | undefined {
  if (a.gust === undefined || b.gust === undefined) return share === 1 ? b.gust : (a.gust ?? b.gust);
  return a.gust + (b.gust - a.gust) * share;
}

/** Of the mean vector; where two opposed winds cancel, of the nearer entry. */
function directionBetween(a: TimedWind, b: TimedWind, share: number): number {
  if (share === 1) return b.fromDeg;
  const east = a.speed * (1 - share) * a.east + b.speed * share * b.east;
  const north = a.speed * (1 - share) * a.north + b.speed * share * b.north;
  if (Math.sqrt(east * east + north * north) < 1e-9 * (a.speed + b.speed)) return share < 0.5 ? a.fromDeg : b.fromDeg;
  if (a.speed + b.speed === 0) return share < 0.5 ? a.fromDeg : b.fromDeg;
  return (Math.atan2(east, north) / DEGREE + 360) % 360;
}
