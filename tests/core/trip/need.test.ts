import { describe, expect, it } from 'vitest';
import { NODES, needAt, normalCdf, probabilityWithin, WEIGHTS } from '../../../src/core/trip/need.ts';

const plain = (need: number, spread: number) => ({ nodes: Array(5).fill(need), spreads: Array(5).fill(spread) });

describe('the normal law', () => {
  it('is that of the tables', () => {
    for (const [x, p] of [
      [0, 0.5],
      [0.5, 0.691462461],
      [1, 0.841344746],
      [1.6448536, 0.95],
      [3, 0.998650102],
    ] as const) {
      expect(Math.abs(normalCdf(x) - p)).toBeLessThan(1e-7);
      expect(Math.abs(normalCdf(-x) - (1 - p))).toBeLessThan(1e-7);
    }
  });

  it('has nodes that keep its moments to the eighth', () => {
    const moment = (power: number) => NODES.reduce((sum: number, node, k) => sum + WEIGHTS[k]! * node ** power, 0);
    expect([0, 2, 4, 6, 8].map((power) => Math.round(moment(power) * 1e6) / 1e6)).toEqual([1, 1, 3, 15, 105]);
    expect([1, 3].map((power) => Math.abs(moment(power)) < 1e-9)).toEqual([true, true]);
  });
});

describe('what a trip may need', () => {
  it('is the median at a half, and so many deviations of its logarithm off elsewhere', () => {
    expect(needAt(plain(8, 0.2), 0.5)).toBeCloseTo(8, 6);
    expect(needAt(plain(8, 0.2), 0.95)).toBeCloseTo(8 * Math.exp(1.6448536 * 0.2), 5);
    expect(needAt(plain(8, 0.2), 0.1)).toBeCloseTo(8 * Math.exp(-1.2815516 * 0.2), 5);
    expect(needAt(plain(8, 0), 0.95)).toBeCloseTo(8, 6);
  });

  it('and the chance of what is aboard turn into each other, streams that differ included', () => {
    const need = { nodes: [3, 5, 8, 12, 20], spreads: [0.1, 0.12, 0.15, 0.2, 0.3] };
    for (const p of [0.01, 0.1, 0.5, 0.9, 0.95, 0.99])
      expect(probabilityWithin(need, needAt(need, p))).toBeCloseTo(p, 6);
    expect(probabilityWithin(need, 8)).toBeGreaterThan(0.4);
  });

  it('is endless as often as some stream lets nobody home', () => {
    const need = { nodes: [3, 5, 8, 12, Infinity], spreads: Array(5).fill(0.1) };
    expect(needAt(need, 0.9)).toBeLessThan(20);
    expect(needAt(need, 0.99)).toBe(Infinity);
    expect(probabilityWithin(need, 1e9)).toBeCloseTo(1 - WEIGHTS[4]!, 9);
    expect(needAt(plain(Infinity, 0.1), 0.5)).toBe(Infinity);
  });

  it('of a trip that needs nothing is nothing', () => {
    expect(needAt(plain(0, 0.1), 0.95)).toBe(0);
    expect(probabilityWithin(plain(0, 0.1), 1)).toBe(1);
    expect(probabilityWithin(plain(0, 0.1), 0)).toBe(0);
    expect(probabilityWithin(plain(8, 0.1), -1)).toBe(0);
  });

  it('is less sure to be met by a tank that is known badly', () => {
    expect(probabilityWithin(plain(8, 0), 8.8)).toBe(1);
    // The need known exactly: the gauge alone decides, by its normal law.
    expect(probabilityWithin(plain(8, 0), 8.8, 0.88)).toBeCloseTo(normalCdf(0.8 / 0.88), 6);
    expect(probabilityWithin(plain(8, 0), 4, 2)).toBeCloseTo(normalCdf(-2), 6);
    // A gauge that hardly errs leaves the need alone.
    expect(probabilityWithin(plain(8, 0.2), 8.8, 1e-6)).toBeCloseTo(normalCdf(Math.log(1.1) / 0.2), 6);
  });

  it('is what many drawn trips of a known mean would say, whichever of need and gauge is known better', () => {
    // Halving the step of the draws to the limit: 20,000 equally likely gauges, each with its own chance.
    const exact = (need: number, spread: number, amount: number, error: number) => {
      let [sum, weights] = [0, 0];
      for (let i = 0; i < 20_000; i++) {
        const u = -7 + (14 * (i + 0.5)) / 20_000;
        const weight = Math.exp((-u * u) / 2);
        weights += weight;
        if (amount + error * u > 0) sum += weight * normalCdf(Math.log((amount + error * u) / need) / spread);
      }
      return sum / weights;
    };
    for (const spread of [0.02, 0.1, 0.3, 0.8]) {
      for (const error of [0.1, 0.5, 2, 6]) {
        for (const amount of [0.5, 5, 8, 9, 12, 20, 60]) {
          const found = probabilityWithin(plain(8, spread), amount, error);
          // A gauge so bad that the tank may well be empty is cut at nothing, which costs a few thousandths.
          const near = error / amount < 0.3 ? 1e-4 : 5e-3;
          expect(Math.abs(found - exact(8, spread, amount, error)), `${spread} ${error} ${amount}`).toBeLessThan(near);
        }
      }
    }
  });
});
