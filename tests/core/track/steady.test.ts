import { describe, expect, it } from 'vitest';
import { rangeOf, slopeOf, steadyRange, steadyTrend } from '../../../src/core/track/steady.ts';

describe('steadyRange', () => {
  it('is 0.3 m/s either way up to 6 m/s, and 5 % of a higher speed', () => {
    expect(steadyRange(2, 0).speed).toBe(0.6);
    expect(steadyRange(5, 0).speed).toBe(0.6);
    expect(steadyRange(12, 0).speed).toBeCloseTo(1.2, 12);
  });

  it('is 10 degrees either way, and of a slow boat what 0.3 m/s across turns it by', () => {
    expect(steadyRange(8, 0).headingDeg).toBe(20);
    // An angle whose sine is 0.3 / 0.6 is 30 degrees.
    expect(steadyRange(0.6, 0).headingDeg).toBeCloseTo(60, 10);
    expect(steadyRange(0.2, 0).headingDeg).toBeCloseTo(180, 10);
  });

  it('widens to six times the noise of a plain receiver, three times either way', () => {
    expect(steadyRange(5, 0.2).speed).toBeCloseTo(1.2, 12);
    expect(steadyRange(1.2, 0.2).headingDeg).toBeCloseTo(60, 10);
    expect(steadyRange(5, 0.05).speed).toBe(0.6);
  });
});

describe('steadyTrend', () => {
  it('is 0.4 m/s in all, 5 % of a high speed, or three times the noise', () => {
    expect(steadyTrend(4, 0)).toBe(0.4);
    expect(steadyTrend(16, 0)).toBeCloseTo(0.8, 12);
    expect(steadyTrend(4, 0.2)).toBeCloseTo(0.6, 12);
  });
});

describe('slopeOf', () => {
  it('is the step of a straight line, also falling', () => {
    expect(slopeOf([1, 3, 5])).toBe(2);
    expect(slopeOf([5, 4.5, 4, 3.5])).toBeCloseTo(-0.5, 12);
  });

  it('is that of the line of least squares between values that jump', () => {
    // Deviations from the middle -1.5, -0.5, 0.5, 1.5: (0.5 + 1.5) x 3 over 2 x (0.25 + 2.25).
    expect(slopeOf([0, 0, 3, 3])).toBeCloseTo(6 / 5, 12);
  });

  it('is 0 of one value, and of none', () => {
    expect([slopeOf([7]), slopeOf([])]).toEqual([0, 0]);
  });
});

describe('rangeOf', () => {
  it('is the greatest less the least, and nothing of one or none', () => {
    expect(rangeOf([3, -1, 2])).toBe(4);
    expect([rangeOf([5]), rangeOf([])]).toEqual([0, 0]);
  });
});
