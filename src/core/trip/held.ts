import type { Boat } from '../curve/boat.ts';
import { HUMP_MARGIN, marginOf } from '../curve/hump.ts';
import { lcgSlope, resistanceDeviation, type Steady } from '../curve/steady.ts';
import { normalCdf } from './need.ts';
import type { Remembered } from './remembered.ts';
import type { Sailed } from './sail.ts';
import type { Verdict } from './shapes.ts';

/** Power asked grows faster than resistance on a propeller held at one speed (derived from the drive method). */
const POWER_OVER_RESISTANCE = 1.2;

/** A speed held by fewer than three of four such boats is not one to rely on (our rule). */
export const HELD_IN = 0.75;

/** Probability that the drive holds a speed, from the spread of resistance and rated power. */
export function heldProbability(
  boat: Boat,
  { afloat, speed, steady: now }: Pick<Sailed, 'afloat' | 'speed' | 'steady'>,
  remembered?: Remembered,
): number {
  const margin = marginOf(boat, afloat, now.drive);
  if (margin > 3) return 1;
  const slope = remembered?.slope(boat, afloat, speed, now.hull) ?? lcgSlope(boat, afloat, speed, now.hull);
  return normalCdf(Math.log(margin) / marginSpread(boat, now, slope));
}

/** Standard deviation of the logarithm of the margin; `slope` comes from `lcgSlope`. */
export function marginSpread(boat: Boat, now: Steady, slope: number): number {
  const deviation = resistanceDeviation(boat, now, slope);
  const share = deviation / Math.max(now.resistance, 1e-9);
  return Math.hypot(POWER_OVER_RESISTANCE * share, boat.factors.power.deviation);
}

/** Go: over the hump with power to spare; no-go: not over it. */
export function humpVerdict(margin: number): Verdict {
  return margin < 1 ? 'no-go' : margin < HUMP_MARGIN ? 'marginal' : 'go';
}
