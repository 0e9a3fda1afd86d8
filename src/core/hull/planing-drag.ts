import type { Water } from '../units/constants.ts';
import { DEGREE } from '../units/convert.ts';
import { ittc57 } from './friction.ts';

export interface WettedBottom {
  /** Mean speed of the water along the bottom, m/s. */
  readonly meanVelocity: number;
  /** Mean wetted length over beam. */
  readonly wettedLengthRatio: number;
  readonly beam: number;
  readonly deadriseDeg: number;
  /** dCF on the friction coefficient. */
  readonly roughness: number;
  readonly water: Water;
}

/** Friction along the bottom, N. Speed coefficient 1 and more (Savitsky 1964, Marine Technology 1(1), row 10). */
export function frictionalDrag(bottom: WettedBottom): number {
  const { meanVelocity, wettedLengthRatio, beam, water } = bottom;
  const length = wettedLengthRatio * beam;
  const coefficient = ittc57((meanVelocity * length) / water.viscosity) + bottom.roughness;
  const area = (length * beam) / Math.cos(bottom.deadriseDeg * DEGREE);
  return 0.5 * water.density * meanVelocity * meanVelocity * area * coefficient;
}

/** Drag of a planing hull, N: the weight's component along the bottom plus friction (Savitsky 1964, row 16). */
export function planingDrag(weight: number, trimDeg: number, friction: number): number {
  return weight * Math.tan(trimDeg * DEGREE) + friction / Math.cos(trimDeg * DEGREE);
}

export interface WettedLengths {
  readonly keel: number;
  readonly chine: number;
}

/** Wetted lengths of keel and chine, m; the chine's turns negative once the chine runs dry (Savitsky 1964). */
export function wettedLengths(bottom: WettedBottom, trimDeg: number): WettedLengths {
  const mean = bottom.wettedLengthRatio * bottom.beam;
  const half = (bottom.beam * Math.tan(bottom.deadriseDeg * DEGREE)) / (2 * Math.PI * Math.tan(trimDeg * DEGREE));
  return { keel: mean + half, chine: mean - half };
}
