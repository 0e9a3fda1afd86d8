import { describe, expect, it } from 'vitest';
import { formShare, measuredForm, spreadAmong, TRIED_SPREAD, untried } from '../../../src/core/curve/form-spread.ts';

const form = { tried: 0.1, mass: [300, 400], speed: [4, 8] } as const;

describe('the spread of a measured boat', () => {
  it('is what the fit leaves open among the loads and speeds that were tried, ends included', () => {
    for (const [mass, speed] of [
      [300, 4],
      [400, 8],
      [350, 6],
    ] as const)
      expect(formShare(form, mass, speed)).toBe(0.1);
    expect(formShare(undefined, 350, 6)).toBe(0);
  });

  it('has half of the far spread beside it a fifth beyond, on each side of load and of speed', () => {
    const half = Math.hypot(0.1, 0.125);
    for (const [mass, speed] of [
      [480, 6],
      [250, 6],
      [350, 9.6],
      [350, 4 / 1.2],
    ] as const)
      expect(formShare(form, mass, speed)).toBeCloseTo(half, 9);
  });

  it('grows with both, up to a quarter', () => {
    // A tenth beyond in each is a fifth.
    expect(formShare(form, 440, 8.8)).toBeCloseTo(Math.hypot(0.1, 0.125), 9);
    expect(formShare(form, 480, 9.6)).toBeCloseTo(Math.hypot(0.1, 0.2), 9);
    expect(formShare(form, 40_000, 6)).toBeCloseTo(Math.hypot(0.1, 0.25), 3);
    // Close to rest a tenth of the slowest speed counts as the speed.
    expect(formShare(form, 350, 0)).toBeCloseTo(Math.hypot(0.1, (0.25 * 100) / (100 + 0.04)), 9);
  });

  it('is the far one everywhere where nobody said what was tried', () => {
    const unsaid = measuredForm({ factors: [], covariance: [], runs: 3 });
    expect(unsaid).toEqual({ tried: 0.1, mass: [0, 0], speed: [0, 0] });
    expect(formShare(unsaid, 350, 6)).toBeCloseTo(Math.hypot(0.1, 0.25), 3);
    const said = measuredForm({
      factors: [],
      covariance: [],
      runs: 3,
      formSpread: 0.07,
      tried: { mass: [300, 400], speed: [4, 8] },
    });
    expect(said).toEqual({ ...form, tried: 0.07 });
  });
});

describe('how little runs tell', () => {
  it('is nothing among them, a half a fifth beyond, and nearly all far off; of a boat without runs nothing is asked', () => {
    for (const speed of [4, 6, 8]) expect(untried(form, 350, speed)).toBe(0);
    expect(untried(form, 350, 9.6)).toBeCloseTo(0.5, 9);
    expect(untried(form, 480, 6)).toBeCloseTo(0.5, 9);
    expect(untried(form, 350, 1)).toBeCloseTo(9 / 9.04, 9);
    expect(untried(undefined, 350, 1)).toBe(0);
  });
});

describe('what a boat’s own runs say of the form', () => {
  it('is the usual where there are none, where they lie on their curve, or where they all settled factors', () => {
    expect(spreadAmong([], 0)).toBe(TRIED_SPREAD);
    expect(spreadAmong([0, 0, 0, 0, 0], 0.5)).toBe(TRIED_SPREAD);
    expect(spreadAmong([0.1, -0.1, 0.1, -0.1], 1)).toBeCloseTo(TRIED_SPREAD, 12);
  });

  it('grows with how far they lie from their own curve, against four runs of a usual boat', () => {
    // Four runs a fifth off: the mean of squares of four at a tenth and four at a fifth.
    expect(spreadAmong([0.2, -0.2, 0.2, -0.2], 1)).toBeCloseTo(Math.sqrt((4 * 0.01 + 4 * 0.04) / 8), 12);
    // Many outweigh the usual.
    expect(spreadAmong(Array(400).fill(0.3), 1)).toBeCloseTo(0.3, 2);
  });

  it('counts as fewer runs what settled factors: the same misses say more', () => {
    const missed = [0.2, -0.3, 0.1, 0.25, -0.2];
    let before = Infinity;
    for (const free of [0, 0.25, 0.5, 1]) {
      const now = spreadAmong(missed, free);
      expect(now).toBeLessThan(before);
      before = now;
    }
  });
});
