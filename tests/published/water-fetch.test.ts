import { describe, expect, it } from 'vitest';
import { effectiveFetch, meanFetch } from '../../src/core/route/wind-fetch.ts';
import { DEGREE } from '../../src/core/units/convert.ts';
import { entry, holds } from './sea-checks.ts';

// Shore Protection Manual 1984, from memory.
describe('meanFetch', () => {
  it('meets mean-fetch-12', () => {
    const check = entry('mean-fetch-12');
    holds(check, 'fetch_km', meanFetch(check.inputs.radial_km as unknown as number[]));
  });
});

// Saville, Shore Protection Manual 1977, from memory.
describe('effectiveFetch', () => {
  it('meets effective-fetch-saville', () => {
    const check = entry('effective-fetch-saville');
    const { radial_step_deg, half_sector_deg } = check.inputs;
    const rays = check.inputs.radial_km as unknown as number[];
    expect(rays.length).toBe((2 * half_sector_deg!) / radial_step_deg! + 1);
    const weights = rays.map((_, i) => Math.cos((i * radial_step_deg! - half_sector_deg!) * DEGREE));
    holds(
      check,
      'sum_cos',
      weights.reduce((sum, weight) => sum + weight, 0),
    );
    holds(check, 'effective_fetch_km', effectiveFetch(rays, radial_step_deg!));
  });
});
