import type { Craft, Hull, Position, Station } from '../craft/shapes.ts';
import { fuelMass } from '../drive/tank.ts';
import { helmReaches } from '../load/helm-reach.ts';
import type { Aboard, Load } from '../load/shapes.ts';

/** What the placement is to be good for. */
export type Purpose = 'planing' | 'level' | 'range' | 'rough' | 'tiller';

/** Somebody or something that may go elsewhere, and where to. Its present place is `now`, where it has one. */
export interface Movable {
  readonly who: { readonly item: Aboard } | { readonly store: number };
  /** kg */
  readonly mass: number;
  /** Persons have their place to themselves. */
  readonly alone: boolean;
  readonly places: readonly Station[];
  readonly now: Position | undefined;
}

/**
 * Everybody and everything that a placement may move. Nobody goes onto the bow tube, and the helm stays where the kill
 * cord reaches: on its own seat, or with a tiller extension on any seat within reach. Built-in tanks stay.
 */
export function movables({ hull, store }: Craft, load: Load, fill: number, purpose: Purpose): readonly Movable[] {
  const seats = hull.stations.filter(({ use }) => use === 'seat' || use === 'helm');
  const floor = hull.stations.filter(({ use }) => use === 'gear');
  const stores = hull.stations.filter(({ use }) => use === 'store');
  const found: Movable[] = [];
  for (const item of load.items) {
    const person = item.kind === 'adult' || item.kind === 'child';
    const places = person ? (item.helm ? helmPlaces(hull, seats, purpose) : seats) : floor;
    if (places.length === 0) continue;
    found.push({ who: { item }, mass: item.mass, alone: person, places, now: placeOf(hull, item) });
  }
  if (stores.length === 0) return found;
  if (store.kind === 'tank') {
    store.tanks.forEach((tank, i) => {
      const mass = tank.emptyMass + fuelMass([tank], fill);
      if (!tank.fixed) found.push({ who: { store: i }, mass, alone: false, places: stores, now: tank.at });
    });
  } else {
    store.batteries.forEach(({ mass, at }, i) => {
      found.push({ who: { store: i }, mass, alone: false, places: stores, now: at });
    });
  }
  return found;
}

/** Seats the helm may have. */
function helmPlaces(hull: Hull, seats: readonly Station[], purpose: Purpose): readonly Station[] {
  const own = seats.filter(({ use }) => use === 'helm');
  if (purpose === 'tiller' || own.length === 0) return seats.filter((seat) => helmReaches(hull, seat));
  return own;
}

function placeOf(hull: Hull, { at, station }: Aboard): Position | undefined {
  return at ?? hull.stations.find(({ id }) => id === station);
}
