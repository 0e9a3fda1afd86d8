import type { Feature, FeatureCollection, LineString, Point, Position } from 'geojson';
import type { Route } from '../route/shapes.ts';

/** A route as GeoJSON (RFC 7946): its line, closed where it comes round, and its waypoints. Degrees to 0.1 m. */
export function geoJsonOfRoute(name: string, { shape, waypoints }: Route): FeatureCollection {
  const at = waypoints.map(({ lat, lon }): Position => [figure(lon), figure(lat)]);
  const first = at[0];
  const line = shape === 'loop' && first && at.length > 1 ? [...at, first] : at;
  const points = waypoints.map(
    ({ name: own, stop }, i): Feature<Point> => ({
      type: 'Feature',
      properties: { number: i + 1, ...(own !== undefined && { name: own }), ...(stop !== undefined && { stop }) },
      geometry: { type: 'Point', coordinates: at[i]! },
    }),
  );
  const drawn: Feature<LineString>[] =
    line.length < 2
      ? []
      : [{ type: 'Feature', properties: { name, shape }, geometry: { type: 'LineString', coordinates: line } }];
  return { type: 'FeatureCollection', features: [...drawn, ...points] };
}

function figure(degrees: number): number {
  return Math.round(degrees * 1e6) / 1e6;
}
