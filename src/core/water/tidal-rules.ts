import { MINUTE } from '../units/convert.ts';

/** From high to low water of a tide twice a day, on average: a quarter of 24 h 50.5 min, s. */
export const HALF_TIDE = 372.6 * MINUTE;

/** Parts of the range risen at each sixth of the time from low to high water: 1-2-3-3-2-1 twelfths. */
const TWELFTHS = [0, 1 / 12, 3 / 12, 6 / 12, 9 / 12, 11 / 12, 1];

/** Parts of the greatest rate of a stream at each sixth of its run from slack to slack: 0-50-90-100-90-50-0. */
const RATES = [0, 0.5, 0.9, 1, 0.9, 0.5, 0];

/** Part of the range that the rule of twelfths lets the tide rise in a share, 0 to 1, of the time from low to high water. */
export function twelfths(share: number): number {
  return along(TWELFTHS, share);
}

/** Part of the greatest rate that the rule of 50 and 90 gives at a share, 0 to 1, of the time from slack to slack. */
export function fiftyNinety(share: number): number {
  return along(RATES, share);
}

/** Rates of neaps and springs on a day of a range; ranges m at the standard port, rates in any one unit. */
export interface NeapAndSpring {
  readonly neapRate: number;
  readonly springRate: number;
  readonly neapRange: number;
  readonly springRange: number;
}

/**
 * Rate of a stream on a day of a range, by the computation of rates: linear in the range, on beyond neaps and springs, but
 * never below zero (yachting article and tidal stream page). Undefined where springs do not exceed neaps in range.
 */
export function rateOfRange(range: number, of: NeapAndSpring): number | undefined {
  const { neapRate, springRate, neapRange, springRange } = of;
  if (!(springRange > neapRange)) return undefined;
  return Math.max(0, neapRate + ((springRate - neapRate) * (range - neapRange)) / (springRange - neapRange));
}

/**
 * Height between two turns of the tide, m, at a share, 0 to 1, of the time from the first to the second: a cosine, which
 * lies within 1.7 % of the range of the rule of twelfths. Indicative: not for mixed or daily tides, rivers or surges.
 */
export function heightBetween(first: number, second: number, share: number): number {
  return first + ((second - first) * (1 - Math.cos(Math.PI * share))) / 2;
}

function along(sixths: readonly number[], share: number): number {
  const at = Math.min(1, Math.max(0, share)) * 6;
  const before = Math.min(5, Math.floor(at));
  return sixths[before]! + (sixths[before + 1]! - sixths[before]!) * (at - before);
}
