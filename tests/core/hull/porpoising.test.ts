import { describe, expect, it } from 'vitest';
import {
  celanoLimitDeg,
  chartLimitDeg,
  mayPorpoise,
  porpoisingLimitCovers,
  porpoisingLimitDeg,
} from '../../../src/core/hull/porpoising.ts';

describe('porpoisingLimitDeg', () => {
  it('is the stricter of the two limits', () => {
    for (const deadrise of [5, 12, 18])
      for (const lift of [0.05, 0.08, 0.15]) {
        const both = [chartLimitDeg(deadrise, lift), celanoLimitDeg(deadrise, lift)];
        expect(porpoisingLimitDeg(deadrise, lift)).toBe(Math.min(...both));
      }
  });

  it('allows more trim to a deeper V and to a heavier or slower boat', () => {
    expect(porpoisingLimitDeg(18, 0.08)).toBeGreaterThan(porpoisingLimitDeg(5, 0.08));
    expect(porpoisingLimitDeg(12, 0.12)).toBeGreaterThan(porpoisingLimitDeg(12, 0.06));
  });

  it('leaves a flat bottom to the chart alone', () => {
    expect(celanoLimitDeg(0, 0.08)).toBe(Infinity);
    expect(porpoisingLimitDeg(0, 0.08)).toBe(chartLimitDeg(0, 0.08));
  });

  it('holds to the edge of the chart outside it, and says so', () => {
    expect(chartLimitDeg(10, 0.001)).toBe(chartLimitDeg(10, 0.02));
    expect(chartLimitDeg(40, 0.1)).toBe(chartLimitDeg(20, 0.1));
    expect(porpoisingLimitCovers(10, 0.08)).toBe(true);
    expect(porpoisingLimitCovers(10, 0.03)).toBe(false);
    expect(porpoisingLimitCovers(10, 0.2)).toBe(false);
    expect(porpoisingLimitCovers(25, 0.08)).toBe(false);
    // Both ends of it included: a flat bottom, 20 degrees, and the loads at which the root is 0.13 and 0.3.
    expect([0, 20].map((deadrise) => porpoisingLimitCovers(deadrise, 0.08))).toEqual([true, true]);
    expect([-0.1, 20.1].map((deadrise) => porpoisingLimitCovers(deadrise, 0.08))).toEqual([false, false]);
    expect([0.0337, 0.0339, 0.1799, 0.1801].map((lift) => porpoisingLimitCovers(10, lift))).toEqual([
      false,
      true,
      true,
      false,
    ]);
  });
});

describe('mayPorpoise', () => {
  const running = { shortFormTrimDeg: 7, liftCoefficient: 0.08, froudeVolume: 3 };

  it('warns of a bow held high at speed', () => {
    expect(mayPorpoise(12, running)).toBe(true);
    expect(mayPorpoise(12, { ...running, shortFormTrimDeg: 3 })).toBe(false);
  });

  it('says nothing on the hump, where every bow is high', () => {
    expect(mayPorpoise(12, { ...running, froudeVolume: 2 })).toBe(false);
  });
});
