/** Gauss-Hermite nodes and weights of the standard normal law, five points (Abramowitz and Stegun 25.4.46, from memory). */
export const NODES = [-2.856970013872806, -1.355626179974266, 0, 1.355626179974266, 2.856970013872806] as const;
export const WEIGHTS = [
  0.011257411327720689, 0.22207592200561263, 0.5333333333333333, 0.22207592200561263, 0.011257411327720689,
] as const;

/** Standard normal distribution function; Abramowitz and Stegun 26.2.17, absolute error below 7.5e-8. */
export function normalCdf(x: number): number {
  const z = Math.abs(x);
  const t = 1 / (1 + 0.2316419 * z);
  const poly = t * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  const tail = Math.exp(-0.5 * z * z) * 0.3989422804014327 * poly;
  return x >= 0 ? 1 - tail : tail;
}

/**
 * What a trip may need: for each node of the stream's error the median need, and the spread (standard deviation of
 * the logarithm) of all that multiplies. A node that makes no headway needs Infinity.
 */
export interface Need {
  readonly nodes: readonly number[];
  readonly spread: number;
}

/**
 * Probability that the need stays within what is available, itself known to `availableDeviation` (same unit). Below the
 * need that error counts as a share of the need: as a share of next to nothing it would make an empty tank a toss-up.
 */
export function probabilityWithin(need: Need, available: number, availableDeviation = 0): number {
  if (!(available > 0)) return 0;
  let sum = 0;
  for (let k = 0; k < NODES.length; k++) {
    const node = need.nodes[k]!;
    if (node === Infinity) continue;
    const spread = Math.max(Math.hypot(need.spread, availableDeviation / Math.max(available, node)), 1e-9);
    sum += WEIGHTS[k]! * (node > 0 ? normalCdf(Math.log(available / node) / spread) : 1);
  }
  return Math.min(sum, 1);
}

/** The amount that suffices with probability `p`; Infinity where no amount does. Relative error below 1e-6. */
export function needAt(need: Need, p: number): number {
  const finite = need.nodes.filter((n) => n < Infinity);
  const largest = Math.max(...finite);
  if (finite.length === 0 || largest <= 0) return finite.length === 0 ? Infinity : 0;
  let low = Math.min(...finite) * Math.exp(-6 * need.spread - 1e-9);
  let high = largest * Math.exp(6 * need.spread + 1e-9);
  if (low <= 0) low = largest * 1e-9;
  if (probabilityWithin(need, high) < p) return Infinity;
  for (let i = 0; i < 40; i++) {
    const middle = Math.sqrt(low * high);
    if (probabilityWithin(need, middle) < p) low = middle;
    else high = middle;
  }
  return high;
}
