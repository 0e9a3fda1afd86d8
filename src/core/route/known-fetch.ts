import type { LatLon } from './shapes.ts';
import type { Waters } from './waters.ts';
import { type Fetch, fetchAt } from './wind-fetch.ts';

/** Answers kept for each waters; a planner asks for the same ones again with every plan. */
const KEPT = 20_000;

const known = new WeakMap<Waters, Map<string, Fetch>>();

/** `fetchAt`, each answer worked out once. */
export function knownFetch(waters: Waters | undefined, at: LatLon, fromDeg: number): Fetch {
  if (!waters) return fetchAt(waters, at, fromDeg);
  let fetches = known.get(waters);
  if (!fetches) {
    fetches = new Map();
    known.set(waters, fetches);
  }
  const key = `${at.lat} ${at.lon} ${fromDeg}`;
  let fetch = fetches.get(key);
  if (!fetch) {
    fetch = fetchAt(waters, at, fromDeg);
    if (fetches.size >= KEPT) fetches.clear();
    fetches.set(key, fetch);
  }
  return fetch;
}

/** Directions asked whether a swell can come in from them. */
const ALL_ROUND = [0, 45, 90, 135, 180, 225, 270, 315] as const;

/** Whether any of eight directions, fanned out by nine rays, leaves the local waters without meeting land. */
export function openToSea(waters: Waters | undefined, at: LatLon): boolean {
  return ALL_ROUND.some((fromDeg) => knownFetch(waters, at, fromDeg).open > 0);
}
