import type { Hull } from '../craft/shapes.ts';
import { GRAVITY, type Water } from '../units/constants.ts';
import { DEGREE, FOOT, KNOT } from '../units/convert.ts';
import { froudeVolume } from './froude.ts';
import { planingShare } from './gates.ts';

/** All-up mass kg, and the trim of the planing equations. */
export interface Running {
  readonly mass: number;
  readonly trimDeg: number;
}

// Savitsky and Brown 1976, Procedures for Hydrodynamic Evaluation of Planing Hulls in Smooth and Rough Water (Marine
// Technology 13(4)), as coded in the open library openplaning; the paper itself was not read. Range, for head seas:
// significant wave height over beam, trim, deadrise, overall length over beam, V kn / sqrt(L ft).
const HEIGHT = { low: 0.2, high: 0.7 };
// Half width of the rounding of the cap on wave height.
const CORNER = 0.025;
const TRIM = { low: 3, high: 7 };
const DEADRISE = { low: 10, high: 30 };
const SLENDERNESS = { low: 3, high: 5 };
const SPEED_LENGTH = { low: 2, high: 6 };

/**
 * Resistance that head waves add on the plane, N: the branch for V kn / sqrt(L ft) = 4, times the planing share so that
 * it fades out off the plane. Inputs outside the range act as its edge; below 0.2 beam the waves fade to none.
 */
export function waveAddedResistance(
  hull: Hull,
  { mass, trimDeg }: Running,
  speed: number,
  waveHeight: number,
  water: Water,
): { readonly added: number; readonly inRange: boolean } {
  const h = capped(waveHeight / hull.planingBeam, HEIGHT.high, CORNER);
  const tan = Math.tan(eased(hull.deadriseDeg, DEADRISE) * DEGREE);
  const attitude = 1.76 - eased(trimDeg, TRIM) / 6 - 2 * tan * tan * tan;
  const share = planingShare(froudeVolume(speed, mass, water.density));
  return {
    added: share * 0.3 * mass * GRAVITY * (h / (1 + 2 * h)) * attitude,
    inRange: covered(hull, trimDeg, speed, waveHeight),
  };
}

/** Mean of the upward shocks at the centre of gravity in head waves on the plane, g (same source and limits). */
export function waveAcceleration(
  hull: Hull,
  { mass, trimDeg }: Running,
  speed: number,
  waveHeight: number,
  water: Water,
): { readonly g: number; readonly inRange: boolean } {
  const b = hull.planingBeam;
  const h = capped(waveHeight / b, HEIGHT.high, CORNER);
  // The published line does not start at 0; below its range it is faded so that flat water gives none.
  const fade = Math.min(h / HEIGHT.low, 1);
  const loading = mass / (water.density * b * b * b);
  const speedLength = speed / KNOT / Math.sqrt(hull.length / FOOT);
  const g =
    (0.0104 *
      fade *
      (h + 0.084) *
      (eased(trimDeg, TRIM) / 4) *
      (5 / 3 - eased(hull.deadriseDeg, DEADRISE) / 30) *
      speedLength *
      speedLength *
      (hull.length / b)) /
    loading;
  return { g, inRange: covered(hull, trimDeg, speed, waveHeight) };
}

function covered(hull: Hull, trimDeg: number, speed: number, waveHeight: number): boolean {
  const speedLength = speed / KNOT / Math.sqrt(hull.length / FOOT);
  return (
    within(waveHeight / hull.planingBeam, HEIGHT) &&
    within(trimDeg, TRIM) &&
    within(hull.deadriseDeg, DEADRISE) &&
    within(hull.length / hull.planingBeam, SLENDERNESS) &&
    within(speedLength, SPEED_LENGTH)
  );
}

interface Span {
  readonly low: number;
  readonly high: number;
}

function within(value: number, { low, high }: Span): boolean {
  return value >= low && value <= high;
}

/** The value held to a span whose corners are rounded over a tenth of it, so that the slope never jumps. */
function eased(value: number, { low, high }: Span): number {
  const corner = (high - low) / 20;
  return -capped(-capped(value, high, corner), -low, corner);
}

/** The value up to `corner` below the cap, then a parabola that ends level `corner` beyond it. */
function capped(value: number, cap: number, corner: number): number {
  if (value <= cap - corner) return value;
  if (value < cap + corner) return cap - (cap + corner - value) ** 2 / (4 * corner);
  return cap;
}
