import type { LatLon } from './shapes.ts';
import { type Waters, zonesAlong } from './waters.ts';

/** Lines kept for each waters; a planner asks for the same ones again with every plan. */
const KEPT = 20_000;

const known = new WeakMap<Waters, Map<string, boolean>>();

/** Whether the straight line between two places meets land of the local waters; without waters nothing is known to. */
export function meetsLand(waters: Waters | undefined, from: LatLon, to: LatLon): boolean {
  if (!waters) return false;
  let lines = known.get(waters);
  if (!lines) {
    lines = new Map();
    known.set(waters, lines);
  }
  const key = `${from.lat} ${from.lon} ${to.lat} ${to.lon}`;
  let meets = lines.get(key);
  if (meets === undefined) {
    meets = zonesAlong(waters, from, to).crossings.some(({ kind }) => kind === 'land');
    if (lines.size >= KEPT) lines.clear();
    lines.set(key, meets);
  }
  return meets;
}
