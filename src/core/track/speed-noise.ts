import { type OverGround, STEP, WINDOW } from './over-ground.ts';

/** Windows that do not overlap are so many moments apart. */
const APART = WINDOW / STEP;
/** Beyond this a track is too rough for its speeds to be told apart, m/s. */
const MOST = 0.2;
/** Of the absolute value of a normal deviate, a quarter lies below this many standard deviations. */
const QUARTILE = 0.3186;

/**
 * Standard deviation that the receiver gives 10 s means of speed, m/s, at most 0.2. From second differences, which a
 * steady speed and a steady gain do not touch; their lowest quarter, since the rest is the boat's own doing.
 */
export function speedNoise(pieces: readonly OverGround[]): number {
  const differences = pieces.flatMap(({ speed }) => {
    const count = Math.max(0, speed.length - 2 * APART);
    return Array.from({ length: count }, (_, at) =>
      Math.abs(speed[at]! - 2 * speed[at + APART]! + speed[at + 2 * APART]!),
    );
  });
  const quarter = Float64Array.from(differences).sort()[differences.length >> 2] ?? 0;
  return Math.min(MOST, quarter / QUARTILE / Math.sqrt(6));
}
