import { describe, expect, it } from 'vitest';
import { keyTarget } from '../../../src/components/curve-plot/slider-keys.ts';

describe('keyTarget', () => {
  it.each([
    ['ArrowRight', 25],
    ['ArrowUp', 25],
    ['ArrowLeft', 23],
    ['ArrowDown', 23],
    ['PageUp', 29],
    ['PageDown', 19],
    ['Home', 0],
    ['End', 48],
  ])('moves along the curve on %s as sliders do', (key, step) => {
    expect(keyTarget(key, 24, 48)).toBe(step);
  });

  it('leaves other keys to the page', () => {
    expect(keyTarget('Tab', 24, 48)).toBeUndefined();
    expect(keyTarget('a', 24, 48)).toBeUndefined();
  });
});
