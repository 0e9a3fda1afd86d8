import { interpolate, legBetween } from './distance.ts';
import { knownFetch, openToSea } from './known-fetch.ts';
import type { LatLon } from './shapes.ts';
import type { Waters } from './waters.ts';
import type { Fetch } from './wind-fetch.ts';

/** Places sampled along a leg lie at most this far apart, m. */
const APART = 1000;
/** Legs shorter than this share a place with the ones before, m, so that a finely drawn way costs no more. */
const NEAR = 250;
/** Most places within one leg. */
const MOST = 12;

export interface LegFetch {
  /** Worst fetch of a leg, by its place in the list, for a wind from a direction (true). */
  (leg: number, fromDeg: number): Fetch;
  /** Whether any place of a leg lies open to what is not known, so that a swell may come in. */
  readonly open: (leg: number) => boolean;
}

/**
 * The longest fetch along each leg of a way, sampled at most 1 km apart on legs up to 11 km, ends included to 250 m. Make it
 * once per way: the places do not depend on the wind, each remembers its answer to the last direction, and each leg all
 * its answers.
 */
export function worstFetches(waters: Waters | undefined, legs: readonly { from: LatLon; to: LatLon }[]): LegFetch {
  const places: LatLon[] = [];
  const ofLeg: { readonly first: number; readonly last: number }[] = [];
  let since = Infinity;
  let end: LatLon | undefined;
  for (const { from, to } of legs) {
    if (since >= NEAR || !end || end.lat !== from.lat || end.lon !== from.lon) {
      places.push(from);
      since = 0;
    }
    const first = places.length - 1;
    const { distance } = legBetween(from, to);
    const pieces = Math.min(MOST, Math.ceil(distance / APART));
    for (let piece = 1; piece < pieces; piece++) {
      places.push(interpolate(from, to, piece / pieces));
      since = 0;
    }
    since += pieces > 1 ? distance / pieces : distance;
    if (since >= NEAR) {
      places.push(to);
      since = 0;
    }
    ofLeg.push({ first, last: places.length - 1 });
    end = to;
  }
  const told: { fromDeg: number; fetch: Fetch }[] = [];
  const fetchOf = (place: number, fromDeg: number): Fetch => {
    const before = told[place];
    if (before?.fromDeg === fromDeg) return before.fetch;
    const fetch = knownFetch(waters, places[place]!, fromDeg);
    told[place] = { fromDeg, fetch };
    return fetch;
  };
  const known = ofLeg.map(() => new Map<number, Fetch>());
  const worst = (leg: number, fromDeg: number): Fetch => {
    let fetch = known[leg]!.get(fromDeg);
    if (!fetch) {
      fetch = longestOn(leg, fromDeg);
      known[leg]!.set(fromDeg, fetch);
    }
    return fetch;
  };
  const longestOn = (leg: number, fromDeg: number): Fetch => {
    const { first, last } = ofLeg[leg]!;
    let longest = fetchOf(first, fromDeg);
    for (let place = first + 1; place <= last; place++) {
      const found = fetchOf(place, fromDeg);
      if (found.length > longest.length || longest.onLand) longest = found;
    }
    return longest;
  };
  const open = (leg: number): boolean => {
    const { first, last } = ofLeg[leg]!;
    return places.slice(first, last + 1).some((place) => openToSea(waters, place));
  };
  return Object.assign(worst, { open });
}
