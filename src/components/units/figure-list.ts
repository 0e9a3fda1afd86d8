import { decimalSign } from './number-text.ts';

/**
 * The figures of a list as people type it, with commas, semicolons or spaces between. Where the comma is the decimal
 * sign, "85,5" with one digit after it is one figure; "85,70" stays two people, so that nobody gets lighter.
 */
export function figureList(text: string, lang: string): readonly string[] {
  const plain = decimalSign(lang) === ',' ? text.replace(/(?<![\d,]\d*,\d*)(\d),(\d)(?!\d|,\d)/g, '$1.$2') : text;
  return plain.split(/[;,\s]+/).filter(Boolean);
}
