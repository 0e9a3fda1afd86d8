import { describe, expect, it } from 'vitest';
import { csvText } from '../../../src/components/load-table/csv.ts';

describe('csvText', () => {
  it('quotes what has commas, quotes and line ends, doubling the quotes', () => {
    expect(
      csvText([
        ['a', 'b, c'],
        ['say "so"', 'two\nlines'],
      ]),
    ).toBe('a,"b, c"\r\n"say ""so""","two\nlines"\r\n');
  });

  it('writes figures with a point and leaves out what is not one', () => {
    expect(csvText([[1.23456, -2, Number.NaN, Infinity, undefined]])).toBe('1.235,-2,,,\r\n');
  });

  it('lets no text become a formula of a spreadsheet', () => {
    expect(csvText([['=1+1', '+2', '-load', '@sum', 'plain']])).toBe("'=1+1,'+2,'-load,'@sum,plain\r\n");
  });
});
