import { type Afloat, type Boat, boatOf } from '../curve/boat.ts';
import { bowDownSpeed } from '../curve/bow-down.ts';
import { curve } from '../curve/curve.ts';
import type { Curve } from '../curve/shapes.ts';
import { steady } from '../curve/steady.ts';
import { usableCharge } from '../drive/battery.ts';
import { fuelMass, usableFuel } from '../drive/tank.ts';
import { balance as balanceOf, type LoadBalance } from '../load/balance.ts';
import type { FloatLacks } from '../load/float-body.ts';
import { type Float, floatOf } from '../load/float-of.ts';
import type { Trip } from './shapes.ts';
import { storeGiven } from './store-given.ts';

/** The boat in motion: m/s; bow up in degrees; keel's aft end under the still water, m. */
export interface Running {
  readonly speed: number;
  readonly trimDeg: number;
  readonly sternUnder: number;
  readonly planes: boolean;
}

/** How a loaded boat lies at rest and under way, in still water. */
export interface Attitude {
  readonly balance: LoadBalance;
  readonly float: Float | FloatLacks;
  readonly curve: Curve;
  /** On the plane with the bow down from here on; undefined where the engine does not get it there. */
  readonly planesFrom: number | undefined;
  /** At the planned speed, on the hump, and where it planes well; undefined where it does not get there. */
  readonly planned: Running;
  readonly hump: Running;
  readonly planing: Running | undefined;
}

/** Over the speed where planing begins the boat runs clean (method: volume Froude number 2.7 over 2.2). */
const CLEAN = 1.23;

/** Attitude of the trip's boat at departure; `speed` is the planned one, m/s. */
export function attitudeOf({ craft, load, conditions }: Trip, speed: number): Attitude {
  const { fill, weighs, batteryTemperatureC } = storeGiven({ craft, load, conditions });
  const boat = boatOf(craft, conditions.water, batteryTemperatureC);
  const tanks = craft.store.kind === 'tank' ? craft.store.tanks : [];
  const storeMass = fuelMass(tanks, weighs);
  const balance = balanceOf(craft, load, storeMass);
  const afloat = { mass: balance.allUpMass, lcg: balance.lcg, airArea: balance.airArea, charge: fill };
  const drawn = curve(boat, afloat, boat.bank ? usableCharge(boat.bank, fill) : usableFuel(tanks, fill));
  const float = floatOf(craft, load, { storeMass, density: boat.water.density });
  const at = (v: number): Running => running(boat, afloat, float, v);
  return {
    balance,
    float,
    curve: drawn,
    planesFrom: planesFrom(boat, afloat, drawn),
    planned: at(speed),
    hump: at(drawn.humpSpeed),
    planing:
      drawn.planingSpeed === undefined ? undefined : at(Math.min(drawn.planingSpeed * CLEAN, drawn.topSpeed.median)),
  };
}

/** The speed to plane: over the hump, bow down, and within what the engine holds. */
export function planesFrom(boat: Boat, afloat: Afloat, { planingSpeed, topSpeed }: Curve): number | undefined {
  if (planingSpeed === undefined || !topSpeed.reached) return undefined;
  const down = bowDownSpeed(boat, afloat);
  // A boat that never lifts its bow does not plane any sooner for it.
  const speed = down && Math.max(down, planingSpeed);
  return speed !== undefined && speed <= topSpeed.median ? speed : undefined;
}

/** From the draft at rest to the wetted length of planing, by the share of the boat that planes. */
function running(boat: Boat, afloat: Afloat, float: Float | FloatLacks, speed: number): Running {
  const { hull } = boat.craft;
  const now = steady(boat, afloat, speed).hull;
  const slope = Math.tan((now.trimDeg * Math.PI) / 180);
  const rest = typeof float === 'string' || float.rest.state !== 'afloat' ? undefined : float.rest;
  const atRest = (rest?.draft ?? 0.15) + (slope * hull.wettedLength) / 2;
  const planing = Math.min(now.wettedLengthRatio * hull.planingBeam, hull.wettedLength) * slope;
  const share = now.planingShare;
  return {
    speed,
    trimDeg: now.trimDeg,
    sternUnder: (1 - share) * atRest + share * planing,
    planes: now.froudeVolume >= 2.2,
  };
}
