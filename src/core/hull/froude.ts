import { GRAVITY } from '../units/constants.ts';

/** Volume Froude number V / sqrt(g volume^(1/3)): the speed scale of the hump. Speed m/s, all-up mass kg, water kg/m3. */
export function froudeVolume(speed: number, mass: number, density: number): number {
  return speed / Math.sqrt(GRAVITY * Math.cbrt(mass / density));
}

/** Length Froude number V / sqrt(g L): the speed scale of wave making. Speed m/s, wetted length m. */
export function froudeLength(speed: number, wettedLength: number): number {
  return speed / Math.sqrt(GRAVITY * wettedLength);
}

/** Cv = V / sqrt(g b), speed coefficient of planing. Speed m/s, planing beam m (Savitsky 1964). */
export function speedCoefficient(speed: number, beam: number): number {
  return speed / Math.sqrt(GRAVITY * beam);
}
