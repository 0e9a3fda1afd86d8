import { describe, expect, it } from 'vitest';
import { BEAUFORT, beaufortMiddle, beaufortOf } from '../../../src/core/water/beaufort.ts';

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
