/** Gravity, m/s2, as in the growth laws. */
const G = 9.81;

/** Length and speeds of deep-water waves of a period, s: m and m/s (linear theory; groups run at half the speed). */
export function deepWaterWave(period: number): {
  readonly length: number;
  readonly speed: number;
  readonly groupSpeed: number;
} {
  const speed = (G * period) / (2 * Math.PI);
  return { length: speed * period, speed, groupSpeed: speed / 2 };
}

/** Heights met in one sea of a significant height, m (boat owners' association wave article). */
export function heightsMet(significant: number): {
  readonly mean: number;
  readonly highestTenth: number;
  readonly highestHundredth: number;
  /** Single waves to expect. */
  readonly single: number;
} {
  return {
    mean: 0.64 * significant,
    highestTenth: 1.27 * significant,
    highestHundredth: 1.67 * significant,
    single: 2 * significant,
  };
}
