import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseDecimal } from '../../src/components/units/decimal.ts';
import { measuresFor } from '../../src/components/units/measures.ts';
import { holds } from './hold.ts';
import { between, same } from './trip-makers.ts';

const systems = fc.constantFrom('metric' as const, 'nautical' as const, 'imperial' as const);
const languages = fc.constantFrom('en', 'de', 'fr', 'es');
const measures = fc.constantFrom(
  'amount' as const,
  'mass' as const,
  'speed' as const,
  'power' as const,
  'length' as const,
  'distance' as const,
  'share' as const,
  'angle' as const,
);
const stores = fc.constantFrom('fuel' as const, 'charge' as const);
const RUNS = { seed: 1875, numRuns: 1000 };

describe('a figure in any unit', () => {
  it('comes back to what it was', () => {
    holds(
      fc.property(systems, languages, measures, stores, between(-1e7, 1e7), (system, lang, measure, store, si) => {
        const units = measuresFor(system, lang);
        same(units.toSi(measure, units.fromSi(measure, si, store), store), si, 1e-15);
      }),
      RUNS,
    );
  });

  it('is read again as it was shown in an input, to the figures shown, in any language', () => {
    holds(
      fc.property(systems, languages, measures, stores, between(0, 1e7), (system, lang, measure, store, si) => {
        const units = measuresFor(system, lang);
        const shown = units.figure(measure, si, store);
        const read = parseDecimal(shown, lang);
        expect(read, shown).toBeDefined();
        const again = units.toSi(measure, read!, store);
        // Within half of the last place shown, and from then on nothing moves.
        const places = (shown.split(/[.,]/)[1] ?? '').length;
        const half = Math.abs(units.toSi(measure, 0.5000001 * 10 ** -places, store));
        expect(Math.abs(again - si)).toBeLessThanOrEqual(Math.max(half, 0.0030001 * si));
        expect(parseDecimal(units.figure(measure, again, store), lang)).toBe(read);
      }),
      RUNS,
    );
  });
});
