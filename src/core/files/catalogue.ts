import engineRecords from '../../../shared/craft/engines.json' with { type: 'json' };
import hullRecords from '../../../shared/craft/hulls.json' with { type: 'json' };
import storeRecords from '../../../shared/craft/stores.json' with { type: 'json' };
import type { Craft, Drive, Hull, Plate, Position, Store } from '../craft/shapes.ts';

/** Where each figure comes from, by field name; a name covers what lies below it. */
type Marks = Readonly<Record<string, string | undefined>>;

interface CatalogueRecord {
  readonly id: string;
  readonly marks: Marks;
}

export interface HullRecord extends CatalogueRecord {
  readonly hull: Hull;
  /** What the plate of such a boat may say; the own boat's plate is read by its owner. */
  readonly typicalPlate: Plate;
}

export interface EngineRecord extends CatalogueRecord {
  readonly drive: Drive;
}

export interface StoreRecord extends CatalogueRecord {
  readonly store: Store;
}

// The tests read every record through the same door as a trip.
export const hulls = hullRecords as readonly HullRecord[];
export const engines = engineRecords as readonly EngineRecord[];
export const stores = storeRecords as readonly StoreRecord[];

/**
 * A shipped hull, engine and tank or battery as one boat, tank and battery at the hull's aft store place. No plate:
 * nobody has read one. An id that is not in the catalogue is a programmer error.
 */
export function craftFrom(hullId: string, engineId: string, storeId: string): Craft {
  const { hull } = recordOf(hulls, hullId);
  const place = hull.stations.find((station) => station.id === 'store-aft');
  const moved = (at: Position): Position => (place ? { x: place.x, y: at.y, z: place.z } : at);
  const { store } = recordOf(stores, storeId);
  return {
    hull,
    drive: recordOf(engines, engineId).drive,
    store:
      store.kind === 'tank'
        ? { kind: 'tank', tanks: store.tanks.map((tank) => (tank.fixed ? tank : { ...tank, at: moved(tank.at) })) }
        : { kind: 'battery', batteries: store.batteries.map((battery) => ({ ...battery, at: moved(battery.at) })) },
  };
}

function recordOf<T extends CatalogueRecord>(records: readonly T[], id: string): T {
  const found = records.find((record) => record.id === id);
  if (!found) throw new RangeError(`the catalogue has no ${id}`);
  return found;
}
