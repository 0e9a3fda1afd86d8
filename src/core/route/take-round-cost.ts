import { edgesNear, type Obstacles, type Place, partsNear } from './take-round-obstacles.ts';
import { addMeetings, holds } from './zone-meetings.ts';

/** An end of the track that lies nearer to the shore than the clearance, and how near, m. */
export interface CloseEnd extends Place {
  readonly room: number;
}

export interface CostOptions {
  /** Distances to keep, m, the wanted one first. */
  readonly levels: readonly number[];
  /** No track comes nearer to land and keep-outs than this, m. */
  readonly least: number;
  readonly ends: readonly CloseEnd[];
  /** Polygons that count, by their place among the parts; all if absent. */
  readonly counted?: Uint8Array;
  /** Whatever comes nearer than wanted, or crosses a shoal that no end lies on, is barred. */
  readonly strict?: boolean;
}

/** A metre too near costs as much as this many in the clear, four times more at each halving; a metre on a shoal most. */
const TOO_NEAR = 1000;
const NEARER = 4;
const ON_SHOAL = 1e8;
/** On a shoal where the track begins or ends. */
const ON_BEACH = 4;

/** A share of a track too small to be more than rounding. */
const NOTHING = 1e-9;

/** A span of shares of a track, 0 to 1. */
type Span = [number, number];

/**
 * Length of a straight track, m, plus a price for every metre nearer to an obstacle than wanted or on a shoal;
 * Infinity across land or a keep-out. Near an end that lies close itself a quarter of the distance from it is enough.
 */
export function trackCost(obstacles: Obstacles, from: Place, to: Place, options: CostOptions): number {
  const { levels, least, ends, counted, strict } = options;
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  if (length === 0) return 0;
  const wide = levels[0]!;
  const track = [from, to] as const;
  const parts = partsNear(obstacles, from, to, wide).filter((part) => !counted || counted[part]);
  // Most tracks run across something: found soonest by looking at what they touch.
  for (const part of parts) {
    if (obstacles.bars[part] !== 'hard') continue;
    const meets = (ax: number, ay: number, bx: number, by: number): boolean =>
      spanNear(track, length, [ax, ay, bx, by], least) !== undefined;
    if (edgesNear(obstacles, part, track, least, meets)) return Infinity;
  }
  let shoaly = 0;
  for (const part of parts) {
    const bar = obstacles.bars[part];
    if (bar === 'hard') continue;
    const share = shareInside(obstacles, part, track);
    if (strict && bar === 'soft' && share > 0) return Infinity;
    shoaly += share * (bar === 'soft' ? ON_SHOAL : ON_BEACH);
  }
  const near: Span[][] = levels.map(() => []);
  const excused = levels.map((level) =>
    ends.flatMap((end) => (end.room < level ? excuse(track, length, end, 2 * level) : [])),
  );
  let touched = false;
  for (const part of parts) {
    if (obstacles.bars[part] === 'beach') continue;
    const barred = edgesNear(obstacles, part, track, wide, (ax, ay, bx, by) => {
      for (let level = 0; level < levels.length; level++) {
        const span = spanNear(track, length, [ax, ay, bx, by], levels[level]!);
        if (!span) break;
        if (strict && excused[level]!.length === 0) return true;
        touched = true;
        near[level]!.push(span);
      }
      return false;
    });
    if (barred) return Infinity;
  }
  let cost = length * (1 + shoaly);
  if (!touched) return cost;
  let price = TOO_NEAR;
  for (const [index, spans] of near.entries()) {
    if (spans.length > 0) {
      const aside = excused[index]!;
      const share = covered([...spans, ...aside]) - covered(aside);
      if (strict && share > NOTHING) return Infinity;
      cost += price * length * share;
    }
    price *= NEARER;
  }
  return cost;
}

/** Whether a cost holds nothing but the length. */
export function clearTrack(cost: number, from: Place, to: Place): boolean {
  return cost <= Math.hypot(to.x - from.x, to.y - from.y) * (1 + 1e-9) + 1e-6;
}

type Edge = readonly [number, number, number, number];

/** Where along a track an edge is nearer than a distance: a straight line meets what surrounds an edge in one span. */
function spanNear([from, to]: readonly [Place, Place], length: number, [ax, ay, bx, by]: Edge, within: number) {
  const ux = (to.x - from.x) / length;
  const uy = (to.y - from.y) / length;
  let first = Infinity;
  let last = -Infinity;
  const round = (x: number, y: number): void => {
    const along = (x - from.x) * ux + (y - from.y) * uy;
    const off = (x - from.x) * uy - (y - from.y) * ux;
    const half2 = within * within - off * off;
    if (half2 <= 0) return;
    const half = Math.sqrt(half2);
    first = Math.min(first, along - half);
    last = Math.max(last, along + half);
  };
  round(ax, ay);
  round(bx, by);
  const s = Math.hypot(bx - ax, by - ay);
  if (s > 0) {
    const ex = (bx - ax) / s;
    const ey = (by - ay) / s;
    // Along and across the edge, as lines in the distance sailed.
    const inside = clipped(
      clipped([-Infinity, Infinity], (from.x - ax) * ex + (from.y - ay) * ey, ux * ex + uy * ey, [0, s]),
      (from.y - ay) * ex - (from.x - ax) * ey,
      uy * ex - ux * ey,
      [-within, within],
    );
    if (inside[0] < inside[1]) {
      first = Math.min(first, inside[0]);
      last = Math.max(last, inside[1]);
    }
  }
  first = Math.max(first, 0);
  last = Math.min(last, length);
  return first < last ? ([first / length, last / length] as Span) : undefined;
}

/** The part of a span where start + slope t lies between two values. */
function clipped([from, to]: Span, start: number, slope: number, [low, high]: Span): Span {
  if (Math.abs(slope) < 1e-12) return start > low && start < high ? [from, to] : [0, 0];
  const a = (low - start) / slope;
  const b = (high - start) / slope;
  return [Math.max(from, Math.min(a, b)), Math.min(to, Math.max(a, b))];
}

function excuse(track: readonly [Place, Place], length: number, { x, y }: Place, within: number): Span[] {
  const span = spanNear(track, length, [x, y, x, y], within);
  return span ? [span] : [];
}

/** Length of the union of spans. */
function covered(spans: readonly Span[]): number {
  let sum = 0;
  let reached = 0;
  for (const [from, to] of [...spans].sort((a, b) => a[0] - b[0])) {
    if (to <= reached) continue;
    sum += to - Math.max(from, reached);
    reached = to;
  }
  return sum;
}

function shareInside({ waters, kx, ky }: Obstacles, part: number, [from, to]: readonly [Place, Place]): number {
  const line = { x0: from.x / kx, y0: from.y / ky, x1: to.x / kx, y1: to.y / ky };
  const shore = waters.parts[part]!;
  const cuts = [0, 1];
  addMeetings(shore, line, cuts);
  cuts.sort((a, b) => a - b);
  let sum = 0;
  for (let i = 1; i < cuts.length; i++) {
    const span = cuts[i]! - cuts[i - 1]!;
    if (span < 1e-9) continue;
    const middle = (cuts[i]! + cuts[i - 1]!) / 2;
    if (holds(shore, line.x0 + (line.x1 - line.x0) * middle, line.y0 + (line.y1 - line.y0) * middle)) sum += span;
  }
  return sum;
}
