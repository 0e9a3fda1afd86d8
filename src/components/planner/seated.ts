import type { Hull } from '../../core/craft/shapes.ts';
import type { Load } from '../../core/load/shapes.ts';

/** The load on another hull: seats it has too are kept, free spots and other seats become unknown. */
export function seated(load: Load, hull: Hull, before: Hull): Load {
  if (hull.stations === before.stations && hull.length === before.length) return load;
  const has = new Set(hull.stations.map((station) => station.id));
  return {
    ...load,
    items: load.items.map((item) => {
      const { at, station, ...rest } = item;
      return station !== undefined && at === undefined && has.has(station) ? { ...rest, station } : rest;
    }),
  };
}
