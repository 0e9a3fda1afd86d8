import { describe, expect, it } from 'vitest';
import { barTexts } from '../../../src/components/fuel-bar/bar-texts.ts';
import { NAUTICAL } from '../../../src/components/units/default-measures.ts';
import { measuresFor } from '../../../src/components/units/measures.ts';
import * as plans from '../answer/fixtures.ts';

const NB = '\u00a0';
const lines = (plan: Parameters<typeof barTexts>[0], unusable?: number) =>
  Object.fromEntries(barTexts(plan, NAUTICAL, unusable, 6).legend.map(({ term, figure }) => [term, figure]));

describe('barTexts', () => {
  it('accounts for every part in words and figures', () => {
    // 7.8 NM each way at 0.385 and 0.461 L/NM, with 0.3 L of manoeuvring, out of 10.8 L.
    expect(lines(plans.go, plans.litre(0.6))).toEqual({
      Out: `3.0${NB}L`,
      Home: `3.6${NB}L`,
      Manoeuvring: `0.3${NB}L`,
      'Left at home': `3.9${NB}L`,
      'Reserve, whole': `3.6${NB}L`,
      'Cannot be used': `0.6${NB}L`,
      'Not filled or out of reach': `0.6${NB}L`,
    });
  });

  it('says that a reserve is eaten into or used up', () => {
    expect(lines(plans.noGo)).toHaveProperty('Reserve, eaten into');
    expect(lines(plans.overflow)).toHaveProperty('Reserve, all used');
  });

  it('tells a shortfall and never a negative rest', () => {
    const texts = barTexts(plans.overflow, NAUTICAL, 0, 6);
    expect(texts.spans.short).toBe(`Short 2.9${NB}L`);
    expect(texts.likely).toBe(`likely 0.7 to 5.6${NB}L short`);
    expect(lines(plans.overflow)).not.toHaveProperty('Left at home');
  });

  it('finds words for a need without end', () => {
    expect(lines(plans.stuck)['Short by']).toBe('more than there is');
    expect(JSON.stringify(barTexts(plans.stuck, NAUTICAL, 0, 6))).not.toMatch(/NaN|Infinity/);
  });

  it('marks round amounts left, the unit at the largest', () => {
    expect(barTexts(plans.go, NAUTICAL, 0, 6).ticks.map((tick) => tick.text)).toEqual([
      '0',
      '2',
      '4',
      '6',
      '8',
      `10${NB}L`,
    ]);
    expect(barTexts(plans.electric, NAUTICAL, 0, 6).ticks.map((tick) => tick.text)).toEqual([
      '0',
      '1',
      '2',
      '3',
      `4${NB}kWh`,
    ]);
    const gallons = barTexts(plans.go, measuresFor('imperial', 'en'), 0, 4).ticks;
    expect(gallons.at(-1)!.text).toBe(`2${NB}gal`);
  });
});
