import { describe, expect, it } from 'vitest';
import checks from '../../shared/checks/sea-checks.json' with { type: 'json' };
import { BEAUFORT, beaufortMiddle, beaufortOf } from '../../src/core/water/beaufort.ts';

interface Check {
  readonly id: string;
  readonly inputs: { readonly beaufort: number };
  readonly expected: Readonly<Record<string, number>>;
}

function entriesOf(family: RegExp): Check[] {
  return (checks as unknown as Check[]).filter(({ id }) => family.test(id));
}

// Beaufort table on a national meteorological amateur page.
describe('the Beaufort scale', () => {
  it.each(entriesOf(/^beaufort-\d+$/))('has the published limits of $id', ({ inputs, expected }) => {
    const found = BEAUFORT[inputs.beaufort]!;
    expect(found.force).toBe(inputs.beaufort);
    expect(found.min).toBe(expected.wind_min_m_per_s);
    expect(found.max).toBe(expected.wind_max_m_per_s);
    expect(found.minKn).toBe(expected.wind_min_kn);
    expect(found.maxKn).toBe(expected.wind_max_kn);
    expect(beaufortOf(found.min)).toBe(inputs.beaufort);
    expect(beaufortOf(found.max)).toBe(inputs.beaufort);
  });

  // WMO probable wave height in the open sea, from memory. The entries allow 0.1 m; the table is exact.
  it.each(entriesOf(/^beaufort-wave-\d+$/))('has the wave height of $id', ({ inputs, expected }) => {
    expect(BEAUFORT[inputs.beaufort]!.probableWave).toBe(expected.probable_wave_height_m);
  });

  it('covers ten entries', () => {
    expect(entriesOf(/^beaufort-/)).toHaveLength(10);
  });

  // U = 0.836 B^1.5 m/s, the scale's defining formula, from memory.
  it('has every middle within 0.1 m/s of the formula of the scale up to force 8', () => {
    for (let force = 1; force <= 8; force++) {
      expect(beaufortOf(0.836 * force ** 1.5)).toBe(force);
      expect(Math.abs(beaufortMiddle(force) - 0.836 * force ** 1.5)).toBeLessThan(0.1);
    }
  });
});
