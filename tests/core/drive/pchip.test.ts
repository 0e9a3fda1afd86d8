import { describe, expect, it } from 'vitest';
import { monotoneCurve } from '../../../src/core/drive/pchip.ts';

describe('monotoneCurve', () => {
  const curve = monotoneCurve([0, 1, 3, 4], [0, 1, 1.2, 5]);

  it('passes through its points and stays level beyond them', () => {
    expect([0, 1, 3, 4].map(curve)).toEqual([0, 1, 1.2, 5]);
    expect(curve(-5)).toBe(0);
    expect(curve(9)).toBe(5);
  });

  it('rises all the way where its points rise', () => {
    for (let x = 0; x < 4; x += 0.01) expect(curve(x + 0.01)).toBeGreaterThanOrEqual(curve(x));
  });

  it('has one slope on both sides of a point and of its ends', () => {
    for (const x of [0, 1, 3, 4]) {
      const before = (curve(x) - curve(x - 1e-5)) / 1e-5;
      const after = (curve(x + 1e-5) - curve(x)) / 1e-5;
      expect(after).toBeCloseTo(before, 3);
    }
  });

  it('stays level at a peak instead of overshooting it', () => {
    const peak = monotoneCurve([0, 1, 2], [0, 1, 0]);
    for (let x = 0; x <= 2; x += 0.05) expect(peak(x)).toBeLessThanOrEqual(1);
  });
});
