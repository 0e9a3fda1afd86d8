import type { HireRoute } from '../../core/hire/shapes.ts';
import type { WatersFile } from '../../core/route/shapes.ts';

/** The set routes of local waters as a desk lets them; a hirer brings the boat back, so one-way routes are none. */
export function routesOf({ features }: WatersFile): readonly HireRoute[] {
  return features.flatMap(({ geometry, properties }, index): HireRoute[] => {
    if (geometry.type !== 'LineString' || properties?.kind !== 'route' || properties.shape === 'one-way') return [];
    const shape = properties.shape === 'loop' ? 'loop' : 'out-and-home';
    const waypoints = geometry.coordinates.map(([lon = 0, lat = 0]) => ({ lat, lon }));
    const first = waypoints[0];
    const last = waypoints.at(-1);
    // A loop closes by itself.
    const closed = shape === 'loop' && waypoints.length > 2 && first?.lat === last?.lat && first?.lon === last?.lon;
    return [
      {
        id: properties.id ?? `route-${index + 1}`,
        name: properties.name,
        shape,
        waypoints: closed ? waypoints.slice(0, -1) : waypoints,
      },
    ];
  });
}
