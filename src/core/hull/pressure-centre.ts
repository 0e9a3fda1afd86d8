/**
 * Centre of pressure forward of the transom over mean wetted length: 0.75 at high speed, 0.33 at rest. Wetted length
 * in beams, speed coefficient Cv (Savitsky 1964, Marine Technology 1(1), centre of pressure of planing surfaces).
 */
export function centreOfPressure(wettedLengthRatio: number, speedCoefficient: number): number {
  const v = speedCoefficient / wettedLengthRatio;
  return 0.75 - 1 / (5.21 * v * v + 2.39);
}

/**
 * Wetted length in beams that puts the centre of pressure this many beams forward of the transom.
 * Unique: the lever grows by more than 0.29 beam per beam of wetted length. Newton, machine precision in 4 steps.
 */
export function wettedLengthForLever(lever: number, speedCoefficient: number): number {
  let length = lever / 0.62;
  for (let step = 0; step < 4; step++) {
    const v = speedCoefficient / length;
    const y = 5.21 * v * v;
    const q = y + 2.39;
    length -= (length * (0.75 - 1 / q) - lever) / (0.75 - (3 * y + 2.39) / (q * q));
  }
  return length;
}
