import type { Hull } from '../../core/craft/shapes.ts';
import type { Aboard, Load } from '../../core/load/shapes.ts';
import { type Landing, person } from './landing.ts';

/** Weights that a new one starts with, kg (common practice, no source); the user sets the real ones. */
const USUAL_MASS: Record<Aboard['kind'], number> = { adult: 85, child: 35, dog: 20, gear: 15 };

/** The schema of a trip takes no more than this many. */
export const MOST_ABOARD = 60;

/** Where one comes to sit; undefined: nobody knows. */
export type Seat = Exclude<Landing, { refused: 'bow-tube' }> | undefined;

/** What putting one down somewhere makes of the load, or why it cannot be. */
export type PutDown =
  | { readonly load: Load }
  | { readonly refused: 'bow-tube' }
  | { readonly refused: 'taken'; readonly by: Aboard };

/** One put down. Who has no place to give in exchange cannot have one that is taken. */
export function putDown(hull: Hull, load: Load, id: string, landing: Landing): PutDown {
  if ('refused' in landing) return { refused: landing.refused };
  const by = takenBy(load, id, landing);
  const mover = load.items.find((item) => item.id === id);
  if (by && mover && seatOf(hull, mover) === undefined) return { refused: 'taken', by };
  return { load: moved(load, id, landing) };
}

/** One put elsewhere. A person put on a taken seat changes places with who sits there; who takes the helm's seat steers. */
export function moved(load: Load, id: string, seat: Seat): Load {
  const mover = load.items.find((item) => item.id === id);
  if (!mover) return load;
  const other = takenBy(load, id, seat);
  const steers = person(mover.kind) && seat !== undefined && 'station' in seat && seat.station.use === 'helm';
  return withItems(load, (item) => {
    if (item === mover) return steers ? { ...seated(item, seat), helm: true } : seated(item, seat);
    const rest = steers ? withoutHelm(item) : item;
    return item === other ? { ...seatless(rest), ...placeOf(mover) } : rest;
  });
}

/** Who sits where a person would go. Gear and dogs share their places. */
export function takenBy(load: Load, id: string, seat: Seat): Aboard | undefined {
  const mover = load.items.find((item) => item.id === id);
  if (!mover || !person(mover.kind) || seat === undefined || !('station' in seat)) return undefined;
  return load.items.find(
    (item) => item !== mover && person(item.kind) && item.at === undefined && item.station === seat.station.id,
  );
}

/** One more aboard, without a seat yet; the first person steers. */
export function added(load: Load, kind: Aboard['kind']): { load: Load; id: string } {
  const id = freshId(load);
  const first = person(kind) && !load.items.some((item) => item.helm);
  const item: Aboard = { id, kind, mass: USUAL_MASS[kind], ...(first && { helm: true }) };
  return { id, load: { ...load, items: [...load.items, item] } };
}

/** One fewer; if it was the one who steers, the first adult left does, else the first child. */
export function removed(load: Load, id: string): Load {
  const leaver = load.items.find((item) => item.id === id);
  const items = load.items.filter((item) => item !== leaver);
  const next = leaver?.helm
    ? (items.find(({ kind }) => kind === 'adult') ?? items.find(({ kind }) => kind === 'child'))
    : undefined;
  return { ...load, items: items.map((item) => (item === next ? { ...item, helm: true } : item)) };
}

/** One who was removed is aboard again, at the same point of the list; whoever steered before steers. */
export function putBack(load: Load, item: Aboard, index: number): Load {
  if (load.items.some(({ id }) => id === item.id)) return load;
  const back = { ...load, items: load.items.toSpliced(index, 0, item) };
  return item.helm ? steeredBy(back, item.id) : back;
}

/** This person steers and nobody else does. */
export function steeredBy(load: Load, id: string): Load {
  return withItems(load, (item) => {
    if (item.id === id && person(item.kind)) return item.helm ? item : { ...item, helm: true };
    return withoutHelm(item);
  });
}

export function renamed(load: Load, id: string, name: string): Load {
  return withItems(load, (item) => {
    if (item.id !== id) return item;
    const { name: _before, ...rest } = item;
    return name ? { ...rest, name } : rest;
  });
}

export function reweighed(load: Load, id: string, mass: number): Load {
  return withItems(load, (item) => (item.id === id ? { ...item, mass } : item));
}

/** Where an item stands, as a seat to go back to; a station that the hull does not have is no seat. */
export function seatOf(hull: Hull, item: Aboard): Seat {
  if (item.at) return { at: item.at };
  const station = hull.stations.find(({ id }) => id === item.station);
  return station && { station };
}

function seated(item: Aboard, seat: Seat): Aboard {
  const bare = seatless(item);
  if (seat === undefined) return bare;
  return 'station' in seat ? { ...bare, station: seat.station.id } : { ...bare, at: seat.at };
}

function seatless({ at: _at, station: _station, ...rest }: Aboard): Aboard {
  return rest;
}

function placeOf({ at, station }: Aboard): Pick<Aboard, 'at' | 'station'> {
  return at ? { at } : station === undefined ? {} : { station };
}

function withoutHelm(item: Aboard): Aboard {
  if (!item.helm) return item;
  const { helm: _helm, ...rest } = item;
  return rest;
}

function withItems(load: Load, change: (item: Aboard) => Aboard): Load {
  return { ...load, items: load.items.map(change) };
}

function freshId({ items }: Load): string {
  const taken = new Set(items.map(({ id }) => id));
  let number = items.length + 1;
  while (taken.has(`p${number}`)) number++;
  return `p${number}`;
}
