import { DEGREE, HOUR, NAUTICAL_MILE } from '../units/convert.ts';
import { secondsOf } from './clock.ts';
import type { Stream, StreamPlace, Tide } from './shapes.ts';
import { rateOfRange } from './tidal-rules.ts';
import { FROM_HIGH_WATER } from './tide-height.ts';

/** WGS 84 degrees. */
interface Spot {
  readonly lat: number;
  readonly lon: number;
}

/** Streams of the places on the day of a tide, ready for many questions. */
export interface StreamTable {
  readonly places: readonly PlaceToday[];
  /** s since 1970 */
  readonly highWater: number;
  /** The tide's springs do not exceed its neaps in range, so no rate can be told. */
  readonly badRanges: boolean;
}

interface PlaceToday {
  readonly place: StreamPlace;
  /** One an hour from `place.firstHour` on, at the range of the day. */
  readonly hours: readonly Stream[];
}

/** Places that may speak for a spot: the nearest in sight over water first. Holds at all times; make it once per spot. */
export type Reach =
  | { readonly reached: true; readonly near: readonly InReach[] }
  | { readonly reached: false; readonly why: 'no-places' | 'too-far' | 'behind-land' | 'no-such-place' };

interface InReach {
  readonly today: PlaceToday;
  readonly distance: number;
  /** Names of the other places in reach. */
  readonly others: readonly string[];
}

export type StreamFound =
  | {
      readonly known: true;
      readonly stream: Stream;
      /** Name of the place it was taken from, and how far that is, m. */
      readonly place: string;
      readonly distance: number;
      /** Other places as near, whose stream hurts less on this course, or is not known at this hour. */
      readonly insteadOf: readonly string[];
      /** Where it is only guessed: all that may run there about this hour, for what else than the way a stream can do. */
      readonly mayRun?: readonly Stream[];
    }
  | StreamUnknown;

export interface StreamUnknown {
  readonly known: false;
  /** `bad-ranges`: springs of the tide not above neaps. */
  readonly why:
    | 'no-places'
    | 'too-far'
    | 'behind-land'
    | 'no-such-place'
    | 'outside-hours'
    | 'far-from-high-water'
    | 'bad-ranges';
  /** The place whose hours end, and the instants, s since 1970, between which it speaks. */
  readonly place?: string;
  readonly from?: number;
  readonly to?: number;
}

/** A place says nothing of water further off than this, m (common practice, no source). */
export const STREAM_REACH = 5 * NAUTICAL_MILE;
/** Places up to this many times as far as the nearest are in doubt with it (common practice, no source). */
const DOUBT = 2;
/** A stream spread by rule out of its strongest runs may come this many hours earlier or later (our choice). */
const EARLY_OR_LATE = 1;

/** Streams at the range of the day: between neaps and springs and beyond, never below zero. */
export function streamTable(places: readonly StreamPlace[], tide: Tide): StreamTable {
  return {
    places: places.map((place) => ({
      place,
      hours: place.springs.map((spring, i) => atRange(place.neaps[i] ?? spring, spring, tide)),
    })),
    highWater: secondsOf(tide.highWater),
    badRanges: !(tide.meanSpringRange > tide.meanNeapRange),
  };
}

/**
 * The places that speak for a spot. Streams are not interpolated between places, which would carry them across land and
 * average them down in narrows: the nearest place with no land between counts, and with it every other such place not
 * more than twice as far. `crossesLand` tells whether the straight line between two spots meets land.
 */
export function reachOf(table: StreamTable, spot: Spot, crossesLand: (from: Spot, to: Spot) => boolean): Reach {
  if (table.places.length === 0) return { reached: false, why: 'no-places' };
  const within = table.places
    .map((today) => ({ today, distance: roughDistance(spot, today.place) }))
    .filter(({ distance }) => distance <= STREAM_REACH)
    .sort((a, b) => a.distance - b.distance);
  if (within.length === 0) return { reached: false, why: 'too-far' };
  const near: typeof within = [];
  for (const other of within) {
    // Lines of sight cost, so none is drawn to places that no longer count.
    if (near[0] && other.distance > DOUBT * near[0].distance) break;
    if (!crossesLand(spot, other.today.place)) near.push(other);
  }
  if (near.length === 0) return { reached: false, why: 'behind-land' };
  return { reached: true, near: withOthers(near) };
}

function withOthers(near: readonly Omit<InReach, 'others'>[]): readonly InReach[] {
  return near.map((one) => ({
    ...one,
    others: near.flatMap((other) => (other === one ? [] : [other.today.place.name])),
  }));
}

/** The place that somebody picked for a spot, however far; of several with that name all count. */
export function reachOfNamed(table: StreamTable, spot: Spot, name: string): Reach {
  const near = table.places
    .filter(({ place }) => place.name === name)
    .map((today) => ({ today, distance: roughDistance(spot, today.place) }))
    .sort((a, b) => a.distance - b.distance);
  return near.length > 0 ? { reached: true, near: withOthers(near) } : { reached: false, why: 'no-such-place' };
}

/**
 * Stream for a boat on a course over the ground at an instant, s since 1970: of the places in reach the one that hurts
 * more, which is the one that runs most against the course, or least with it. Along the course it is continuous in time.
 * Unknown outside the hours of the nearest place and beyond 13 h from the high water that its hours count from.
 */
