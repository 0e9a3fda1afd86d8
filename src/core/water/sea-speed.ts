/**
 * Significant wave height over hull length, and the share of the calm-water planing speed kept: middles of the classes
 * below 0.05, to 0.10 and to 0.15 (common practice, no source; no published law was found).
 */
const KEPT = [
  [0.025, 1],
  [0.075, 0.8],
  [0.125, 0.6],
] as const;

/** Above this height over length the boat is off the plane (common practice, no source). */
const OFF_THE_PLANE = 0.15;

/** Planning limits as wave height over length of open boats of 2.3 to 6 m (common practice, no source). */
const FINE = 0.08;
const CARE = 0.13;

/**
 * Default share of the planing speed kept in waves of a significant height, m, by a hull of a length, m: linear between
 * the classes. Undefined: displacement speed. A head sea is the worst of it; the owner's trials go before.
 */
export function planingSpeedKept(waveHeight: number, hullLength: number): number | undefined {
  const ratio = waveHeight / hullLength;
  if (ratio > OFF_THE_PLANE) return undefined;
  for (let at = 0; at < KEPT.length; at++) {
    const [upTo, kept] = KEPT[at]!;
    if (ratio > upTo) continue;
    if (at === 0) return kept;
    const [below, keptBelow] = KEPT[at - 1]!;
    return keptBelow + ((kept - keptBelow) * (ratio - below)) / (upTo - below);
  }
  return KEPT[KEPT.length - 1]![1];
}

export interface SeaLimits {
  /** Significant wave heights, m: fine up to the first, with care up to the second, not above. */
  readonly fine: number;
  readonly care: number;
}

/** Planning limits of an open boat by hull length, m; the design category's limit goes before where it is lower. */
export function seaLimits(hullLength: number): SeaLimits {
  return { fine: FINE * hullLength, care: CARE * hullLength };
}
