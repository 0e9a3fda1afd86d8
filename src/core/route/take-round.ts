import type { Problem, Result } from '../units/result.ts';
import { chartable, legBetween } from './distance.ts';
import type { LatLon } from './shapes.ts';
import { cornersOf, levelsOf, type Turning } from './take-round-corners.ts';
import { type CloseEnd, type CostOptions, clearTrack, trackCost } from './take-round-cost.ts';
import {
  type Obstacles,
  obstaclesOf,
  type Place,
  partsAt,
  partsNear,
  placeOf,
  roomAt,
  withBeaches,
} from './take-round-obstacles.ts';
import { cheapestWay } from './take-round-search.ts';
import { taut } from './take-round-taut.ts';
import { insideWaters, type Waters, zonesAlong } from './waters.ts';

export interface RoundChoice {
  /** Distance to keep off land, shoals and keep-outs, m, `LEAST_CLEARANCE` to `MOST_CLEARANCE`. */
  readonly clearance: number;
  /** ISO 8601; keep-outs out of season then are sailed through. Absent: all are in season. */
  readonly departure?: string | undefined;
}

/** A safe track between two places. */
export interface RoundTrack {
  /** Places to turn at in between; none where the straight track is as good. */
  readonly via: readonly LatLon[];
  /** m along the track */
  readonly distance: number;
  /** Distance kept everywhere, m: `clearance`, or less where the water or an end leaves no more. */
  readonly kept: number;
  /** It keeps `clearance` all along, but for what the two ends themselves do not allow. */
  readonly clear: boolean;
  /** Shoals without a way round that it crosses. */
  readonly shoals: readonly string[];
}

/** m */
const LEAST_CLEARANCE = 5;
const MOST_CLEARANCE = 1000;
/** Ends nearer to land than this, m, count as on it; nothing is passed nearer. */
const TOUCHING = 1;
/** Corners, and straight tracks looked at for one leg, before a search is given up: some tenths of a second. */
const MOST_CORNERS = 3000;
const MOST_TRACKS = 30_000;
/** Tried in turn on detailed waters; all but the first also leave out turns that seldom help. */
const HURRIES = [1, 1.0001, 1.05];

/**
 * Shortest track between two places that keeps a distance from land, shoals and keep-outs in season. Where the water
 * is narrower it keeps as much as there is; within twice the clearance of an end that lies nearer itself, a quarter of
 * the distance from that end is enough. Ways are searched over corners of the shore (visibility graph), first of the
 * shores in the way, then of those the way found meets, until it meets none. To about half the clearance per corner
 * longer than the shortest possible. Problems name `from` or `to`.
 */
export function takeRound(waters: Waters, from: LatLon, to: LatLon, choice: RoundChoice): Result<RoundTrack> {
  const clearance = Math.min(Math.max(choice.clearance, LEAST_CLEARANCE), MOST_CLEARANCE);
  if (!chartable(from)) return refused('too-far-north', 'from');
  if (!chartable(to)) return refused('too-far-north', 'to');
  const about = { lat: (from.lat + to.lat) / 2, lon: from.lon };
  const everything = obstaclesOf(waters, about, choice.departure);
  const ends = [placeOf(everything, from), placeOf(everything, to)] as const;
  const obstacles = withBeaches(everything, ends);
  const problems = [...endProblems(obstacles, from, ends[0], 'from'), ...endProblems(obstacles, to, ends[1], 'to')];
  if (problems.length > 0) return { ok: false, problems };
  const close: CloseEnd[] = ends.map((end) => ({ ...end, room: roomAt(obstacles, end, clearance) }));
  const levels = levelsOf(clearance);
  const least = Math.min(TOUCHING, ...close.map(({ room }) => room)) * 0.9;
  const options: CostOptions = { levels, least, ends: close };
  const strict = wayRound(obstacles, ends, { ...options, strict: true });
  const none = !strict.ok && strict.problems[0]?.code === 'no-way';
  const found = none ? wayRound(obstacles, ends, options) : strict;
  if (!found.ok) return found;
  const places = pulled(obstacles, found.value, options);
  const track = [from, ...places.slice(1, -1).map((place) => onChart(obstacles, place)), to];
  return { ok: true, value: judged(obstacles, track, places, options) };
}

function endProblems(obstacles: Obstacles, point: LatLon, place: Place, path: string): Problem[] {
  if (!insideWaters(obstacles.waters, point)) return [problem('outside-waters', path)];
  const { zones, zoneOfPart } = obstacles.waters;
  const hard = partsAt(obstacles, place).filter((part) => obstacles.bars[part] === 'hard');
  const kinds = hard.map((part) => zones[zoneOfPart[part]!]!.kind);
  if (kinds.includes('land')) return [problem('on-land', path)];
  if (kinds.includes('keep-out')) return [problem('in-keep-out', path)];
  return roomAt(obstacles, place, TOUCHING, 'hard') < TOUCHING ? [problem('too-near', path, TOUCHING)] : [];
}

/** Shortest way of its kind: as it is, or in a hurry where that would take too long. */
function wayRound(obstacles: Obstacles, ends: readonly [Place, Place], options: CostOptions): Result<Place[]> {
  const [from, to] = ends;
  if (clearTrack(trackCost(obstacles, from, to, options), from, to)) return { ok: true, value: [from, to] };
  for (const hurry of HURRIES) {
    const found = searched(obstacles, ends, options, hurry);
    if (found !== 'too-many') return found ? { ok: true, value: found } : refused('no-way', '');
  }
  return refused('too-detailed', '', MOST_TRACKS);
}

