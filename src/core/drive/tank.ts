import type { Tank } from '../craft/shapes.ts';
import { PETROL_DENSITY } from '../units/constants.ts';

/** Share of capacity a full tank really holds (common practice, no source). */
export const FULL_FILL = 0.95;
/** What an unknown fill may weigh: cans are filled to the brim all the same. */
export const BRIMFUL = 1;

/** Share of capacity the pick-up may not reach in rough water (common practice, no source). */
const ROUGH_UNUSABLE = 0.1;

/** Fuel the engine can reach, kg. `fill` is the share of capacity really in, the same in every tank. */
export function usableFuel(tanks: readonly Tank[], fill: number): number {
  return usable(tanks, fill, 0);
}

/** As `usableFuel`, in waves or at odd trim that uncover the pick-up, kg. */
export function usableFuelInRoughWater(tanks: readonly Tank[], fill: number): number {
  return usable(tanks, fill, ROUGH_UNUSABLE);
}

/** Fuel aboard, usable or not, kg. */
export function fuelMass(tanks: readonly Tank[], fill: number): number {
  let litres = 0;
  for (const tank of tanks) litres += tank.capacityL * share(fill);
  return litres * PETROL_DENSITY;
}

function usable(tanks: readonly Tank[], fill: number, leastUnusable: number): number {
  let litres = 0;
  for (const { capacityL, unusableL } of tanks) {
    litres += Math.max(capacityL * share(fill) - Math.max(unusableL, leastUnusable * capacityL), 0);
  }
  return litres * PETROL_DENSITY;
}

function share(fill: number): number {
  return Math.min(Math.max(fill, 0), 1);
}
