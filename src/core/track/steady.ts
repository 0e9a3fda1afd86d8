/** How far 10 s means of speed may at least lie from the middle, m/s. */
export const STEADY_SPEED = 0.3;

/** What is called steady: how far 10 s means may lie from the middle, and how far the speed may change in all. */
const STEADY = {
  /** Share of the speed, where that is more than `STEADY_SPEED`. */
  speedShare: 0.05,
  /** Degrees; or m/s across where that is more, since a slow boat's heading is less sure. */
  headingDeg: 10,
  across: 0.3,
  /** m/s or share of the speed: less than the range, since a slow gathering of way fills it from end to end. */
  trend: 0.4,
  trendShare: 0.05,
};

/** Slower than this a boat drifts, m/s. */
export const DRIFTING = 0.5;

/** A range this many times the noise of single means holds a long row of them. */
const NOISE_RANGE = 6;

/**
 * How far apart 10 s means of speed, m/s, and heading, degrees, may lie on a steady stretch (common practice, no
 * source); more where the receiver's noise, m/s, asks for it.
 */
export function steadyRange(speed: number, noise: number): { readonly speed: number; readonly headingDeg: number } {
  const across = Math.max(STEADY.across, (NOISE_RANGE / 2) * noise);
  const acrossDeg = (Math.asin(Math.min(1, across / speed)) * 180) / Math.PI;
  return {
    speed: Math.max(2 * STEADY_SPEED, 2 * STEADY.speedShare * speed, NOISE_RANGE * noise),
    headingDeg: 2 * Math.max(STEADY.headingDeg, acrossDeg),
  };
}

/** Largest change of speed from one end of a steady stretch to the other, m/s (common practice, no source). */
export function steadyTrend(speed: number, noise: number): number {
  return Math.max(STEADY.trend, STEADY.trendShare * speed, (NOISE_RANGE / 2) * noise);
}

/** Slope of the straight line through evenly spaced values (least squares), per step; 0 for fewer than 2. */
export function slopeOf(values: ArrayLike<number>): number {
  const middle = (values.length - 1) / 2;
  let [across, along] = [0, 0];
  for (let at = 0; at < values.length; at++) {
    across += (at - middle) * values[at]!;
    along += (at - middle) ** 2;
  }
  return along > 0 ? across / along : 0;
}

export function rangeOf(values: ArrayLike<number>): number {
  let [least, most] = [Infinity, -Infinity];
  for (let at = 0; at < values.length; at++) {
    least = Math.min(least, values[at]!);
    most = Math.max(most, values[at]!);
  }
  return values.length > 0 ? most - least : 0;
}
