import { describesDay } from './iso-time.ts';
import type { Dimension, TableUnit } from './table-units.ts';
import { unitNamed } from './table-units.ts';

export type DecimalSign = ',' | '.';

/** Spaces of all kinds and apostrophes, which group figures in some languages. */
const GROUPING = /[\s\u00a0\u2007\u2009\u202f'’]/g;
const FIGURE = /^([+\u2212\u2010-\u2013-]?)([\d.,\s\u00a0\u2007\u2009\u202f'’]*\d[.,]?)(e[+-]?\d{1,3})?\s*(.*)$/is;

/** The decimal sign of a table, by the cells that leave no doubt; the point where none does. */
export function decimalSignOf(cells: Iterable<string>, delimiter: string): DecimalSign {
  let [commas, points, doubtful] = [0, 0, 0];
  for (const cell of cells) {
    const figure = FIGURE.exec(cell.trim())?.[2]?.replace(GROUPING, '');
    const [, whole, sign, fraction] = /^(.*?)([.,])(\d*)$/.exec(figure ?? '') ?? [];
    if (whole === undefined || fraction === undefined) continue;
    const other = /[.,]/.test(whole);
    if (other ? whole.includes(sign!) : fraction.length === 3 && /^[1-9]\d{0,2}$/.test(whole)) {
      if (!other && sign === ',') doubtful++;
      continue;
    }
    if (sign === ',') commas++;
    else points++;
  }
  if (commas !== points) return commas > points ? ',' : '.';
  // Where the comma does not part the cells it is likelier to be the decimal sign.
  return doubtful > 0 && delimiter !== ',' ? ',' : '.';
}

/** A figure with an optional unit behind it, in SI. Undefined where the cell is none. */
export function figureOf(
  cell: string,
  decimal: DecimalSign,
  unit: TableUnit | undefined,
  dimension: Dimension | undefined = unit?.dimension,
): number | undefined {
  const [, minus, digits, power = '', rest] = FIGURE.exec(cell.trim()) ?? [];
  if (digits === undefined || rest === undefined) return undefined;
  const group = decimal === ',' ? '.' : ',';
  let bare = digits.replace(GROUPING, '');
  if (bare.includes(group)) {
    const [whole, ...more] = bare.split(decimal);
    if (more.length > 1 || !/^\d{1,3}(?:[.,]\d{3})+$/.test(whole!)) return undefined;
    bare = [whole!.replaceAll(group, ''), ...more].join(decimal);
  }
  const text = bare.replace(decimal, '.');
  if (!/^(?:\d+\.?\d*|\.\d+)$/.test(text)) return undefined;
  const figure = Number(text + power) * (minus && minus !== '+' ? -1 : 1);
  if (rest === '') return unit ? unit.si(figure) : figure;
  const own = dimension && unitNamed(dimension, rest);
  return own?.si(figure);
}

/** A duration: a figure in the unit of the column, or m:ss or h:mm:ss; s. */
export function durationOf(cell: string, decimal: DecimalSign, unit: TableUnit): number | undefined {
  const [, h, m, s] = /^(?:(\d{1,3}):)?(\d{1,3}):([0-5]\d(?:[.,]\d+)?)$/.exec(cell.trim()) ?? [];
  if (m === undefined || s === undefined) return figureOf(cell, decimal, unit);
  if (h !== undefined && Number(m) > 59) return undefined;
  return (Number(h ?? 0) * 60 + Number(m)) * 60 + Number(s.replace(',', '.'));
}

/** A date as ISO 8601 from 2026-07-15, 15.7.2026 or a 15/7/2026 that can only be read one way. */
export function dayOf(cell: string): string | undefined {
  const bare = cell.trim().replace(/[T ]\d{1,2}:\d\d.*$/, '');
  const iso = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})$/.exec(bare);
  if (iso) return validDay(iso[1]!, iso[2]!, iso[3]!);
  const [, first, sign, second, year] = /^(\d{1,2})([./-])(\d{1,2})\2(\d{4})$/.exec(bare) ?? [];
  if (first === undefined || second === undefined || year === undefined) return undefined;
  if (sign === '.' || first === second || Number(first) > 12) return validDay(year, second, first);
  return Number(second) > 12 ? validDay(year, first, second) : undefined;
}

function validDay(year: string, month: string, day: string): string | undefined {
  const text = `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
  return describesDay(text) ? text : undefined;
}

/** Yes or no as people write it; full throttle also as 100 %. */
export function yesOrNo(cell: string): boolean | undefined {
  const bare = cell.trim().toLowerCase();
  if (/^(?:yes|y|true|x|1|full|wot|100 ?%?|✓|✔)$/.test(bare)) return true;
  if (/^(?:no|n|false|0|-|–|part|\d{1,2} ?%?)$/.test(bare)) return false;
  return undefined;
}
