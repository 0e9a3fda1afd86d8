import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { beaufortOf } from '../../src/core/water/beaufort.ts';
import { headwind } from '../../src/core/water/headwind.ts';
import { planingSpeedKept } from '../../src/core/water/sea-speed.ts';

const runs = { seed: 31, numRuns: 500 };
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('headwind', () => {
  it('turns round with the boat and is never more than the wind', () => {
    fc.assert(
      fc.property(between(0, 360), between(0, 30), between(0, 360), (fromDeg, speed, courseDeg) => {
        const out = headwind({ fromDeg, speed }, courseDeg);
        expect(headwind({ fromDeg, speed }, courseDeg + 180)).toBeCloseTo(-out, 9);
        expect(Math.abs(out)).toBeLessThanOrEqual(speed);
        expect(out ** 2 + headwind({ fromDeg, speed }, courseDeg + 90) ** 2).toBeCloseTo(speed ** 2, 7);
      }),
      runs,
    );
  });
});

describe('beaufortOf', () => {
  it('never falls as the wind rises', () => {
    fc.assert(
      fc.property(between(0, 40), between(0, 10), (wind, more) => {
        expect(beaufortOf(wind + more)).toBeGreaterThanOrEqual(beaufortOf(wind));
      }),
      runs,
    );
  });
});

describe('planingSpeedKept', () => {
  it('never rises with the sea and depends on height over length only', () => {
    fc.assert(
      fc.property(between(0, 1.5), between(0, 0.5), between(2.3, 6), (height, more, length) => {
        const calmer = planingSpeedKept(height, length) ?? 0;
        expect(planingSpeedKept(height + more, length) ?? 0).toBeLessThanOrEqual(calmer);
        fc.pre(Math.abs(height / length - 0.15) > 1e-9);
        expect(planingSpeedKept(2 * height, 2 * length) ?? 0).toBeCloseTo(calmer, 9);
      }),
      runs,
    );
  });
});
