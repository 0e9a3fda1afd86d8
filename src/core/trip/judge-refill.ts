import { legBetween } from '../route/distance.ts';
import type { Prepared } from './prepare.ts';
import type { Reason } from './shapes.ts';

/** How near a landing a waypoint is meant for it, m. */
const NEAR = 150;

/** A filling up that counts, at a place where no landing of the local waters is known to offer fuel or power. */
export function judgeRefill({ trip, waters }: Prepared): readonly Reason[] {
  const offers = trip.craft.store.kind === 'tank' ? 'fuel' : 'power';
  return trip.route.waypoints.flatMap((waypoint): Reason[] => {
    if (waypoint.refill === undefined) return [];
    const known = (waters?.landings ?? []).some(({ geometry, properties }) => {
      const [lon = 0, lat = 0] = geometry.coordinates;
      return properties[offers] === true && legBetween(waypoint, { lat, lon }).distance <= NEAR;
    });
    if (known) return [];
    const { name } = waypoint;
    return [{ code: 'refill-not-known', level: 'marginal', ...(name && { name }), at: waypoint }];
  });
}
