import type { BoatProfile } from '../../core/trials/shapes.ts';
import type { Trip } from '../../core/trip/shapes.ts';
import { seated } from './seated.ts';

/** A trip with a measured boat in place of its own, as the boat usually goes; route, day and reserve stay. */
export function withProfile(trip: Trip, { trials, usual }: BoatProfile): Trip {
  const { drive, store } = trials.setups.find((setup) => setup.id === usual) ?? trials.setups[0]!;
  return {
    ...trip,
    craft: { hull: trials.hull, drive, store },
    load: seated(trip.load, trials.hull, trip.craft.hull),
    conditions: { ...trip.conditions, water: trials.water },
    trials,
  };
}
