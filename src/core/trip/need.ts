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
  readonly spreads: readonly number[];
}

/** Below this a spread counts as none; it keeps the division finite. */
const LEAST_SPREAD = 1e-9;

/**
 * Probability that the need stays within what is available, itself normal with `availableDeviation` (same unit); 0 where
 * nothing is available. Absolute error of the sum below 1e-4; below 5e-3 where the tank may well be empty.
 */
export function probabilityWithin(need: Need, available: number, availableDeviation = 0): number {
  if (!(available > 0)) return 0;
  let sum = 0;
  for (let k = 0; k < NODES.length; k++) {
    const node = need.nodes[k]!;
    if (node === Infinity) continue;
    const spread = Math.max(need.spreads[k]!, LEAST_SPREAD);
    sum += WEIGHTS[k]! * (node > 0 ? chanceWithin(node, spread, available, availableDeviation) : 1);
  }
  return Math.min(sum, 1);
}

/** The sum over one deviate reaches this far, in steps so fine that a smooth law is met to the last digits told. */
const FAR_OUT = 5;
const STEP = 0.25;

/**
 * A lognormal need within a normal amount: summed over the deviate of whichever is known better, so that the other's law
 * is smooth over a step.
 */
function chanceWithin(median: number, spread: number, available: number, deviation: number): number {
  if (!(deviation > 0)) return normalCdf(Math.log(available / median) / spread);
  const overNeed = spread < deviation / available;
  let sum = 0;
  let weights = 0;
  for (let u = -FAR_OUT; u <= FAR_OUT; u += STEP) {
    const weight = Math.exp(-0.5 * u * u);
    weights += weight;
    const amount = available + deviation * u;
    if (overNeed) sum += weight * normalCdf((available - median * Math.exp(spread * u)) / deviation);
    else if (amount > 0) sum += weight * normalCdf(Math.log(amount / median) / spread);
  }
  return sum / weights;
}

/**
 * The amount that suffices with probability `p`; Infinity where no amount does. Newton in the logarithm, held between
 * bounds that close in; relative error below 1e-11.
 */
export function needAt({ nodes, spreads }: Need, p: number): number {
  const logs = nodes.map(Math.log);
  let low = Infinity;
  let high = -Infinity;
  let sure = 0;
  let middle = 0;
  for (let k = 0; k < NODES.length; k++) {
    const log = logs[k]!;
    if (log === Infinity) continue;
    const spread = Math.max(spreads[k]!, LEAST_SPREAD);
    low = Math.min(low, log - 6 * spread);
    high = Math.max(high, log + 6 * spread);
    sure += WEIGHTS[k]!;
    middle += WEIGHTS[k]! * log;
  }
  if (high === -Infinity) return sure > 0 ? 0 : Infinity;
  // Six deviations leave a thousand-millionth beyond.
  if (sure * (1 - 1e-9) < p) return Infinity;
  let at = Math.min(Math.max(middle / sure, low), high);
  for (let step = 0; step < 60; step++) {
    let excess = -p;
    let slope = 0;
    for (let k = 0; k < NODES.length; k++) {
      if (logs[k] === Infinity) continue;
      const spread = Math.max(spreads[k]!, LEAST_SPREAD);
      const z = (at - logs[k]!) / spread;
      excess += WEIGHTS[k]! * normalCdf(z);
      slope += (WEIGHTS[k]! * Math.exp(-0.5 * z * z)) / spread;
    }
    if (excess < 0) low = at;
    else high = at;
    const newton = at - (excess * Math.sqrt(2 * Math.PI)) / slope;
    const next = newton > low && newton < high ? newton : (low + high) / 2;
    if (Math.abs(next - at) < 1e-12) return Math.exp(next);
    at = next;
  }
  return Math.exp(at);
}
