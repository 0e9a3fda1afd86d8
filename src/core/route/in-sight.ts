import type { LatLon } from './shapes.ts';
import { type Waters, zonesAlong } from './waters.ts';

/** Lines kept for each waters; a planner asks for the same ones again with every plan. */
const KEPT = 20_000;

/** By the place at the far end, then latitude and longitude of the near one. */
type Lines = Map<LatLon, Map<number, Map<number, boolean>>>;

const known = new WeakMap<Waters, { count: number; readonly lines: Lines }>();

/**
 * Whether the straight line between two places meets land of the local waters; without waters nothing is known to. Lines
 * to a place `to` that is one and the same object are worked out once.
 */
export function meetsLand(waters: Waters | undefined, from: LatLon, to: LatLon): boolean {
  if (!waters) return false;
  let kept = known.get(waters);
  if (!kept || kept.count >= KEPT) {
    kept = { count: 0, lines: new Map() };
    known.set(waters, kept);
  }
  let near = kept.lines.get(to);
  if (!near) {
    near = new Map();
    kept.lines.set(to, near);
  }
  let along = near.get(from.lat);
  if (!along) {
    along = new Map();
    near.set(from.lat, along);
  }
  let meets = along.get(from.lon);
  if (meets === undefined) {
    meets = zonesAlong(waters, from, to).crossings.some(({ kind }) => kind === 'land');
    along.set(from.lon, meets);
    kept.count++;
  }
  return meets;
}
