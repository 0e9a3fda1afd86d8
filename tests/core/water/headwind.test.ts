import { describe, expect, it } from 'vitest';
import { headwind } from '../../../src/core/water/headwind.ts';

describe('headwind', () => {
  const northerly = { fromDeg: 0, speed: 6 };

  it('is whole from ahead, whole and negative from astern, nothing from the beam', () => {
    expect(headwind(northerly, 0)).toBe(6);
    expect(headwind(northerly, 180)).toBe(-6);
    expect(headwind(northerly, 90)).toBeCloseTo(0, 12);
    expect(headwind(northerly, 300)).toBeCloseTo(3, 12);
  });

  it('is nothing in a calm', () => {
    expect(headwind('calm', 77)).toBe(0);
  });
});
