import { DEGREE } from '../units/convert.ts';
import { legBetween, lonBetween } from './distance.ts';
import type { ChartBox, EdgeTree } from './edge-tree.ts';
import { firstShore, type Ray } from './first-shore.ts';
import type { LatLon } from './shapes.ts';
import type { Waters } from './waters.ts';
import { holds } from './zone-meetings.ts';

/** Open water counts up to here, m (common practice, no source). */
export const LONGEST_FETCH = 50_000;

/** Rays either side of the wind and degrees between them: nine over 24 degrees (Shore Protection Manual 1984, from memory). */
const SIDE = 4;
const SPACING_DEG = 3;

/** Land is looked for up to here first, m, then twice as far, and so on: most rays end near by. */
const FIRST_REACH = 3000;

export interface Fetch {
  /** Mean of nine rays, m. */
  readonly length: number;
  /** The longest of them, m. */
  readonly longest: number;
  /** How many of the nine met no land, because they left what is known or reached 50 km. */
  readonly open: number;
  readonly at: LatLon;
  /** The place is land by the local waters: no wave reaches it, and no boat. */
  readonly onLand: boolean;
}

/** Mean length of rays to the upwind shore, m; nine at 3 degrees (Shore Protection Manual 1984, from memory). */
export function meanFetch(rays: readonly number[]): number {
  return rays.reduce((sum, ray) => sum + ray, 0) / rays.length;
}

/**
 * Effective fetch of rays spread evenly about the wind, m: weighted by cosine (Saville, Shore Protection Manual 1977, from
 * memory). Lower than the mean in narrow water, so no limit rests on it.
 */
export function effectiveFetch(rays: readonly number[], spacingDeg: number): number {
  let [weighted, weights] = [0, 0];
  for (const [i, ray] of rays.entries()) {
    const cos = Math.cos((i - (rays.length - 1) / 2) * spacingDeg * DEGREE);
    weighted += ray * cos * cos;
    weights += cos;
  }
  return weighted / weights;
}

/**
 * Open water upwind of a place, for a wind from `fromDeg` (true): nine rays to the land of the local waters, each at most
 * 50 km. A ray that leaves what is known counts as 50 km of open water, and so does every ray without waters.
 */
export function fetchAt(waters: Waters | undefined, at: LatLon, fromDeg: number): Fetch {
  const { bounds } = waters ?? {};
  const centre = bounds ? (bounds.minX + bounds.maxX) / 2 : 0;
  const x = centre + lonBetween(centre, at.lon);
  const known = bounds && x >= bounds.minX && x <= bounds.maxX && at.lat >= bounds.minY && at.lat <= bounds.maxY;
  if (!waters || !bounds || !known) {
    return { length: LONGEST_FETCH, longest: LONGEST_FETCH, open: 2 * SIDE + 1, at, onLand: false };
  }
  if (onLand(waters, x, at.lat)) return { length: 0, longest: 0, open: 0, at, onLand: true };

  const scale = metresPerDegree(at);
  const rays: Ray[] = [];
  for (let ray = -SIDE; ray <= SIDE; ray++) {
    const bearing = (fromDeg + ray * SPACING_DEG) * DEGREE;
    rays.push({ x, y: at.lat, dx: Math.sin(bearing) / scale.east, dy: Math.cos(bearing) / scale.north });
  }
  const exits = rays.map((ray) => Math.min(LONGEST_FETCH, exitOf(bounds, ray)));
  const farthest = Math.max(...exits);
  const lengths = exits.map(() => Infinity);
  for (let reach = FIRST_REACH; ; reach *= 2) {
    const land = landAcross(waters, rays, Math.min(reach, farthest));
    for (const [i, ray] of rays.entries()) {
      if (lengths[i]! < Infinity) continue;
      const within = Math.min(reach, exits[i]!);
      let nearest = within;
      for (const shore of land) nearest = firstShore(shore, ray, nearest);
      if (nearest < within) lengths[i] = nearest;
      else if (within === exits[i]) lengths[i] = LONGEST_FETCH;
    }
    if (lengths.every((length) => length < Infinity)) break;
  }
  return {
    length: meanFetch(lengths),
    longest: Math.max(...lengths),
    open: lengths.filter((length) => length === LONGEST_FETCH).length,
    at,
    onLand: false,
  };
}

/** Land whose box meets that of the fan of rays. */
function landAcross(waters: Waters, rays: readonly Ray[], reach: number): EdgeTree[] {
  const { x, y } = rays[0]!;
  const box = { minX: x, minY: y, maxX: x, maxY: y };
  for (const { dx, dy } of rays) {
    box.minX = Math.min(box.minX, x + dx * reach);
    box.maxX = Math.max(box.maxX, x + dx * reach);
    box.minY = Math.min(box.minY, y + dy * reach);
    box.maxY = Math.max(box.maxY, y + dy * reach);
  }
  const found = waters.index?.search(box.minX, box.minY, box.maxX, box.maxY, (part) => isLand(waters, part)) ?? [];
  return found.map((part) => waters.parts[part]!);
}

function isLand(waters: Waters, part: number): boolean {
  return waters.zones[waters.zoneOfPart[part]!]!.kind === 'land';
}

function onLand(waters: Waters, x: number, y: number): boolean {
  const found = waters.index?.search(x, y, x, y, (part) => isLand(waters, part)) ?? [];
  return found.some((part) => holds(waters.parts[part]!, x, y));
}

/** Distance along a ray to the edge of what is known, m. */
function exitOf(bounds: ChartBox, { x, y, dx, dy }: Ray): number {
  const acrossX = dx > 0 ? (bounds.maxX - x) / dx : dx < 0 ? (bounds.minX - x) / dx : Infinity;
  const acrossY = dy > 0 ? (bounds.maxY - y) / dy : dy < 0 ? (bounds.minY - y) / dy : Infinity;
  return Math.min(acrossX, acrossY);
}

/** At a place; over 50 km it changes by 1 % at 50 degrees of latitude, which is nothing for a fetch. */
function metresPerDegree({ lat, lon }: LatLon): { readonly east: number; readonly north: number } {
  const step = 0.01;
  const southward = lat > 0 ? -step : step;
  return {
    east: legBetween({ lat, lon }, { lat, lon: lon + step }).distance / step,
    north: legBetween({ lat, lon }, { lat: lat + southward, lon }).distance / step,
  };
}
