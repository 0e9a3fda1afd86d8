// Trim above which a planing hull may start to porpoise. A caution, never a pass: both limits were made for rigid
// prismatic hulls, and soft twin tubes have not been tested.

/** Range of the chart in x = sqrt(CLb / 2) and deadrise; the fit is a polynomial and runs wild outside. */
const CHART = { low: 0.13, high: 0.3, deadriseDeg: 20 };

/**
 * Limit from the porpoising chart of Savitsky 1964, as the polynomial fit coded in the open library openplaning:
 * cubics in sqrt(CLb / 2) at deadrise 0, 10 and 20 degrees, quadratic between. Inputs are held to the chart's edge.
 */
export function chartLimitDeg(deadriseDeg: number, liftCoefficient: number): number {
  const x = Math.min(Math.max(Math.sqrt(liftCoefficient / 2), CHART.low), CHART.high);
  const d = Math.min(Math.max(deadriseDeg, 0), CHART.deadriseDeg) / 10;
  const flat = ((-376.37 * x + 329.74) * x - 38.485) * x + 1.3415;
  const ten = ((-356.05 * x + 314.36) * x - 41.674) * x + 3.5786;
  const twenty = ((-254.51 * x + 239.65) * x - 23.936) * x + 3.0195;
  return (flat * (1 - d) * (2 - d)) / 2 + ten * d * (2 - d) + (twenty * d * (d - 1)) / 2;
}

/** Limit of Celano 1998 (from memory); rises without bound as deadrise goes to 0. */
export function celanoLimitDeg(deadriseDeg: number, liftCoefficient: number): number {
  if (deadriseDeg <= 0) return Infinity;
  const x = Math.sqrt(liftCoefficient / 2);
  return 0.1197 * deadriseDeg ** 0.7651 * Math.exp(15.7132 * x * deadriseDeg ** -0.2629);
}

/** The stricter of both limits, degrees of short-form trim. */
export function porpoisingLimitDeg(deadriseDeg: number, liftCoefficient: number): number {
  return Math.min(chartLimitDeg(deadriseDeg, liftCoefficient), celanoLimitDeg(deadriseDeg, liftCoefficient));
}

/** Whether the chart covers this lift and deadrise; outside, the limit is that of the chart's edge. */
export function porpoisingLimitCovers(deadriseDeg: number, liftCoefficient: number): boolean {
  const x = Math.sqrt(liftCoefficient / 2);
  return x >= CHART.low && x <= CHART.high && deadriseDeg >= 0 && deadriseDeg <= CHART.deadriseDeg;
}

/** Worth a caution: planing clear of the hump (volume Froude number above 2.5) at more trim than the limit. */
export function mayPorpoise(
  deadriseDeg: number,
  running: { readonly shortFormTrimDeg: number; readonly liftCoefficient: number; readonly froudeVolume: number },
): boolean {
  return (
    running.froudeVolume > 2.5 && running.shortFormTrimDeg > porpoisingLimitDeg(deadriseDeg, running.liftCoefficient)
  );
}
