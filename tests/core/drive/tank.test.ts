import { describe, expect, it } from 'vitest';
import { FULL_FILL, fuelMass, usableFuel, usableFuelInRoughWater } from '../../../src/core/drive/tank.ts';

const tank = { name: '12 L', capacityL: 12, emptyMass: 2, unusableL: 0.6, fixed: false, at: { x: 0.4, y: 0 } };
const cup = { ...tank, name: '1 L', capacityL: 1, unusableL: 0.1, fixed: true };

describe('usableFuel', () => {
  it('leaves what the pick-up cannot reach', () => {
    expect(usableFuel([tank], FULL_FILL) / 0.745).toBeCloseTo(10.8, 9);
    expect(fuelMass([tank], FULL_FILL) / 0.745).toBeCloseTo(11.4, 9);
  });

  it('never counts an empty tank against a full one', () => {
    expect(usableFuel([tank], 0.04)).toBe(0);
    expect(usableFuel([tank, cup], 0.05) / 0.745).toBeCloseTo(0, 9);
    expect(usableFuel([tank, cup], 0.5)).toBeCloseTo(usableFuel([tank], 0.5) + usableFuel([cup], 0.5), 12);
  });

  it('leaves more behind in rough water', () => {
    expect(usableFuelInRoughWater([tank], 0.5) / 0.745).toBeCloseTo(6 - 1.2, 9);
    expect(usableFuelInRoughWater([{ ...tank, unusableL: 2 }], 0.5) / 0.745).toBeCloseTo(4, 9);
  });

  it('holds no more than its capacity', () => {
    expect(fuelMass([tank], 1.5) / 0.745).toBeCloseTo(12, 9);
    expect(fuelMass([tank], -1)).toBe(0);
    expect(usableFuel([], 0.5)).toBe(0);
  });
});
