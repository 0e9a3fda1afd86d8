import type { Route } from '../../core/route/shapes.ts';
import type { StreamPlace } from '../../core/water/shapes.ts';

/**
 * The route after one's own places with streams changed: legs that took the stream of one go along with its new name, and
 * are left to the nearest again when it is gone. Without this a trip would name a place that nobody can find.
 */
export function followedStreams(
  route: Route,
  before: readonly StreamPlace[] = [],
  after: readonly StreamPlace[] = [],
): Route {
  const lost = before.filter(({ name }) => !after.some((place) => place.name === name));
  if (lost.every(({ name }) => route.waypoints.every(({ streamPlace }) => streamPlace !== name))) return route;
  const names = new Map(
    lost.map(({ name }): [string, string | undefined] => {
      const renamed =
        before.length === after.length ? after[before.findIndex((place) => place.name === name)] : undefined;
      const fresh = renamed && !before.some((place) => place.name === renamed.name);
      return [name, fresh ? renamed.name : undefined];
    }),
  );
  const waypoints = route.waypoints.map((waypoint) => {
    const { streamPlace, ...rest } = waypoint;
    if (streamPlace === undefined || !names.has(streamPlace)) return waypoint;
    const name = names.get(streamPlace);
    return name === undefined ? rest : { ...rest, streamPlace: name };
  });
  return { ...route, waypoints };
}
