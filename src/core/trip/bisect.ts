/** Values between `low` and `high` at which halving asks, to `step`. */
export interface Halving {
  readonly low: number;
  readonly high: number;
  readonly step: number;
}

/**
 * Largest value between `low` and `high` for which a condition that only fails upwards holds, to `step`; undefined
 * where it fails at `low` already.
 */
export function largestHolding(
  holds: (value: number) => boolean,
  low: number,
  high: number,
  step: number,
): number | undefined {
  if (holds(high)) return high;
  if (!holds(low)) return undefined;
  return lastCell(holds, { low, high, step })[0];
}

/** The two neighbouring values of a halving between which a condition turns that holds at its low end only. */
export function lastCell(holds: (value: number) => boolean, { low, high, step }: Halving): readonly [number, number] {
  let good = low;
  let bad = high;
  while (bad - good > step) {
    const middle = (good + bad) / 2;
    if (holds(middle)) good = middle;
    else bad = middle;
  }
  return [good, bad];
}

/** Smallest value for which a condition that only fails downwards holds, to `step`; undefined where it fails at `high`. */
export function smallestHolding(
  holds: (value: number) => boolean,
  low: number,
  high: number,
  step: number,
): number | undefined {
  const mirrored = largestHolding((value) => holds(-value), -high, -low, step);
  return mirrored === undefined ? undefined : -mirrored;
}
