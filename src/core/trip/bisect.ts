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
  let good = low;
  let bad = high;
  while (bad - good > step) {
    const middle = (good + bad) / 2;
    if (holds(middle)) good = middle;
    else bad = middle;
  }
  return good;
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
