import type { Hull } from '../craft/shapes.ts';
import { GRAVITY } from '../units/constants.ts';
import { airDrag } from './air-drag.ts';
import { type HullState, hullResistance } from './resistance.ts';

export interface Towed {
  readonly hull: Hull;
  readonly state: HullState;
  /** Frontal area with whoever is aboard, m2. */
  readonly airArea: number;
}

/** Wake of the tug and yaw of the tow (common practice, no source). */
const WAKE_AND_YAW = 1.1;

/** Pull on the tow line, N: the towed boat's own hull and air resistance, a tenth more. Speeds m/s. */
export function towResistance(
  { hull, state, airArea }: Towed,
  { speed, headwind }: { readonly speed: number; readonly headwind: number },
): number {
  const air = airDrag(airArea, hull.airDragCoefficient, { speed, headwind });
  return WAKE_AND_YAW * (hullResistance(hull, state, speed).total + air);
}

/** Fastest a boat of this wetted length should be towed, m/s: length Froude number 0.35 (common practice, no source). */
export function towSpeedCap(wettedLength: number): number {
  return 0.35 * Math.sqrt(GRAVITY * wettedLength);
}
