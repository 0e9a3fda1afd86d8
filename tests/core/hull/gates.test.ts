import { describe, expect, it } from 'vitest';
import { ittc57 } from '../../../src/core/hull/friction.ts';
import { froudeLength, froudeVolume, speedCoefficient } from '../../../src/core/hull/froude.ts';
import { hullSpeedShare, humpShare, planingShare, waveGate } from '../../../src/core/hull/gates.ts';
import { porpoisingLimitCovers } from '../../../src/core/hull/porpoising.ts';

describe('the gates from rest to planing', () => {
  it('have half the hull planing at a volume Froude number of 1.4, none at rest, all far above', () => {
    expect([0, 1.4].map(planingShare)).toEqual([0, 0.5]);
    expect(planingShare(2.8)).toBeCloseTo(64 / 65, 12);
    expect(planingShare(0.7)).toBeCloseTo(1 / 65, 12);
  });

  it('have half the waves made at a length Froude number of 0.4', () => {
    expect([0, 0.4].map(waveGate)).toEqual([0, 0.5]);
    expect(waveGate(0.8)).toBeCloseTo(32 / 33, 12);
  });

  it('have the hump at 1.7, 15 % high, as far down on either side', () => {
    expect(humpShare(1.7)).toBeCloseTo(0.15, 12);
    expect(humpShare(1.7 * Math.exp(0.35))).toBeCloseTo(0.15 / Math.E, 12);
    expect(humpShare(1.7 / Math.exp(0.35))).toBeCloseTo(0.15 / Math.E, 12);
  });

  it('have displacement hulls make waves as those measured, and level out at 0.12 of the weight', () => {
    expect(hullSpeedShare(0.35)).toBeCloseTo(0.008, 3);
    expect(hullSpeedShare(0.4)).toBeCloseTo(0.022, 3);
    expect(hullSpeedShare(0.45)).toBeCloseTo(0.052, 3);
    expect(hullSpeedShare(1)).toBeCloseTo(0.12, 4);
    expect(hullSpeedShare(3)).toBeCloseTo(0.12, 6);
  });
});

describe('Froude numbers', () => {
  it('are 1 at the root of gravity times the length that counts', () => {
    const fast = Math.sqrt(9.80665 * 2);
    // 8 m3 of water fill a cube of 2 m.
    expect(froudeVolume(fast, 8000, 1000)).toBeCloseTo(1, 12);
    expect(froudeLength(fast, 2)).toBeCloseTo(1, 12);
    expect(speedCoefficient(2 * fast, 2)).toBeCloseTo(2, 12);
  });
});

describe('ittc57', () => {
  it('is 0.0083 at a Reynolds number of 1e5 and 0.0030 at 1e7', () => {
    expect(ittc57(1e5)).toBeCloseTo(0.075 / 9, 12);
    expect(ittc57(1e7)).toBeCloseTo(0.003, 12);
  });
});

describe('porpoisingLimitCovers', () => {
  it('covers the very ends of the chart', () => {
    // Twice the squares of 0.13 and 0.3.
    expect([0.0338, 0.18].map((lift) => porpoisingLimitCovers(10, lift))).toEqual([true, true]);
  });
});
