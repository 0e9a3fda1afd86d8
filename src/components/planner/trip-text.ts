import type { Trip } from '../../core/trip/shapes.ts';

/** The text of a trip file. */
export function tripText(trip: Trip): string {
  return JSON.stringify(trip, undefined, 2);
}
