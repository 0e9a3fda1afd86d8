import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { roundTicks } from '../../../src/components/curve-plot/round-ticks.ts';
import { linear, roundUp } from '../../../src/components/curve-plot/scale.ts';

describe('linear', () => {
  it('maps ends to ends and the middle to the middle', () => {
    const y = linear([0, 20], [300, 100]);
    expect([y(0), y(10), y(20)]).toEqual([300, 200, 100]);
  });

  it('stays finite where all values are one', () => {
    expect(linear([3, 3], [0, 100])(3)).toBe(50);
  });
});

describe('roundTicks', () => {
  it.each([
    [[0, 10.8], 6, [0, 2, 4, 6, 8, 10]],
    [[0, 24.3], 8, [0, 5, 10, 15, 20]],
    [[0, 0.8], 5, [0, 0.2, 0.4, 0.6, 0.8]],
    [[-3, 7], 6, [-2, 0, 2, 4, 6]],
    [[0, 4100], 5, [0, 1000, 2000, 3000, 4000]],
  ] as const)('reads like a ruler from %o', ([low, high], most, ticks) => {
    expect(roundTicks([low, high], most)).toEqual(ticks);
  });

  it('gives multiples of 1, 2 or 5 times a power of ten, inside the span and no more than asked', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        fc.double({ min: 1e-4, max: 1e9, noNaN: true }),
        fc.integer({ min: 2, max: 12 }),
        (low, width, most) => {
          const ticks = roundTicks([low, low + width], most);
          expect(ticks.length).toBeLessThanOrEqual(most);
          if (ticks.length < 2) return;
          const apart = ticks[1]! - ticks[0]!;
          const power = 10 ** Math.floor(Math.log10(apart * 1.001));
          const lead = Number((apart / power).toPrecision(3));
          expect([1, 2, 5]).toContain(lead);
          const step = lead * power;
          for (const tick of ticks) {
            expect(tick).toBeGreaterThanOrEqual(low - width * 1e-6);
            expect(tick).toBeLessThanOrEqual(low + width * (1 + 1e-6));
            expect(Math.abs(tick / step - Math.round(tick / step))).toBeLessThan(1e-3);
          }
        },
      ),
      { seed: 11, numRuns: 300 },
    );
  });

  it('never shows the dust that adding leaves', () => {
    expect(roundTicks([0, 0.35], 8).map(String)).toEqual(['0', '0.05', '0.1', '0.15', '0.2', '0.25', '0.3', '0.35']);
  });

  it.each([[[5, 5]], [[7, 3]], [[0, Infinity]], [[Number.NaN, 1]]] as const)('has none for %o', (span) => {
    expect(roundTicks(span, 5)).toEqual([]);
  });
});

describe('roundUp', () => {
  it.each([
    [0.73, 0.8],
    [14.8, 15],
    [100, 100],
    [101, 120],
    [3.6e-4, 4e-4],
  ])('takes %d to %d', (value, round) => {
    expect(roundUp(value)).toBe(round);
  });

  it('falls back to 1 where there is nothing to hold', () => {
    for (const value of [0, -2, Infinity, Number.NaN]) expect(roundUp(value)).toBe(1);
  });
});
