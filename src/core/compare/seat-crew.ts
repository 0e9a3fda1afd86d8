import type { Hull, Station } from '../craft/shapes.ts';
import type { Aboard } from '../load/shapes.ts';

/** Below this somebody counts as a child, kg (common practice, no source). */
const CHILD = 45;

/** Spread: the middle line first, then in pairs from forward aft. */
export type Seating = 'spread' | 'forward' | 'aft';

/**
 * People of these masses, kg, on the seats of a hull, the first at the helm. More than there are seats for stay without
 * one and count where they do most harm.
 */
export function seatedCrew(hull: Hull, masses: readonly number[], seating: Seating = 'spread'): readonly Aboard[] {
  const helm = hull.stations.find(({ use }) => use === 'helm');
  const seats = hull.stations.filter(({ use }) => use === 'seat').sort(ORDER[seating]);
  const places = helm ? [helm, ...seats] : seats;
  return masses.map((mass, i) => ({
    id: `p${i + 1}`,
    kind: mass < CHILD ? ('child' as const) : ('adult' as const),
    mass,
    ...(places[i] && { station: places[i].id }),
    ...(i === 0 && { helm: true }),
  }));
}

/** Gear of a mass, kg, stowed amidships, or where the boat has no such place left to the placing rule; none for 0. */
export function stowedGear(hull: Hull, mass: number): readonly Aboard[] {
  if (!(mass > 0)) return [];
  const places = hull.stations.filter(({ use }) => use === 'gear').sort((a, b) => a.x - b.x);
  const middle = places[Math.floor(places.length / 2)];
  return [{ id: 'gear', kind: 'gear', mass, ...(middle && { station: middle.id }) }];
}

const ORDER: Readonly<Record<Seating, (a: Station, b: Station) => number>> = {
  spread: (a, b) => Number(a.y !== 0) - Number(b.y !== 0) || b.x - a.x || a.y - b.y,
  forward: (a, b) => b.x - a.x || a.y - b.y,
  aft: (a, b) => a.x - b.x || a.y - b.y,
};
