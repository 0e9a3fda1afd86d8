import type { Hull, Position, Station } from '../../core/craft/shapes.ts';
import type { Aboard } from '../../core/load/shapes.ts';
import { bowTubeFrom } from './bow-tube.ts';
import type { Spot } from './hull-plan.ts';
import { aboardAt, reach } from './room.ts';

/** Anything that stands on the deck: who and what is aboard, and what the engine runs on. */
export type PieceKind = Aboard['kind'] | 'tank' | 'battery';

/** Where something put down comes to stand, or why not. */
export type Landing =
  | { readonly station: Station }
  | { readonly at: Position }
  | { readonly refused: 'bow-tube'; readonly at: Spot };

/** Nearer than this to a place, a piece goes onto it, m. Farther would leave no way to sit on a tube beside a seat. */
const SNAP = 0.25;

/** Where one without a place comes aboard, share of the wetted length. */
const MIDDLE = 0.4;

/** Places each kind goes to: its own first. Nobody alive goes onto the bow tube. */
const PLACES: Record<PieceKind, readonly Station['use'][]> = {
  adult: ['seat', 'helm'],
  child: ['seat', 'helm'],
  dog: ['gear', 'seat'],
  gear: ['gear', 'store'],
  tank: ['store', 'gear'],
  battery: ['store', 'gear'],
};

export function person(kind: PieceKind): boolean {
  return kind === 'adult' || kind === 'child';
}

export function suits(kind: PieceKind, { use }: Station): boolean {
  return PLACES[kind].includes(use);
}

/** Places for this kind, from aft to the bow, port before starboard. */
export function placesFor(hull: Hull, kind: PieceKind): Station[] {
  return hull.stations.filter((station) => suits(kind, station)).sort((a, b) => a.x - b.x || a.y - b.y);
}

/** Whether somebody would sit on the bow tube or foredeck, which nobody does at speed. */
export function onBowTube(hull: Hull, kind: PieceKind, { x }: Spot): boolean {
  return (person(kind) || kind === 'dog') && x > bowTubeFrom(hull).aft;
}

/** Where a piece let go at a spot comes to stand: the nearest place it suits, else right there, never overboard. */
export function landing(hull: Hull, kind: PieceKind, spot: Spot, snap = SNAP): Landing {
  const at = aboardAt(hull, spot);
  const station = nearestPlace(hull, kind, spot, snap);
  if (station) return { station };
  if (onBowTube(hull, kind, at)) return { refused: 'bow-tube', at };
  return { at: { ...at, z: heightFor(hull, kind, at) } };
}

/** How far aft and forward this kind may be put, m. */
export function reachFor(hull: Hull, kind: PieceKind): { aft: number; fore: number } {
  const { aft, fore } = reach(hull);
  if (!onBowTube(hull, kind, { x: fore, y: 0 })) return { aft, fore };
  return { aft, fore: Math.max(aft, Math.floor(bowTubeFrom(hull).aft * 100) / 100) };
}

/** A free spot where it is now, or the nearest one allowed; one without a place comes to the middle of the boat. */
export function freeSpot(hull: Hull, kind: PieceKind, place: Position | undefined): Position {
  const { aft, fore } = reachFor(hull, kind);
  const { x, y } = place ?? { x: MIDDLE * hull.wettedLength, y: 0 };
  const at = aboardAt(hull, { x: Math.min(fore, Math.max(aft, x)), y });
  return { ...at, z: heightFor(hull, kind, at) };
}

/** One of its own places is taken before one that only will do, and a bow tube that is nearer keeps a person from both. */
function nearestPlace(hull: Hull, kind: PieceKind, spot: Spot, snap: number): Station | undefined {
  const near = hull.stations.filter((station) => apart(station, spot) <= snap);
  for (const use of groups(kind)) {
    const found = nearest(near, spot, (station) => use.includes(station.use));
    if (found) return found;
  }
  return undefined;
}

function groups(kind: PieceKind): (readonly Station['use'][])[] {
  const [first, ...rest] = PLACES[kind];
  return person(kind) ? [PLACES[kind]] : [[first!], rest];
}

/** Height of its centre of mass above the keel at a free spot, m: as at the nearest place of its own. */
export function heightFor(hull: Hull, kind: PieceKind, spot: Spot): number | undefined {
  for (const use of groups(kind)) {
    const like = nearest(hull.stations, spot, (station) => use.includes(station.use) && station.z !== undefined);
    if (like) return like.z;
  }
  return undefined;
}

function nearest(stations: readonly Station[], spot: Spot, wanted: (station: Station) => boolean): Station | undefined {
  let best: Station | undefined;
  for (const station of stations) {
    if (wanted(station) && (!best || apart(station, spot) < apart(best, spot))) best = station;
  }
  return best;
}

export function apart(a: Spot, b: Spot): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}
