import { type Loaded, loaded, setUp } from '../../../src/core/compare/loaded.ts';
import { seatedCrew } from '../../../src/core/compare/seat-crew.ts';
import type { LoadColumn, LoadRow } from '../../../src/core/compare/shapes.ts';
import type { Craft, Hull, Plate } from '../../../src/core/craft/shapes.ts';
import { craftFrom, hulls } from '../../../src/core/files/catalogue.ts';

export const SETTING = { water: 'sea', batteryTemperatureC: 20 } as const;

/** A shipped hull with the plate usual for it. */
export function hullOf(id: string, plate?: Partial<Plate>): Hull {
  const record = hulls.find((hull) => hull.id === id)!;
  return { ...record.hull, plate: { ...record.typicalPlate, ...plate } };
}

export function columnOf(hullId: string, engineId: string, storeId: string): LoadColumn {
  const { drive, store } = craftFrom(hullId, engineId, storeId);
  return { id: `${engineId} ${storeId}`, drive, store };
}

/** So many adults of one mass, kg, on the seats of a hull. */
export function crewOf(hull: Hull, count: number, mass = 85): LoadRow {
  return { id: `${count} x ${mass}`, load: { items: seatedCrew(hull, Array(count).fill(mass)) } };
}

export function loadedWith(
  hullId: string,
  engineId: string,
  storeId: string,
  { count = 2, mass = 85, change = (craft: Craft) => craft } = {},
): Loaded {
  const craft = change({ ...craftFrom(hullId, engineId, storeId), hull: hullOf(hullId) });
  return loaded(setUp(craft, SETTING), crewOf(craft.hull, count, mass).load);
}
