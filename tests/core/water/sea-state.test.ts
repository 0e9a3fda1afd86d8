import { describe, expect, it } from 'vitest';
import { oneUp, seaStateOf } from '../../../src/core/water/sea-state.ts';

describe('the class of a sea', () => {
  it('on a limit is the lower one, just above it the higher', () => {
    for (const [limit, code] of [
      [0, 0],
      [0.1, 1],
      [0.5, 2],
      [1.25, 3],
      [2.5, 4],
      [4, 5],
      [6, 6],
      [9, 7],
      [14, 8],
    ] as const) {
      expect(seaStateOf(limit).code).toBe(code);
      expect(seaStateOf(limit + 0.01).code).toBe(code + 1);
    }
    expect(seaStateOf(30).name).toBe('phenomenal');
  });

  it('begins where the one below it ends', () => {
    let state = seaStateOf(0);
    for (let code = 1; code <= 9; code++) {
      const next = oneUp(state);
      expect([next.code, next.from]).toEqual([code, state.to]);
      state = next;
    }
  });

  it('has none above the last', () => {
    expect(oneUp(seaStateOf(20))).toBe(seaStateOf(20));
  });
});
