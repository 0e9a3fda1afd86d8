import { FULL_FILL } from '../drive/tank.ts';
import { smallestHolding } from './bisect.ts';
import { fuelVerdict } from './fuel-verdict.ts';
import type { Prepared } from './prepare.ts';

/** Share of capacity to which this store is filled. */
export function fullFill(prepared: Prepared): number {
  return prepared.burns ? FULL_FILL : 1;
}

/**
 * Least share of capacity, its own weight counted, with which fuel or charge makes this trip a go; undefined where a
 * full tank or battery is not enough. To 0.5 %.
 */
export function fillNeeded(prepared: Prepared, spread: number, humpSpeed: number | undefined): number | undefined {
  const goes = (fill: number): boolean => fuelVerdict(prepared, { fill, spread, humpSpeed }).verdict === 'go';
  return smallestHolding(goes, 0, fullFill(prepared), 0.005);
}
