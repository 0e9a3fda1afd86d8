import { DEGREE } from '../units/convert.ts';

/** Mean speed of the water along a flat bottom over boat speed; wetted length in beams (Savitsky 1964). */
export function flatBottomVelocity(trimDeg: number, wettedLengthRatio: number): number {
  return Math.sqrt(1 - (0.012 * trimDeg ** 1.1) / (Math.sqrt(wettedLengthRatio) * Math.cos(trimDeg * DEGREE)));
}

/** The same with the dynamic lift that deadrise takes away (Savitsky 1964, chart of mean bottom velocity). */
export function deadriseBottomVelocity(trimDeg: number, wettedLengthRatio: number, deadriseDeg: number): number {
  const flat = 0.012 * Math.sqrt(wettedLengthRatio) * trimDeg ** 1.1;
  const lift = flat - 0.0065 * deadriseDeg * flat ** 0.6;
  return Math.sqrt(1 - lift / (wettedLengthRatio * Math.cos(trimDeg * DEGREE)));
}
