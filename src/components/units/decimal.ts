import { decimalSign } from './number-text.ts';

/** Spaces of all kinds and apostrophes, which group digits in some languages. */
const GROUPING = /[\s\u00a0\u2007\u2009\u202f'’]/g;
const MINUS = /^[\u2212\u2010\u2011\u2012\u2013-]/;

/**
 * Reads a figure as people type it: comma or point, grouped or not, any minus sign. `lang` decides only where both
 * readings are possible ("1,234" is 1234 in English and 1.234 in German). Undefined for anything else; never NaN.
 */
export function parseDecimal(text: string, lang: string): number | undefined {
  const bare = text.replace(GROUPING, '').replace(MINUS, '-').replace(/^\+/, '');
  if (!/^-?[\d.,]+$/.test(bare) || !/\d/.test(bare)) return undefined;
  const plain = withPoint(bare, lang);
  if (plain === undefined || !/^-?(\d+\.?\d*|\.\d+)$/.test(plain)) return undefined;
  const value = Number(plain);
  return Number.isFinite(value) ? value + 0 : undefined;
}

function withPoint(bare: string, lang: string): string | undefined {
  const lastComma = bare.lastIndexOf(',');
  const lastPoint = bare.lastIndexOf('.');
  if (lastComma < 0 && lastPoint < 0) return bare;
  if (lastComma >= 0 && lastPoint >= 0) {
    // Two signs: the later one is the decimal sign.
    const [group, decimal] = lastComma > lastPoint ? ['.', ','] : [',', '.'];
    const [whole, fraction, ...more] = bare.split(decimal);
    if (more.length > 0 || fraction?.includes(group)) return undefined;
    return grouped(whole!, group) ? `${whole!.replaceAll(group, '')}.${fraction}` : undefined;
  }
  const sign = lastComma >= 0 ? ',' : '.';
  const parts = bare.split(sign);
  if (parts.length > 2) return grouped(bare, sign) ? bare.replaceAll(sign, '') : undefined;
  // "1,234" with the sign that groups in this language; "0,234" can only be a fraction.
  if (sign !== decimalSign(lang) && grouped(bare, sign) && !/^-?0/.test(bare)) return bare.replace(sign, '');
  return bare.replace(sign, '.');
}

function grouped(digits: string, sign: string): boolean {
  const [first, ...rest] = digits.replace('-', '').split(sign);
  return /^\d{1,3}$/.test(first!) && rest.every((three) => /^\d{3}$/.test(three));
}
