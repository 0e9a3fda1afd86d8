import type { SavedBoat } from '../../core/files/saved-file.ts';
import type { Trip } from '../../core/trip/shapes.ts';
import { seated } from './seated.ts';

/** A trip with a saved boat in place of its own; whoever is aboard keeps a seat where the boat has one like it. */
export function withBoat({ trials: _, ...trip }: Trip, { craft, trials }: SavedBoat): Trip {
  return { ...trip, craft, load: seated(trip.load, craft.hull, trip.craft.hull), ...(trials && { trials }) };
}
