import { describe, expect, it } from 'vitest';
import type { OverGround } from '../../../src/core/track/over-ground.ts';
import { speedNoise } from '../../../src/core/track/speed-noise.ts';

const piece = (speeds: readonly number[]): OverGround => ({
  start: 0,
  speed: Float64Array.from(speeds),
  headingDeg: new Float64Array(speeds.length),
});
/** Windows of ten seconds that do not overlap lie two steps apart: so far off, then as far the other way. */
const wavering = (off: number, count = 20) =>
  piece(Array.from({ length: count }, (_, at) => 5 + (at % 4 < 2 ? off : -off)));

/** A second difference of three deviates varies by 1 + 4 + 1; a quarter of absolute deviates lies below 0.3186. */
const deviationOf = (quarter: number) => quarter / 0.3186 / Math.sqrt(6);

describe('speedNoise', () => {
  it('is none at a steady speed and none at a steady gain', () => {
    expect(speedNoise([piece(Array(20).fill(6))])).toBe(0);
    expect(speedNoise([piece(Array.from({ length: 20 }, (_, at) => 2 + at / 8))])).toBe(0);
  });

  it('is told from second differences', () => {
    expect(speedNoise([wavering(0.01)])).toBeCloseTo(deviationOf(0.04), 12);
    expect(speedNoise([wavering(0.02)])).toBeCloseTo(deviationOf(0.08), 12);
  });

  it('is told from the lowest quarter: what is rough beyond that is the way of the boat', () => {
    // Pieces of five moments have one difference each: a quarter of eight begins at the third.
    const pieces = [0.05, 1, 0.01, 1, 0.03, 1, 0.02, 1].map((off) => piece([off, 0, 0, 0, 0]));
    expect(speedNoise(pieces)).toBeCloseTo(deviationOf(0.03), 12);
  });

  it('is never more than 0.2 m/s', () => {
    expect(speedNoise([wavering(0.03)])).toBeLessThan(0.2);
    expect(speedNoise([wavering(1)])).toBe(0.2);
  });

  it('takes no difference from one piece to the next, and knows nothing of short ones', () => {
    expect(speedNoise([piece(Array(8).fill(4)), piece(Array(8).fill(9))])).toBe(0);
    expect(speedNoise([wavering(1, 4)])).toBe(0);
    expect(speedNoise([])).toBe(0);
    expect(speedNoise([wavering(0.01, 5)])).toBeCloseTo(deviationOf(0.04), 12);
  });
});
