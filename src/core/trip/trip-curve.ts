import { type Boat, boatOf } from '../curve/boat.ts';
import { curve } from '../curve/curve.ts';
import type { Curve } from '../curve/shapes.ts';
import { usableCharge } from '../drive/battery.ts';
import { fuelMass, usableFuel } from '../drive/tank.ts';
import { balanceAt, balanceBase } from '../load/balance.ts';
import type { Trip } from './shapes.ts';
import { storeGiven } from './store-given.ts';

/** The consumption curve of a trip's boat as it is loaded at departure, with this headwind (m/s) in flat water. */
export function tripCurve(trip: Trip, headwind = 0): Curve {
  const { craft, load, conditions } = trip;
  const { fill, weighs, batteryTemperatureC } = storeGiven(trip);
  const boat: Boat = boatOf(craft, conditions.water, batteryTemperatureC);
  const base = balanceBase(craft, load);
  const tanks = craft.store.kind === 'tank' ? craft.store.tanks : [];
  const now = balanceAt(base, fuelMass(tanks, weighs));
  const usable = boat.bank ? usableCharge(boat.bank, fill) : usableFuel(tanks, fill);
  return curve(boat, { mass: now.allUpMass, lcg: now.lcg, airArea: now.airArea, charge: fill }, usable, {
    headwind,
    waveHeight: 0,
  });
}