/** Searches again with the shores that the way found so far meets, until it meets none but those already counted. */
function searched(
  obstacles: Obstacles,
  [from, to]: readonly [Place, Place],
  options: CostOptions,
  hurry: number,
): Place[] | 'too-many' | undefined {
  const counted = new Uint8Array(obstacles.bars.length);
  const partial = { ...options, counted };
  const places: (Place | Turning)[] = [from, to];
  let way: Place[] = places;
  let tracks = 0;
  // What is barred by some shores stays so with more of them.
  const barred = new Set<number>();
  const cost = (a: number, b: number): number | undefined => {
    const key = Math.min(a, b) * MOST_CORNERS + Math.max(a, b);
    if (barred.has(key)) return Infinity;
    if (++tracks > MOST_TRACKS) return undefined;
    const price = trackCost(obstacles, places[a]!, places[b]!, partial);
    if (price === Infinity) barred.add(key);
    return price;
  };
  const helps = (before: number, a: number, b: number): boolean => taut(places[before], places[a]!, places[b]!);
  for (;;) {
    const met = shoresMet(obstacles, way, options, counted);
    if (met.length === 0) return [...way];
    for (const part of met) {
      counted[part] = 1;
      places.push(...cornersOf(obstacles, part, options.levels));
    }
    if (places.length > MOST_CORNERS) return 'too-many';
    const found = cheapestWay(places, cost, hurry === 1 ? {} : { hurry, helps });
    if (found === 'too-many') return found;
    if (!found) return undefined;
    way = found.places.map((at) => places[at]!);
  }
}

/** The same way without the turns that it can do without, for the same price or less. */
function pulled(obstacles: Obstacles, way: readonly Place[], options: CostOptions): Place[] {
  const price = (a: Place, b: Place): number => trackCost(obstacles, a, b, options);
  const left = [...way];
  for (let i = 1; i + 1 < left.length; ) {
    const [a, b, c] = [left[i - 1]!, left[i]!, left[i + 1]!];
    if (price(a, c) <= price(a, b) + price(b, c) + 1e-6) {
      left.splice(i, 1);
      i = Math.max(1, i - 1);
    } else i++;
  }
  return left;
}

/** Polygons not yet counted that make a way dearer than its length. */
function shoresMet(obstacles: Obstacles, way: readonly Place[], options: CostOptions, counted: Uint8Array): number[] {
  const met: number[] = [];
  for (let i = 1; i < way.length; i++) {
    const [a, b] = [way[i - 1]!, way[i]!];
    for (const part of partsNear(obstacles, a, b, options.levels[0]!)) {
      if (counted[part] || met.includes(part)) continue;
      const only = new Uint8Array(counted.length);
      only[part] = 1;
      if (!clearTrack(trackCost(obstacles, a, b, { ...options, counted: only }), a, b)) met.push(part);
    }
  }
  return met;
}

function judged(
  obstacles: Obstacles,
  track: readonly LatLon[],
  places: readonly Place[],
  options: CostOptions,
): RoundTrack {
  const { waters } = obstacles;
  const shoals = new Set<string>();
  let distance = 0;
  let clear = true;
  let kept = options.levels[0]!;
  for (let i = 1; i < track.length; i++) {
    const [a, b] = [places[i - 1]!, places[i]!];
    distance += legBetween(track[i - 1]!, track[i]!).distance;
    clear &&= trackCost(obstacles, a, b, { ...options, strict: true }) < Infinity;
    kept = Math.min(kept, roomAlong(obstacles, a, b, kept));
    for (const { kind, zone } of zonesAlong(waters, track[i - 1]!, track[i]!).crossings) {
      if (kind === 'shoal') shoals.add(zone.name);
    }
  }
  return { via: track.slice(1, -1), distance, kept, clear, shoals: [...shoals] };
}

/** Least distance from any obstacle along a straight track, m, to 5 cm. */
function roomAlong(obstacles: Obstacles, from: Place, to: Place, most: number): number {
  const free = (room: number): boolean => {
    return trackCost(obstacles, from, to, { levels: [room], least: 0, ends: [], strict: true }) < Infinity;
  };
  if (free(most)) return most;
  let low = 0;
  let high = most;
  while (high - low > 0.05) {
    const middle = (low + high) / 2;
    if (free(middle)) low = middle;
    else high = middle;
  }
  return low;
}

/** Seven decimals are a centimetre. */
function onChart({ kx, ky }: Obstacles, { x, y }: Place): LatLon {
  const lon = x / kx;
  const within = lon > 180 ? lon - 360 : lon < -180 ? lon + 360 : lon;
  return { lat: Math.round((y / ky) * 1e7) / 1e7, lon: Math.round(within * 1e7) / 1e7 };
}

function problem(code: string, path: string, limit?: number): Problem {
  return { code, path, message: MESSAGES[code]!, ...(limit !== undefined && { limit }) };
}

function refused(code: string, path: string, limit?: number): { ok: false; problems: Problem[] } {
  return { ok: false, problems: [problem(code, path, limit)] };
}

const MESSAGES: Record<string, string> = {
  'on-land': 'This place lies on land',
  'in-keep-out': 'This place lies in an area to keep out of',
  'too-near': 'This place lies against the shore or the edge of a keep-out area',
  'outside-waters': 'This place lies outside the known waters',
  'too-far-north': 'This place lies beyond 85 degrees north or south',
  'no-way': 'There is no way by water',
  'too-detailed': 'These waters are too detailed to search at this clearance',
};
