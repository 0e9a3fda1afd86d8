import { describe, expect, it } from 'vitest';
import { type Box, platePlace } from '../../../src/components/curve-plot/plate-place.ts';

const plot: Box = { left: 40, top: 20, right: 360, bottom: 220 };
const plate = { width: 100, height: 20 };

function covered(box: Box, taken: (x: number) => readonly [number, number]): boolean {
  for (let x = box.left; x <= box.right; x += 2) {
    const [over, under] = taken(x);
    if (over < box.bottom && under > box.top) return true;
  }
  return false;
}

describe('platePlace', () => {
  it('stands clear of a level curve', () => {
    const level = () => [100, 120] as const;
    const box = platePlace({ x: 200, y: 110 }, plate, plot, level);
    expect(covered(box, level)).toBe(false);
  });

  it('goes to the open side of a slope', () => {
    const slope = (x: number) => [240 - x * 0.6, 255 - x * 0.6] as const;
    const box = platePlace({ x: 150, y: 157 }, plate, plot, slope);
    expect(covered(box, slope)).toBe(false);
  });

  it('stays inside the plot in every corner and never hides its point', () => {
    const taken = (x: number) => [100 + x / 10, 110 + x / 10] as const;
    for (const x of [40, 200, 360]) {
      for (const y of [20, 120, 220]) {
        const box = platePlace({ x, y }, plate, plot, taken);
        expect(box.left).toBeGreaterThanOrEqual(plot.left);
        expect(box.right).toBeLessThanOrEqual(plot.right);
        expect(box.top).toBeGreaterThanOrEqual(plot.top);
        expect(box.bottom).toBeLessThanOrEqual(plot.bottom);
        expect(x > box.left && x < box.right && y > box.top && y < box.bottom).toBe(false);
      }
    }
  });
});
