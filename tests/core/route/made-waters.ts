import type { LatLon, WatersFile, ZoneFeature, ZoneProperties } from '../../../src/core/route/shapes.ts';

/** A zone from rings of [longitude, latitude]. */
export function zone(properties: ZoneProperties, ...rings: [number, number][][]): ZoneFeature {
  return { type: 'Feature', properties, geometry: { type: 'Polygon', coordinates: rings } };
}

export function waters(features: WatersFile['features'], bbox?: WatersFile['bbox']): WatersFile {
  return { type: 'FeatureCollection', features, ...(bbox && { bbox }) };
}

/** A closed box as a ring. */
export function box(west: number, south: number, east: number, north: number): [number, number][] {
  return [
    [west, south],
    [east, south],
    [east, north],
    [west, north],
    [west, south],
  ];
}

/** Ragged round islands in rows on a box of 0.2 degrees. */
export function circleWaters(islands: number, verticesEach: number): WatersFile {
  const side = Math.ceil(Math.sqrt(islands));
  const features: ZoneFeature[] = [];
  for (let island = 0; island < islands; island++) {
    const ring: [number, number][] = [];
    for (let vertex = 0; vertex <= verticesEach; vertex++) {
      const angle = ((vertex % verticesEach) / verticesEach) * 2 * Math.PI;
      const radius = (0.2 / side) * (0.3 + 0.05 * Math.sin(7 * angle) + 0.02 * Math.sin(31 * angle));
      const x = (0.2 / side) * ((island % side) + 0.5);
      const y = (0.2 / side) * (Math.floor(island / side) + 0.5);
      ring.push([-32 + x + radius * Math.cos(angle), 46 + y + radius * Math.sin(angle)]);
    }
    features.push(zone({ kind: 'land', name: `Island ${island}` }, ring));
  }
  return waters(features, [-32, 46, -31.8, 46.2]);
}

/** A route that winds all over that box. */
export function meander(points: number): LatLon[] {
  return Array.from({ length: points }, (_, point) => {
    const share = point / (points - 1);
    return { lat: 46.1 + 0.09 * Math.sin(14 * share), lon: -31.9 + 0.09 * Math.sin(9 * share + 1) };
  });
}
