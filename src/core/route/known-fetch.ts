import type { LatLon } from './shapes.ts';
import type { Waters } from './waters.ts';
import { type Fetch, fetchAt } from './wind-fetch.ts';

/** Places kept for each waters; a planner asks for the same ones again with every plan. */
const KEPT = 5000;

/** By latitude, longitude and direction: figures as keys are found faster than text made of them. */
type Known = Map<number, Map<number, Map<number, Fetch>>>;

const known = new WeakMap<Waters, { places: number; readonly fetches: Known }>();

/** `fetchAt`, each answer worked out once. */
export function knownFetch(waters: Waters | undefined, at: LatLon, fromDeg: number): Fetch {
  if (!waters) return fetchAt(waters, at, fromDeg);
  const here = fetchesAt(waters, at);
  let fetch = here.get(fromDeg);
  if (!fetch) {
    fetch = fetchAt(waters, at, fromDeg);
    here.set(fromDeg, fetch);
  }
  return fetch;
}

function fetchesAt(waters: Waters, { lat, lon }: LatLon): Map<number, Fetch> {
  let kept = known.get(waters);
  if (!kept || kept.places >= KEPT) {
    kept = { places: 0, fetches: new Map() };
    known.set(waters, kept);
  }
  let along = kept.fetches.get(lat);
  if (!along) {
    along = new Map();
    kept.fetches.set(lat, along);
  }
  let here = along.get(lon);
  if (!here) {
    here = new Map();
    along.set(lon, here);
    kept.places++;
  }
  return here;
}

/** Directions asked whether a swell can come in from them. */
const ALL_ROUND = [0, 45, 90, 135, 180, 225, 270, 315] as const;

/** Whether any of eight directions, fanned out by nine rays, leaves the local waters without meeting land. */
export function openToSea(waters: Waters | undefined, at: LatLon): boolean {
  return ALL_ROUND.some((fromDeg) => knownFetch(waters, at, fromDeg).open > 0);
}
