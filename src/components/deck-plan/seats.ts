import type { Craft, Hull, Station } from '../../core/craft/shapes.ts';
import { balance } from '../../core/load/balance.ts';
import type { Aboard, Load } from '../../core/load/shapes.ts';
import { moved, seatOf } from './edit-load.ts';
import { GOOD_ACROSS, goodAlong } from './good-balance.ts';
import { person, placesFor } from './landing.ts';
import type { Piece } from './pieces.ts';

/** Places that this item suits and nobody and nothing has, from aft to the bow, port first. Its own counts as taken. */
export function freePlaces(hull: Hull, load: Load, item: Aboard): Station[] {
  const taken = new Set(load.items.filter(({ at }) => at === undefined).map(({ station }) => station));
  return placesFor(hull, item.kind).filter(({ id }) => !taken.has(id));
}

/** The free place after the one it has, going forward and then from aft again. Undefined: none is free. */
export function nextFreePlace(hull: Hull, load: Load, item: Aboard): Station | undefined {
  const free = freePlaces(hull, load, item);
  const now = item.at ?? hull.stations.find(({ id }) => id === item.station);
  if (!now) return free[0];
  return free.find(({ x, y }) => x > now.x || (x === now.x && y > now.y)) ?? free[0];
}

/** The place after the one a tank or battery has, going forward and then from aft again. */
export function nextStorePlace(hull: Hull, { place, kind }: Pick<Piece, 'place' | 'kind'>): Station | undefined {
  const places = placesFor(hull, kind).filter(({ use }) => use === 'store');
  return places.find(({ x }) => place === undefined || x > place.x + 0.001) ?? places[0];
}

/** The place that brings the boat nearest to good balance: a free one; the helm's for one who steers. Gear may share. */
export function steadiestPlace(craft: Craft, load: Load, item: Aboard, storeMass: number): Station | undefined {
  const candidates = candidatesFor(craft.hull, load, item);
  let best: { station: Station; off: number } | undefined;
  for (const station of candidates) {
    const off = imbalance(craft, settled(craft.hull, moved(load, item.id, { station })), storeMass);
    if (!best || off < best.off - 1e-9) best = { station, off };
  }
  return best?.station;
}

function candidatesFor(hull: Hull, load: Load, item: Aboard): Station[] {
  const free = freePlaces(hull, load, item);
  if (!person(item.kind)) {
    const own = free.filter(({ use }) => use === 'gear');
    const shared = item.kind === 'gear' ? hull.stations.filter(({ use }) => use === 'gear') : free;
    return own.length > 0 ? own : shared;
  }
  const helms = free.filter(({ use }) => use === 'helm');
  if (item.helm && helms.length > 0) return helms;
  const steered = load.items.some(({ helm, id }) => helm && id !== item.id);
  return steered ? free.filter(({ use }) => use !== 'helm') : free;
}

/** Everybody and everything without a place put where the boat is steadiest. Those for whom none is free stay without. */
export function everyoneSeated(craft: Craft, load: Load, storeMass: number): Load {
  const waiting = unseated(craft.hull, load).sort(
    (a, b) => Number(b.helm ?? false) - Number(a.helm ?? false) || b.mass - a.mass,
  );
  const one = waiting.reduce((seatedSoFar, item) => {
    const station = steadiestPlace(craft, seatedSoFar, item, storeMass);
    return station ? moved(seatedSoFar, item.id, { station }) : seatedSoFar;
  }, load);
  return rearranged(craft, one, { ids: waiting.map(({ id }) => id), storeMass });
}

/** Rounds of changes tried after one by one; each only makes it better, and a few are enough. */
const ROUNDS = 12;

/** Those just seated moved to free places and swapped with each other as long as the boat gets steadier. */
function rearranged(craft: Craft, load: Load, { ids, storeMass }: { ids: readonly string[]; storeMass: number }): Load {
  const { hull } = craft;
  const off = (of: Load) => imbalance(craft, settled(hull, of), storeMass);
  let best = { load, off: off(load) };
  for (let round = 0; round < ROUNDS; round++) {
    const before = best.off;
    for (const id of ids) {
      const item = best.load.items.find((each) => each.id === id)!;
      if (item.helm || !person(item.kind) || seatOf(hull, item) === undefined) continue;
      const others = best.load.items.filter((other) => other.id !== id && ids.includes(other.id) && !other.helm);
      const places = [
        ...candidatesFor(hull, best.load, item),
        ...hull.stations.filter(({ id: at }) => others.some(({ kind, station }) => person(kind) && station === at)),
      ];
      for (const station of places) {
        const next = moved(best.load, id, { station });
        const better = off(next);
        if (better < best.off - 1e-9) best = { load: next, off: better };
      }
    }
    if (best.off === before) break;
  }
  return best.load;
}

/** Those whose seat nobody gave, or gave by a name this boat does not have. */
export function unseated(hull: Hull, load: Load): Aboard[] {
  const has = new Set(hull.stations.map(({ id }) => id));
  return load.items.filter(({ at, station }) => !at && !(station !== undefined && has.has(station)));
}

/** How far from good balance, in tolerances: along and across count alike. */
function imbalance(craft: Craft, load: Load, storeMass: number): number {
  const { lcgShare, lateral } = balance(craft, load, storeMass);
  const { low, high } = goodAlong(craft.hull.form);
  const along = (lcgShare - (low + high) / 2) / ((high - low) / 2);
  const across = lateral / (GOOD_ACROSS.good * craft.hull.beam);
  return along * along + across * across;
}

/** Only those with a place: the others would count where they do most harm. */
function settled(hull: Hull, load: Load): Load {
  const waiting = new Set(unseated(hull, load));
  return { ...load, items: load.items.filter((item) => !waiting.has(item)) };
}
