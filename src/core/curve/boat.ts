import type { Craft } from '../craft/shapes.ts';
import { type BatteryBank, batteryBank } from '../drive/battery.ts';
import { type DriveModel, driveModel } from '../drive/demand.ts';
import { FRESH_WATER, SEA_WATER, type Water } from '../units/constants.ts';
import { type Factors, factorsOf } from './factors.ts';

/** A craft made ready for many speeds: the propeller collapsed, the battery at its temperature, the factors chosen. */
export interface Boat {
  readonly craft: Craft;
  readonly water: Water;
  readonly factors: Factors;
  readonly model: DriveModel;
  readonly bank: BatteryBank | undefined;
}

/** What changes as fuel burns off or somebody moves: kg, m forward of the aft end of the bottom, m2 of frontal area. */
export interface Afloat {
  readonly mass: number;
  readonly lcg: number;
  readonly airArea: number;
  /** Of the battery, 0 to 1; absent: full, or petrol. */
  readonly charge?: number;
}

/** `batteryTemperatureC` is the battery's own; petrol craft ignore it. */
export function boatOf(craft: Craft, water: 'sea' | 'fresh', batteryTemperatureC: number): Boat {
  const properties = water === 'fresh' ? FRESH_WATER : SEA_WATER;
  const factors = factorsOf(craft);
  return {
    craft,
    water: properties,
    factors,
    model: driveModel(craft.drive, {
      density: properties.density,
      form: craft.hull.form,
      factors: factors.drive,
      fullPower: factors.power.factor,
    }),
    bank: craft.store.kind === 'battery' ? batteryBank(craft.store.batteries, batteryTemperatureC) : undefined,
  };
}
