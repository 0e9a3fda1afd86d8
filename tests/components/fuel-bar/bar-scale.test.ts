import { describe, expect, it } from 'vitest';
import { barScale } from '../../../src/components/fuel-bar/bar-scale.ts';

describe('barScale', () => {
  it('draws a full tank to scale over the whole width', () => {
    const { x, tankEnd, tornStart } = barScale({ start: 0, empty: 11, full: 12, beyond: 0 }, 600);
    expect(tornStart).toBe(false);
    expect(tankEnd).toBe(600);
    expect(x(3)).toBeCloseTo(150, 9);
    expect(x(11)).toBeCloseTo(550, 9);
  });

  it('shortens the empty space of a tank that is three quarters empty and says so', () => {
    const { x, tornStart, perAmount } = barScale({ start: 18, empty: 23, full: 24, beyond: 0 }, 600);
    expect(tornStart).toBe(true);
    expect(x(18)).toBeLessThan(600 * 0.2);
    // What can be used stays to scale.
    expect(x(22) - x(20)).toBeCloseTo(2 * perAmount, 9);
    expect(x(24)).toBeCloseTo(600, 9);
  });

  it('draws a small shortfall to the same scale as the tank', () => {
    const { x, past, tornEnd, perAmount } = barScale({ start: 0, empty: 10, full: 10, beyond: 2 }, 610);
    expect(tornEnd).toBe(false);
    expect(x(12) - past).toBeCloseTo(2 * perAmount, 9);
    expect(x(12)).toBeCloseTo(610, 9);
  });

  it('shortens a large or endless shortfall', () => {
    for (const beyond of [40, Infinity]) {
      const { x, tankEnd, tornEnd } = barScale({ start: 0, empty: 10, full: 10, beyond }, 600);
      expect(tornEnd).toBe(true);
      expect(tankEnd).toBeGreaterThan(600 * 0.6);
      expect(x(10 + beyond)).toBeCloseTo(600, 9);
    }
  });

  it.each([
    [{ start: 12, empty: 12, full: 12, beyond: 3 }],
    [{ start: 0, empty: 0, full: 0, beyond: 3 }],
    [{ start: 0, empty: 0, full: 0, beyond: Infinity }],
    [{ start: 0, empty: 0, full: 0, beyond: 0 }],
  ])('stays inside its width with nothing to use: %o', (extent) => {
    const { x } = barScale(extent, 300);
    for (const amount of [0, extent.start, extent.empty, extent.full, extent.full + extent.beyond]) {
      expect(x(amount)).toBeGreaterThanOrEqual(0);
      expect(x(amount)).toBeLessThanOrEqual(300);
    }
  });
});
