import { describe, expect, it } from 'vitest';
import table from '../../shared/checks/measured-table.json' with { type: 'json' };
import { answersPlotted } from '../../src/layouts/answers-plot.ts';

describe('answersPlotted', () => {
  it('draws for every so much taken one bar as high as all its trips, the yes from the ground up', () => {
    for (const { bins } of table.seeded) {
      const { bars, y } = answersPlotted(bins);
      for (const left of new Set(bars.map((bar) => bar.left))) {
        const own = bars.filter((bar) => bar.left === left);
        expect(own.reduce((sum, { height }) => sum + height, 0)).toBeCloseTo(y(0) - y(1), 0);
        const yes = own.find(({ answer }) => answer === 'go');
        if (yes) expect(yes.top + yes.height).toBeCloseTo(y(0), 0);
      }
    }
  });

  it('shows no yes right of the line where nobody got one', () => {
    const petrol = table.seeded[0]!;
    expect(petrol.unsafe.go).toBe(0);
    const { bars, x } = answersPlotted(petrol.bins);
    for (const { answer, left } of bars) if (answer === 'go') expect(left).toBeLessThan(x(1));
  });
});
