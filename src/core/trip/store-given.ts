import { BRIMFUL, FULL_FILL } from '../drive/tank.ts';
import { UNKNOWN } from './scenario.ts';
import type { Trip } from './shapes.ts';

/** Fuel or charge as a likely trip starts with. */
export interface StoreGiven {
  /** Share of capacity it feeds, and share whose weight is carried: an unknown fill feeds little and weighs much. */
  readonly fill: number;
  readonly weighs: number;
  readonly batteryTemperatureC: number;
}

/** What a trip says of its fuel or charge, and the stated assumption for the rest. */
export function storeGiven(trip: Pick<Trip, 'load' | 'craft' | 'conditions'>): StoreGiven {
  return {
    fill: givenFill(trip) ?? UNKNOWN.fill[0],
    weighs: trip.load.fill ?? BRIMFUL,
    batteryTemperatureC: trip.conditions.batteryTemperatureC ?? UNKNOWN.batteryTemperatureC[0],
  };
}

/** The fill as given, where a full tank holds no more than leaves the petrol room to expand. */
export function givenFill({ load, craft }: Pick<Trip, 'load' | 'craft'>): number | undefined {
  return load.fill !== undefined && craft.store.kind === 'tank' ? Math.min(load.fill, FULL_FILL) : load.fill;
}
