import type { Trip } from '../../core/trip/shapes.ts';
import type { HostBoat } from '../host/host-given.ts';
import { withBoat } from './with-boat.ts';

/** A trip with a boat of the page in place of its own, at the speed it is offered for. */
export function withHostBoat(trip: Trip, { craft, trials, speed }: HostBoat): Trip {
  const next = withBoat(trip, { craft, trials });
  return speed === undefined ? next : { ...next, route: { ...next.route, speed } };
}
