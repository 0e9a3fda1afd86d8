import { chartable, legBetween, lonBetween } from '../../core/route/distance.ts';
import type { LatLon, Route, Waypoint } from '../../core/route/shapes.ts';
import type { Measures } from '../units/measures.ts';
import { mapWords, waypointName } from './words.ts';

/** "Start", "Turn" or "Finish" for the waypoints that are one, by the shape of the route. */
export function roleOf(index: number, { shape, waypoints }: Route): string | undefined {
  if (index === 0) return mapWords.start;
  if (index < waypoints.length - 1 || shape === 'loop') return undefined;
  return shape === 'out-and-home' ? mapWords.turn : mapWords.finish;
}

/** What each waypoint is called where it cannot be seen; words are made only for those asked about. */
export function waypointNames(route: Route, measures: Measures): (index: number) => string {
  const { waypoints } = route;
  let sum = 0;
  const fromStart = waypoints.map((waypoint, index) => {
    sum += index > 0 ? distanceBetween(waypoints[index - 1]!, waypoint) : 0;
    return sum;
  });
  return (index) => {
    const role = roleOf(index, route);
    const shown = measures.show('distance', fromStart[index] ?? Number.NaN);
    return waypointName(index, waypoints.length, { name: waypoints[index]?.name, role, fromStart: shown });
  };
}

/** m; NaN, shown as a dash, where no leg can be laid. */
export function distanceBetween(from: LatLon, to: LatLon): number {
  return chartable(from) && chartable(to) ? legBetween(from, to).distance : Number.NaN;
}

/** Places for a line on the map: a route over the 180th meridian goes on beyond 180 instead of round the world. */
export function unbroken(places: readonly LatLon[], closed: boolean): [number, number][] {
  const line: [number, number][] = [];
  let lon = places[0]?.lon ?? 0;
  for (const place of places) {
    lon += lonBetween(lon, place.lon);
    line.push([place.lat, lon]);
  }
  const first = places[0];
  if (closed && first && places.length > 1) line.push([first.lat, lon + lonBetween(lon, first.lon)]);
  return line;
}

/** Whether the last leg runs back to the first waypoint. */
export function closes(route: Pick<Route, 'shape'> & { readonly waypoints: readonly Waypoint[] }): boolean {
  return route.shape === 'loop' && route.waypoints.length > 1;
}
