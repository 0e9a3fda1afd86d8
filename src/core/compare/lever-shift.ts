import { DEGREE } from '../units/convert.ts';

/** Forces and levers on a planing bottom: N, m, degrees. */
export interface Levers {
  readonly weight: number;
  readonly friction: number;
  readonly trimDeg: number;
  /** Of the thrust against the keel, up positive. */
  readonly inclinationDeg: number;
  /** Friction and thrust line below the centre of gravity, square to them. */
  readonly frictionArm: number;
  readonly thrustArm: number;
}

/**
 * How far forward, m, the centre of gravity would have to move for the short form (all forces through it) to have the
 * centre of pressure of the full moment balance. Savitsky 1964, Marine Technology 1(1), eq. 35, solved for the lever
 * of the pressure at a known trim.
 */
export function leverShift({ weight, friction, trimDeg, inclinationDeg, frictionArm, thrustArm }: Levers): number {
  const trim = trimDeg * DEGREE;
  const carried = 1 - Math.sin(trim) * Math.sin(trim + inclinationDeg * DEGREE);
  const moment = (friction / weight) * (frictionArm - thrustArm) - thrustArm * Math.sin(trim);
  return (moment * Math.cos(trim)) / carried;
}
