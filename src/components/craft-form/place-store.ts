import type { Hull, Position, Store } from '../../core/craft/shapes.ts';

/** Where a tank or battery goes on a boat when nobody has said: aft, as the catalogue has it. */
const USUAL = 'store-aft';
/** No station has this name. */
export const STAYS = '';

/** The store put where this hull usually carries it; a fixed tank stays. */
export function placedOn(hull: Hull, store: Store): Store {
  const place = hull.stations.find(({ id }) => id === USUAL);
  return place ? movedTo(store, place) : store;
}

/** All that is not fixed put at one place along the boat; side by side stays side by side. */
export function movedTo(store: Store, place: Position): Store {
  return moved(store, (at) => ({ x: place.x, y: at.y, z: place.z }));
}

/** Where the first that is not fixed sits; undefined when all is built in. */
export function placeOf(store: Store): Position | undefined {
  return store.kind === 'tank' ? store.tanks.find(({ fixed }) => !fixed)?.at : store.batteries[0]?.at;
}

/**
 * The store carried over to another hull, or the same at another size: from a station to the one of the same name.
 * What sits elsewhere goes to the station `elsewhere`, or with `STAYS` stays where it is.
 */
export function carriedOver(store: Store, from: Hull, to: Hull, elsewhere = USUAL): Store {
  return moved(store, (at) => {
    const station = from.stations.find(({ use, x, z }) => use === 'store' && x === at.x && z === at.z);
    const place = to.stations.find(({ id }) => id === (station?.id ?? elsewhere));
    return place ? { x: place.x, y: at.y, z: place.z } : at;
  });
}

function moved(store: Store, move: (at: Position) => Position): Store {
  return store.kind === 'tank'
    ? { ...store, tanks: store.tanks.map((tank) => (tank.fixed ? tank : { ...tank, at: move(tank.at) })) }
    : { ...store, batteries: store.batteries.map((battery) => ({ ...battery, at: move(battery.at) })) };
}

/** The store as a thing, wherever it sits, to compare with others. */
export function unplaced(store: Store): Store {
  return moved(store, () => ({ x: 0, y: 0 }));
}
