import { describe, expect, it } from 'vitest';
import table from '../../shared/checks/measured-table.json' with { type: 'json' };
import { plotted } from '../../src/layouts/measured-plot.ts';

describe('plotted', () => {
  const rows = table.rows.filter(({ unit }) => unit === 'L/h');
  const { at, ends, frame, size, ticks, inside, outside } = plotted(rows);

  it('keeps every figure inside the frame', () => {
    for (const { measured, predicted } of rows) {
      for (const place of [at(measured), at(predicted)]) {
        expect(place).toBeGreaterThan(frame);
        expect(place).toBeLessThan(size);
      }
    }
  });

  it('shows a share off by the same length everywhere', () => {
    expect(at(2) - at(1)).toBeCloseTo(at(20) - at(10), 0);
  });

  it('marks ones, twos and fives between the ends', () => {
    expect(ticks).toEqual(expect.arrayContaining([1, 2, 5, 10]));
    for (const tick of ticks) expect(tick >= ends[0] && tick <= ends[1]).toBe(true);
  });

  it('counts figures in and out of their bands, and those without a band as neither', () => {
    expect(inside).toBe(rows.filter((row) => row.inside).length);
    expect(inside + outside).toBeLessThanOrEqual(rows.length);
  });
});
