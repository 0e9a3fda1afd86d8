import { describe, expect, it } from 'vitest';
import { Answer } from '../../../src/components/answer/answer.ts';
import { CurvePlot } from '../../../src/components/curve-plot/curve-plot.ts';
import { FuelBar } from '../../../src/components/fuel-bar/fuel-bar.ts';
import { LegTable } from '../../../src/components/leg-table/leg-table.ts';
import { TripDetails } from '../../../src/components/trip-details/trip-details.ts';

describe('the elements that show the answer', () => {
  it.each([
    ['homeleg-answer', Answer],
    ['homeleg-fuel-bar', FuelBar],
    ['homeleg-curve-plot', CurvePlot],
    ['homeleg-leg-table', LegTable],
    ['homeleg-trip-details', TripDetails],
  ])('%s loads without a browser', (tag, element) => {
    expect(customElements.get(tag)).toBe(element);
  });
});
