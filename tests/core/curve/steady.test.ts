import { describe, expect, it } from 'vitest';
import type { Calibration, Craft } from '../../../src/core/craft/shapes.ts';
import { boatOf } from '../../../src/core/curve/boat.ts';
import { SPREADS, varianceOf } from '../../../src/core/curve/factors.ts';
import { lcgSlope, resistanceDeviation, steady, writeGradient } from '../../../src/core/curve/steady.ts';
import { loaded } from './loaded.ts';

const { craft: catamaran, afloat } = loaded('catamaran-3-6', 'petrol-15hp-4s', 'tank-25');

/** Runs on the plane alone, which found the engine to take this share of what was thought; all else was as thought. */
function onThePlane(fuel: number, kp = 1): Craft {
  const deviations = [0.4, 0.05, 1.3, 0.1, 0.01, 0.05, 0.3];
  const calibration: Calibration = {
    factors: [1, kp, 1, 0, 0, fuel, 0],
    covariance: deviations.map((deviation, i) => deviations.map((_, j) => (i === j ? deviation * deviation : 0))),
    runs: 6,
    tried: { mass: [200, 400], speed: [6, 9] },
  };
  return { ...catamaran, calibration };
}

function at(craft: Craft, speed: number): { readonly flow: number; readonly share: number } {
  const boat = boatOf(craft, 'sea', 18);
  const now = steady(boat, afloat, speed);
  const gradient = new Float64Array(SPREADS);
  writeGradient(boat, now, lcgSlope(boat, afloat, speed, now.hull), gradient);
  return { flow: now.flow, share: Math.sqrt(varianceOf(gradient, boat.factors.covariance)) / now.flow };
}

describe('a boat measured on the plane alone', () => {
  it('that took half of what was thought may take at idle what was thought: that lies within one deviation', () => {
    const [thrifty, thought] = [at(onThePlane(0.5), 1), at(catamaran, 1)];
    expect(thrifty.flow / thought.flow).toBeCloseTo(0.5, 2);
    expect(thrifty.share).toBeGreaterThan(0.98 * Math.LN2);
    // About as unsure as without any run, and of the engine beside that.
    expect(thrifty.share).toBeLessThan(Math.hypot(thought.share, Math.LN2) + 0.05);
  });

  it('is no less sure on the plane for it', () => {
    expect(at(onThePlane(0.5), 7).share).toBeCloseTo(at(onThePlane(1), 7).share, 1);
    expect(at(onThePlane(0.5), 7).share).toBeLessThan(0.2);
  });

  it('that took more than was thought is no less sure at idle: what it may save there is not counted on', () => {
    expect(at(onThePlane(1.5), 1).share).toBeLessThanOrEqual(at(onThePlane(1), 1).share);
  });

  it('grows unsure by and by from the slowest run down, without a step', () => {
    const shares = Array.from({ length: 500 }, (_, i) => at(onThePlane(0.5), 6 - i / 100).share);
    expect(shares.at(-1)!).toBeGreaterThan(3 * shares[0]!);
    for (let i = 1; i < shares.length; i++) expect(Math.abs(shares[i]! - shares[i - 1]!)).toBeLessThan(0.03);
  });

  it('doubts in the same way, faster than it was tried, a resistance found to be low', () => {
    const share = (kp: number) => {
      const craft = onThePlane(1, kp);
      const calibration: Calibration = { ...craft.calibration!, tried: { mass: [200, 400], speed: [2, 3] } };
      const boat = boatOf({ ...craft, calibration }, 'sea', 18);
      const now = steady(boat, afloat, 9);
      return resistanceDeviation(boat, now, lcgSlope(boat, afloat, 9, now.hull)) / now.hull.total;
    };
    expect(share(0.7)).toBeGreaterThan(1.2 * share(1));
  });
});
