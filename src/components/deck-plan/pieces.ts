import type { Craft, Hull, Position, Store } from '../../core/craft/shapes.ts';
import { FULL_FILL, fuelMass } from '../../core/drive/tank.ts';
import type { Load } from '../../core/load/shapes.ts';
import { seatOf } from './edit-load.ts';
import type { PieceKind } from './landing.ts';

/** One thing on the drawing. */
export interface Piece {
  /** "aboard:" and the id, or "store:" and the index. */
  readonly key: string;
  readonly kind: PieceKind;
  readonly name: string | undefined;
  /** kg, a tank with its fuel */
  readonly mass: number;
  /** Undefined: nobody said where. */
  readonly place: Position | undefined;
  /** Id of the station it is at. */
  readonly station: string | undefined;
  /** Built in. */
  readonly fixed: boolean;
  readonly helm: boolean;
}

/** Level of the tanks where nobody gave one; a plan that knows no better takes the same. */
const UNKNOWN_FILL = 0.5;

/** Everybody and everything on deck, those aboard first, in the order of the load. */
export function pieces({ hull, store }: Craft, load: Load): Piece[] {
  return [
    ...load.items.map((item): Piece => {
      const seat = seatOf(hull, item);
      return {
        key: aboardKey(item.id),
        kind: item.kind,
        name: item.name,
        mass: item.mass,
        place: seat && ('station' in seat ? seat.station : seat.at),
        station: seat && 'station' in seat ? seat.station.id : undefined,
        fixed: false,
        helm: item.helm === true,
      };
    }),
    ...holders(store, levelOf(store, load)).map((holder, index): Piece => {
      const station = stationAt(hull, holder.place);
      return { ...holder, key: storeKey(index), station, helm: false };
    }),
  ];
}

type Holder = Pick<Piece, 'kind' | 'name' | 'mass' | 'fixed'> & { readonly place: Position };

function holders(store: Store, fill: number): Holder[] {
  return store.kind === 'tank'
    ? store.tanks.map((tank) => ({
        kind: 'tank',
        name: tank.name,
        mass: tank.emptyMass + fuelMass([tank], fill),
        fixed: tank.fixed,
        place: tank.at,
      }))
    : store.batteries.map(({ name, mass, at }) => ({ kind: 'battery', name, mass, fixed: false, place: at }));
}

/** Share of the tanks filled at departure; a full tank leaves the petrol room to expand. */
export function levelOf({ kind }: Store, { fill = UNKNOWN_FILL }: Load): number {
  return kind === 'tank' ? Math.min(fill, FULL_FILL) : fill;
}

/** kg of fuel aboard at departure; none with batteries, whose mass does not change. */
export function fuelAboard({ store }: Craft, load: Load): number {
  return store.kind === 'tank' ? fuelMass(store.tanks, levelOf(store, load)) : 0;
}

export function aboardKey(id: string): string {
  return `aboard:${id}`;
}

function storeKey(index: number): string {
  return `store:${index}`;
}

/** Id of somebody or something aboard; undefined for a tank or battery. */
export function aboardId(key: string): string | undefined {
  return key.startsWith('aboard:') ? key.slice(7) : undefined;
}

/** Index of a tank or battery; undefined for those aboard. */
export function storeIndex(key: string): number | undefined {
  return key.startsWith('store:') ? Number(key.slice(6)) : undefined;
}

/** A tank or battery keeps no station, only where it is. */
function stationAt(hull: Hull, { x, y, z }: Position): string | undefined {
  return hull.stations.find((s) => (s.use === 'store' || s.use === 'gear') && s.x === x && s.y === y && s.z === z)?.id;
}

/** The store with one tank or battery standing elsewhere; a fixed tank stays. */
export function storeMoved(store: Store, index: number, { x, y, z }: Position): Store {
  const at: Position = z === undefined ? { x, y } : { x, y, z };
  return store.kind === 'tank'
    ? { ...store, tanks: store.tanks.map((tank, i) => (i === index && !tank.fixed ? { ...tank, at } : tank)) }
    : { ...store, batteries: store.batteries.map((battery, i) => (i === index ? { ...battery, at } : battery)) };
}