export function streamAt(
  table: StreamTable,
  reach: Reach,
  course: { seconds: number; courseDeg: number },
): StreamFound {
  const { seconds, courseDeg } = course;
  if (!reach.reached) return { known: false, why: reach.why };
  if (table.badRanges) return { known: false, why: 'bad-ranges' };
  const { highWater } = table;
  if (Math.abs(seconds - highWater) > FROM_HIGH_WATER) {
    const [from, to] = [highWater - FROM_HIGH_WATER, highWater + FROM_HIGH_WATER];
    return { known: false, why: 'far-from-high-water', from, to };
  }
  const hour = (seconds - highWater) / HOUR;
  const { near } = reach;
  let worst = near[0]!;
  let found = then(worst.today, hour, courseDeg);
  if (!found) return outsideHours(worst.today.place, highWater);
  if (near.length > 1) {
    let least = along(found, courseDeg);
    for (let i = 1; i < near.length; i++) {
      const stream = then(near[i]!.today, hour, courseDeg);
      if (!stream) continue;
      const here = along(stream, courseDeg);
      if (here >= least) continue;
      least = here;
      found = stream;
      worst = near[i]!;
    }
  }
  const { today, distance, others } = worst;
  const place = today.place.name;
  const told = { known: true, stream: found, place, distance, insteadOf: others } as const;
  return today.place.spread ? { ...told, mayRun: aboutHour(today, hour) } : told;
}

/** The stream of a place at an hour; of one whose hour is only guessed, the worst for a course within the doubt. */
function then(today: PlaceToday, hour: number, courseDeg: number): Stream | undefined {
  return today.place.spread ? foulOf(aboutHour(today, hour), courseDeg) : atHour(today, hour);
}

/** Streams within the doubt of the hour of one that is only guessed; none where nothing is told of that hour. */
function aboutHour(today: PlaceToday, hour: number): readonly Stream[] {
  if (!atHour(today, hour)) return [];
  return [0, -EARLY_OR_LATE, EARLY_OR_LATE].flatMap((later) => atHour(today, hour + later) ?? []);
}

/** The worst of them; what of it would help does not count. */
function foulOf(streams: readonly Stream[], courseDeg: number): Stream | undefined {
  if (streams.length === 0) return undefined;
  const worst = streams.reduce((a, b) => (along(b, courseDeg) < along(a, courseDeg) ? b : a));
  if (along(worst, courseDeg) <= 0) return worst;
  const across = worst.rate * Math.sin((worst.setDeg - courseDeg) * DEGREE);
  return { setDeg: (courseDeg + (across < 0 ? 270 : 90)) % 360, rate: Math.abs(across) };
}

/** Rate along a course, m/s. */
function along({ setDeg, rate }: Stream, courseDeg: number): number {
  return rate * Math.cos((setDeg - courseDeg) * DEGREE);
}

function outsideHours(place: StreamPlace, highWater: number): StreamUnknown {
  const from = highWater + place.firstHour * HOUR;
  return { known: false, why: 'outside-hours', place: place.name, from, to: from + (place.springs.length - 1) * HOUR };
}

function atHour({ place, hours }: PlaceToday, hour: number): Stream | undefined {
  const at = hour - place.firstHour;
  const before = Math.floor(at);
  const a = hours[before];
  if (!a) return undefined;
  return at === before ? a : hours[before + 1] && between(a, hours[before + 1]!, at - before);
}

function atRange(neap: Stream, spring: Stream, tide: Tide): Stream {
  const { range, meanNeapRange, meanSpringRange } = tide;
  const rate = rateOfRange(range, {
    neapRate: neap.rate,
    springRate: spring.rate,
    neapRange: meanNeapRange,
    springRange: meanSpringRange,
  });
  if (rate === undefined) return spring;
  const share = Math.min(1, Math.max(0, (range - meanNeapRange) / (meanSpringRange - meanNeapRange)));
  return { setDeg: between(neap, spring, share).setDeg, rate };
}

/**
 * A rotary stream, which turns by up to 90 degrees to the next hour, keeps its rate while it turns; a reversing one runs
 * through slack, as the mean of the vectors does.
 */
function between(a: Stream, b: Stream, share: number): Stream {
  if (a.rate === 0) return { setDeg: b.setDeg, rate: b.rate * share };
  if (b.rate === 0) return { setDeg: a.setDeg, rate: a.rate * (1 - share) };
  const turn = ((((b.setDeg - a.setDeg) % 360) + 540) % 360) - 180;
  if (Math.abs(turn) <= 90) {
    return { setDeg: (a.setDeg + turn * share + 360) % 360, rate: a.rate + (b.rate - a.rate) * share };
  }
  const [p, q] = [a.rate * (1 - share), b.rate * share];
  const east = p * Math.sin(a.setDeg * DEGREE) + q * Math.sin(b.setDeg * DEGREE);
  const north = p * Math.cos(a.setDeg * DEGREE) + q * Math.cos(b.setDeg * DEGREE);
  return { setDeg: (Math.atan2(east, north) / DEGREE + 360) % 360, rate: Math.hypot(east, north) };
}

/** m, on a sphere and a flat chart: to 1 % over the reach, for which place is nearer. */
function roughDistance(a: Spot, b: Spot): number {
  const east = (((b.lon - a.lon + 540) % 360) - 180) * Math.cos(((a.lat + b.lat) / 2) * DEGREE);
  return Math.hypot(east, b.lat - a.lat) * 60 * NAUTICAL_MILE;
}
