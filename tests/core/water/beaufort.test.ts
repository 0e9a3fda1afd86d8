import { describe, expect, it } from 'vitest';
import { BEAUFORT, beaufortMiddle, beaufortOf, oneForceMore } from '../../../src/core/water/beaufort.ts';

describe('beaufortOf', () => {
  it('has no gap between classes written to a tenth', () => {
    expect([0, 0.2, 0.24, 0.26, 1.54, 1.56, 5.44, 5.46, 32.6, 32.7, 60].map(beaufortOf)).toEqual([
      0, 0, 0, 1, 1, 2, 3, 4, 11, 12, 12,
    ]);
  });
});

describe('beaufortMiddle', () => {
  it('lies in its class', () => {
    for (const { force } of BEAUFORT) expect(beaufortOf(beaufortMiddle(force))).toBe(force);
  });

  it('does not run off the scale', () => {
    expect(beaufortMiddle(-1)).toBe(beaufortMiddle(0));
    expect(beaufortMiddle(13)).toBe(32.7);
  });
});

describe('oneForceMore', () => {
  it('lifts a wind by one force: calm to a light air, 8 m/s to 10.8, and the middle of a class into the next', () => {
    expect(oneForceMore(0)).toBeCloseTo(0.836, 9);
    expect(oneForceMore(8)).toBeCloseTo(10.805, 2);
    for (let force = 2; force < 11; force++) expect(beaufortOf(oneForceMore(beaufortMiddle(force)))).toBe(force + 1);
  });
});
