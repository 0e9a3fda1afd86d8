import { batteryPowerLimit } from '../drive/battery-power.ts';
import type { DrivePoint } from '../drive/demand.ts';
import type { HullResistance } from '../hull/resistance.ts';
import { GRAVITY } from '../units/constants.ts';
import type { Afloat, Boat } from './boat.ts';
import { steady, stillWater, type Weather } from './steady.ts';

/** Power over demand that carries a boat over its hump (common practice, no source). */
export const HUMP_MARGIN = 1.05;

/** Volume Froude numbers between which trim and wave-making peak, and from which on a boat planes. */
const FROM = 1.2;
export const PLANING_FROUDE = 2.2;
const STEPS = 10;

/** Available over demanded power, rev limit over revs, or battery limit over input, the smallest: 1 or more holds this speed. */
export function marginOf(boat: Boat, afloat: Afloat, drive: DrivePoint): number {
  const power = drive.throttle > 0 ? 1 / drive.throttle : 99;
  const revs = drive.revShare > 0 ? boat.model.revLimit / drive.revShare : 99;
  return Math.min(power, revs, batteryMargin(boat, afloat, drive), 99);
}

/** What the battery gives at this charge and temperature over what the motor asks; large for petrol. */
export function batteryMargin(boat: Boat, { charge = 1 }: Afloat, drive: DrivePoint): number {
  return boat.bank && drive.flow > 0 ? batteryPowerLimit(boat.bank, charge) / drive.flow : 99;
}

/** Speed (m/s) at a volume Froude number for this mass afloat. */
export function speedAtFroude(boat: Boat, afloat: Afloat, froude: number): number {
  return froude * Math.sqrt(GRAVITY * Math.cbrt(afloat.mass / boat.water.density));
}

/** Speeds of the climb onto the plane, slowest first, m/s. */
function climb(boat: Boat, afloat: Afloat, i: number): number {
  return speedAtFroude(boat, afloat, FROM + ((PLANING_FROUDE - FROM) * i) / STEPS);
}

/** The bare hull at each speed of the climb, as far as worked out: for one mass and centre of gravity in any weather. */
export type ClimbHulls = HullResistance[];

/** The tightest speed of the climb onto the plane, or up to `top` (m/s), and its margin. */
export function humpOf(
  boat: Boat,
  afloat: Afloat,
  weather: Weather,
  top = Infinity,
  hulls: ClimbHulls = [],
): { speed: number; margin: number } {
  let speed = 0;
  let margin = Infinity;
  for (let i = 0; i <= STEPS; i++) {
    const v = climb(boat, afloat, i);
    if (v > top) break;
    const hull = hulls[i] ?? stillWater(boat, afloat, v);
    hulls[i] = hull;
    const here = marginOf(boat, afloat, steady(boat, afloat, v, weather, hull).drive);
    if (here < margin) {
      margin = here;
      speed = v;
    }
  }
  return { speed, margin };
}

/** The first speed of the climb up to `top` (m/s) that is not held; undefined where the way up is clear. */
export function firstStop(boat: Boat, afloat: Afloat, weather: Weather, top: number): number | undefined {
  for (let i = 0; i <= STEPS; i++) {
    const v = climb(boat, afloat, i);
    if (v >= top) return undefined;
    if (marginOf(boat, afloat, steady(boat, afloat, v, weather).drive) < 1) return v;
  }
  return undefined;
}
