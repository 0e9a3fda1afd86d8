import { describe, expect, it } from 'vitest';
import { planingSpeedKept, seaLimits } from '../../../src/core/water/sea-speed.ts';

describe('planingSpeedKept', () => {
  // Classes of common practice: below 0.05 of the hull length 1, to 0.10 0.8, to 0.15 0.6, above that off the plane.
  it('keeps the share of each class in its middle', () => {
    expect(planingSpeedKept(0, 4)).toBe(1);
    expect(planingSpeedKept(0.025 * 4, 4)).toBeCloseTo(1, 12);
    expect(planingSpeedKept(0.075 * 4, 4)).toBeCloseTo(0.8, 12);
    expect(planingSpeedKept(0.125 * 4, 4)).toBeCloseTo(0.6, 12);
  });

  it('falls off the plane above 0.15 of the hull length', () => {
    expect(planingSpeedKept(0.14 * 4, 4)).toBe(0.6);
    expect(planingSpeedKept(0.16 * 4, 4)).toBeUndefined();
  });
});

describe('seaLimits', () => {
  it('ends fine at 0.08 and care at 0.13 of the hull length', () => {
    expect(seaLimits(4)).toEqual({ fine: 0.32, care: 0.52 });
  });
});
