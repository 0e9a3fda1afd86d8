/** One class of the Beaufort scale; m/s and knots at 10 m. */
export interface BeaufortClass {
  readonly force: number;
  readonly min: number;
  readonly max: number;
  readonly minKn: number;
  readonly maxKn: number;
  /** Probable wave height in the open sea, m; much lower on short fetches. */
  readonly probableWave: number;
}

/**
 * Limits of the scale (meteorological pages to force 8, from memory beyond; force 12 has no upper limit) and the WMO's
 * probable wave heights in the open sea (from memory).
 */
export const BEAUFORT: readonly BeaufortClass[] = [
  { force: 0, min: 0, max: 0.2, minKn: 0, maxKn: 0, probableWave: 0 },
  { force: 1, min: 0.3, max: 1.5, minKn: 1, maxKn: 3, probableWave: 0.1 },
  { force: 2, min: 1.6, max: 3.3, minKn: 4, maxKn: 6, probableWave: 0.2 },
  { force: 3, min: 3.4, max: 5.4, minKn: 7, maxKn: 10, probableWave: 0.6 },
  { force: 4, min: 5.5, max: 7.9, minKn: 11, maxKn: 16, probableWave: 1 },
  { force: 5, min: 8, max: 10.7, minKn: 17, maxKn: 21, probableWave: 2 },
  { force: 6, min: 10.8, max: 13.8, minKn: 22, maxKn: 27, probableWave: 3 },
  { force: 7, min: 13.9, max: 17.1, minKn: 28, maxKn: 33, probableWave: 4 },
  { force: 8, min: 17.2, max: 20.7, minKn: 34, maxKn: 40, probableWave: 5.5 },
  { force: 9, min: 20.8, max: 24.4, minKn: 41, maxKn: 47, probableWave: 7 },
  { force: 10, min: 24.5, max: 28.4, minKn: 48, maxKn: 55, probableWave: 9 },
  { force: 11, min: 28.5, max: 32.6, minKn: 56, maxKn: 63, probableWave: 11.5 },
  { force: 12, min: 32.7, max: Infinity, minKn: 64, maxKn: Infinity, probableWave: 14 },
];

/** The scale is written in tenths of a metre per second: half a tenth below a limit still rounds up to it. */
const HALF_TENTH = 0.05;

/** Force of a wind, m/s. */
export function beaufortOf(speed: number): number {
  let force = 0;
  for (const { force: next, min } of BEAUFORT) if (speed >= min - HALF_TENTH) force = next;
  return force;
}

/** Wind in the middle of a class, m/s, for when only the force, 0 to 12, is known; force 12 gives its lower limit. */
export function beaufortMiddle(force: number): number {
  const { min, max } = BEAUFORT[Math.min(12, Math.max(0, Math.round(force)))]!;
  return max < Infinity ? (min + max) / 2 : min;
}

/** Rise of one Beaufort force around this wind, m/s, from U = 0.836 B^1.5 (WMO, from memory). */
export function oneForceMore(speed: number): number {
  const force = Math.cbrt((speed / 0.836) ** 2);
  return 0.836 * (force + 1) ** 1.5;
}
