import type { Hull } from '../craft/shapes.ts';
import { GRAVITY } from '../units/constants.ts';

/** What a hull makes without climbing its bow wave, m/s: length Froude number 0.35. */
export function easySpeed({ wettedLength }: Hull): number {
  return 0.35 * Math.sqrt(GRAVITY * wettedLength);
}
