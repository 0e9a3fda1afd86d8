import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { placeLabels, textWidth } from '../../../src/components/fuel-bar/labels.ts';

const label = fc.record({
  key: fc.string(),
  text: fc.string(),
  x: fc.double({ min: -50, max: 700, noNaN: true }),
  width: fc.double({ min: 1, max: 260, noNaN: true }),
  weight: fc.integer({ min: 0, max: 5 }),
});

describe('placeLabels', () => {
  it('never lets two texts overlap or leave the room', () => {
    fc.assert(
      fc.property(fc.array(label, { maxLength: 14 }), fc.integer({ min: 1, max: 3 }), (wanted, rows) => {
        const placed = placeLabels(wanted, 560, rows);
        for (const one of placed) {
          expect(one.left).toBeGreaterThanOrEqual(0);
          expect(one.left + one.width).toBeLessThanOrEqual(560 + 1e-9);
          expect(one.row).toBeLessThan(rows);
          for (const other of placed) {
            if (one === other || one.row !== other.row) continue;
            expect(one.left >= other.left + other.width || other.left >= one.left + one.width).toBe(true);
          }
        }
      }),
      { seed: 7, numRuns: 300 },
    );
  });

  it('centres a text that has room', () => {
    const [placed] = placeLabels([{ key: 'home', text: 'Home', x: 100, width: 40, weight: 1 }], 300, 1);
    expect(placed!.left).toBe(80);
  });

  it('leaves out the lighter of two that cannot both stand', () => {
    const wanted = [
      { key: 'light', text: '', x: 50, width: 80, weight: 1 },
      { key: 'heavy', text: '', x: 50, width: 80, weight: 2 },
    ];
    expect(placeLabels(wanted, 100, 1).map((one) => one.key)).toEqual(['heavy']);
    expect(placeLabels(wanted, 100, 2)).toHaveLength(2);
  });

  it('does not carry a text further than its own width', () => {
    const crowd = [0, 1, 2, 3].map((i) => ({ key: String(i), text: '', x: 50, width: 60, weight: 4 - i }));
    for (const placed of placeLabels(crowd, 600, 1)) expect(Math.abs(placed.left + 30 - 50)).toBeLessThanOrEqual(60);
  });
});

describe('textWidth', () => {
  it('is no narrower than digits of a common face at that size', () => {
    // Digits of Helvetica and its metric equals are 0.556 em wide.
    expect(textWidth('1234567890', 14)).toBeGreaterThanOrEqual(10 * 0.556 * 14);
  });
});
