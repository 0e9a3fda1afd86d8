import { describe, expect, it } from 'vitest';
import { fullThrottle, pitched, revsOf } from '../../../src/core/compare/full-throttle.ts';
import { SPREADS } from '../../../src/core/curve/factors.ts';
import { loadedWith } from './boats.ts';

const { boat, afloat } = loadedWith('catamaran-3-6', 'petrol-15hp-4s', 'tank-25');
/** The same boat, known but for one factor and the rating of its engine. */
function knownBut(factor: number, deviation: number, rating = 0) {
  const covariance = new Float64Array(SPREADS * SPREADS);
  covariance[factor * SPREADS + factor] = deviation ** 2;
  const power = { ...boat.factors.power, deviation: rating };
  return { ...boat, factors: { ...boat.factors, covariance, power } };
}
const PITCH = 4;

describe('the revs at full throttle', () => {
  it('of a boat known exactly are one figure', () => {
    const { rpm } = fullThrottle(knownBut(PITCH, 0), afloat);
    expect(rpm.low).toBe(rpm.median);
    expect(rpm.high).toBe(rpm.median);
  });

  it('are as unsure as the pitch makes them: 10 to 90 % are 1.28 deviations to either side', () => {
    const pitch = boat.model.propeller.pitch;
    const { rpm } = fullThrottle(knownBut(PITCH, 0.02 * pitch), afloat);
    const turns = (share: number) => revsOf(pitched(boat, share * pitch), afloat).rpm;
    // What 4 % of pitch, half of it each way, does to the revs.
    const half = (turns(-0.02) - turns(0.02)) / 2;
    expect(half).toBeGreaterThan(0);
    expect((rpm.high - rpm.median) / (1.2816 * half)).toBeCloseTo(1, 1);
    expect(rpm.high - rpm.median).toBeCloseTo(rpm.median - rpm.low, 9);
  });

  it('are unsure by the rating too, both together as the root of their squares', () => {
    const wide = (deviation: number, rating: number) => {
      const { rpm } = fullThrottle(knownBut(PITCH, deviation, rating), afloat);
      return rpm.high - rpm.median;
    };
    const pitch = 0.02 * boat.model.propeller.pitch;
    expect(wide(0, 0.1)).toBeGreaterThan(0);
    expect(wide(0, 0.2)).toBeCloseTo(2 * wide(0, 0.1), 6);
    expect(wide(pitch, 0.1)).toBeCloseTo(Math.hypot(wide(pitch, 0), wide(0, 0.1)), 6);
  });

  it('fall with more pitch', () => {
    expect(revsOf(pitched(boat, 0.02), afloat).rpm).toBeLessThan(revsOf(boat, afloat).rpm);
    expect(pitched(boat, 0.02).model.propeller.pitch - boat.model.propeller.pitch).toBeCloseTo(0.02, 12);
  });
});
