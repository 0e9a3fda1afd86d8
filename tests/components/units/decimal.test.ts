import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseDecimal } from '../../../src/components/units/decimal.ts';

describe('parseDecimal', () => {
  it('reads a comma and a point alike, whatever the language of the page', () => {
    for (const lang of ['en', 'de', 'fr', 'it', 'sv']) {
      expect(parseDecimal('12,5', lang)).toBe(12.5);
      expect(parseDecimal('12.5', lang)).toBe(12.5);
      expect(parseDecimal('0,125', lang)).toBe(0.125);
      expect(parseDecimal(',5', lang)).toBe(0.5);
    }
  });

  it('lets the language decide only where both readings are possible', () => {
    expect(parseDecimal('1,234', 'en')).toBe(1234);
    expect(parseDecimal('1,234', 'de')).toBe(1.234);
    expect(parseDecimal('1.234', 'de')).toBe(1234);
    expect(parseDecimal('1.234', 'en')).toBe(1.234);
  });

  it('reads grouped figures with the later sign as the decimal one', () => {
    expect(parseDecimal('1,234.5', 'de')).toBe(1234.5);
    expect(parseDecimal('1.234,5', 'en')).toBe(1234.5);
    expect(parseDecimal('1\u202f234,5', 'fr')).toBe(1234.5);
    expect(parseDecimal("1'234.5", 'de-CH')).toBe(1234.5);
    expect(parseDecimal('1,234,567', 'en')).toBe(1_234_567);
  });

  it('reads any minus sign and keeps zero plain', () => {
    expect(parseDecimal('\u22123', 'en')).toBe(-3);
    expect(parseDecimal('-3', 'en')).toBe(-3);
    expect(parseDecimal('\u20133', 'en')).toBe(-3);
    expect(parseDecimal('+3', 'en')).toBe(3);
    expect(Object.is(parseDecimal('-0', 'en'), 0)).toBe(true);
  });

  it('gives nothing for what is no figure', () => {
    for (const text of [
      '',
      ' ',
      '-',
      ',',
      '.',
      'abc',
      '1e5',
      '1,2,3',
      '1.2.3,4',
      '12 kn',
      '0x10',
      'NaN',
      'Infinity',
      '1-2',
    ]) {
      expect(parseDecimal(text, 'en'), text).toBeUndefined();
    }
  });

  it('survives a language tag that no browser knows', () => {
    expect(parseDecimal('12,5', 'no such language!')).toBe(12.5);
  });

  it('reads back what the language itself writes', () => {
    const langs = ['en', 'en-GB', 'de', 'fr', 'it', 'es', 'nl', 'sv', 'de-CH', 'pt-BR'];
    fc.assert(
      fc.property(fc.integer({ min: -9_999_999, max: 9_999_999 }), fc.constantFrom(...langs), (hundredths, lang) => {
        const text = new Intl.NumberFormat(lang, { minimumFractionDigits: 2 }).format(hundredths / 100);
        expect(parseDecimal(text, lang)).toBeCloseTo(hundredths / 100, 9);
      }),
      { seed: 7, numRuns: 400 },
    );
  });

  it('never gives NaN for any text', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.stringMatching(/^[-+.,' 0-9]{0,12}$/)), (text) => {
        const value = parseDecimal(text, 'en');
        expect(value === undefined || Number.isFinite(value)).toBe(true);
      }),
      { seed: 7, numRuns: 600 },
    );
  });
});
