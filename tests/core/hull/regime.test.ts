import { describe, expect, it } from 'vitest';
import { regime } from '../../../src/core/hull/regime.ts';

describe('regime', () => {
  it('is displacement below volume Froude number 1, hump to 2.2, planing from there', () => {
    expect([0, 0.99, 1, 2.19, 2.2, 4].map(regime)).toEqual([
      'displacement',
      'displacement',
      'hump',
      'hump',
      'planing',
      'planing',
    ]);
  });
});
