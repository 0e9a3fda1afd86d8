import fc from 'fast-check';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { decimalSign, figuresText, numberLocale, numberText } from '../../../src/components/units/number-text.ts';

const OURS = ['en', 'en-US', 'en-GB', 'de', 'de-DE', 'fr', 'fr-FR', 'es', 'es-ES'];

const figure = fc.oneof(
  fc.double({ min: -1e7, max: 1e7, noNaN: true }),
  // Halves of the last decimal, where rounding shows.
  fc.integer({ min: -2_000_000, max: 2_000_000 }).map((half) => half / 2000),
  fc.double({ min: -1e-3, max: 1e-3, noNaN: true }),
  fc.constantFrom(0, -0, 999.9995, 9999.5, 1.005, 1e12, 123_456_789),
);

describe('numberText', () => {
  afterEach(() => vi.restoreAllMocks());

  it('writes figures of the languages of the site as Intl does', () => {
    const places = fc.record({ least: fc.integer({ min: 0, max: 3 }), more: fc.integer({ min: 0, max: 2 }) });
    fc.assert(
      fc.property(fc.constantFrom(...OURS), figure, places, fc.boolean(), (lang, value, { least, more }, grouped) => {
        const most = least + more;
        const theirs = new Intl.NumberFormat(lang, {
          minimumFractionDigits: least,
          maximumFractionDigits: most,
          signDisplay: 'negative',
          useGrouping: grouped && 'auto',
        });
        expect(numberText(lang, value, { least, most, grouped })).toBe(theirs.format(value).replace('-', '\u2212'));
      }),
      { numRuns: 4000 },
    );
  });

  it('does not wake Intl for the languages of the site', () => {
    const format = vi.spyOn(Intl, 'NumberFormat');
    for (const lang of OURS) {
      numberText(lang, 1234.5);
      decimalSign(lang);
      numberLocale(lang);
    }
    expect(format).not.toHaveBeenCalled();
  });

  it('leaves other languages to Intl, with Latin digits', () => {
    expect(numberText('de-CH', 1234.5)).toMatch(/^1['’]234\.5$/);
    expect(numberText('ar-EG', -12.5, { least: 1, most: 1 })).toContain('12');
  });

  it('says what no figure can say as Intl does', () => {
    expect(numberText('en', Number.NaN)).toBe('NaN');
    expect(numberText('de', -Infinity)).toBe('\u2212∞');
  });
});

describe('figuresText', () => {
  it('keeps the digits that count', () => {
    const said = [0.012345, 1.2345, 123.45, 12_345, 0, -0.5, 999.6].map((value) => figuresText('en', value, 3));
    expect(said).toEqual(['0.0123', '1.23', '123', '12300', '0', '\u22120.5', '1000']);
  });
});

describe('decimalSign', () => {
  it('is the one Intl writes', () => {
    for (const lang of [...OURS, 'de-CH', 'sv', 'en-ZA']) {
      const parts = new Intl.NumberFormat(lang).formatToParts(1.5);
      expect(decimalSign(lang)).toBe(parts.find(({ type }) => type === 'decimal')?.value);
    }
  });
});

describe('numberLocale', () => {
  it('takes English for a language that no browser reads', () => {
    expect(numberLocale('not a language')).toBe('en');
    expect(numberLocale('de-AT')).toBe('de-AT');
  });
});
