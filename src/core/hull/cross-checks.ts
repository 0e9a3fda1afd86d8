import { FOOT, HORSEPOWER, KNOT, MPH, POUND } from '../units/convert.ts';

// Rules of thumb to hold the method against. Nothing in a plan rests on them.

/**
 * Planing top speed, m/s, by Crouch: C sqrt(P/W). The constant is for mph with pounds and horsepower (172, 218, 240...);
 * lists around 150 are for knots, and mixing them up is the usual mistake. Shaft power W, all-up mass kg.
 */
export function crouchSpeed(constantMph: number, power: number, mass: number): number {
  return constantMph * Math.sqrt(power / HORSEPOWER / (mass / POUND)) * MPH;
}

/**
 * Factor on the planing equations' resistance around the hump; LCG over beam, volume Froude number 1 and more
 * (Blount and Fox 1976, Small-Craft Power Prediction, Marine Technology 13(1); formula from memory).
 */
export function blountFoxFactor(lcgOverBeam: number, froudeVolume: number): number {
  const x = froudeVolume - 0.85;
  return 0.98 + 2 * lcgOverBeam ** 1.45 * Math.exp(-2 * x) - 3 * lcgOverBeam * Math.exp(-3 * x);
}

/** Speed, m/s, at any regime by Wyman's formula (from memory). Shaft power W, all-up mass kg, waterline m. */
export function wymanSpeed(power: number, mass: number, waterline: number): number {
  const k = Math.cbrt((1000 * (power / HORSEPOWER)) / (mass / POUND));
  return ((0.8 * k) / (1 - 0.17 * k)) * Math.sqrt(waterline / FOOT) * KNOT;
}
