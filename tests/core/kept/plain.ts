/** An answer as JSON holds it, or why it cannot be kept. */
export type Plain = null | boolean | number | string | readonly Plain[] | { readonly [key: string]: Plain };

/** More figures in a row than these are kept as the first, the last and two sums of all. */
const LONGEST = 5;
const DIGITS = 9;
/** Smaller than this, figures are what rounding leaves of nothing. */
const NOTHING = 1e-12;

/**
 * What is kept of an answer: figures to nine digits, an absent field as no field, objects in a row by their fields. A
 * figure that is no number is a fault, wherever it stands.
 */
export function plain(value: unknown, path = ''): Plain {
  if (value === undefined || value === null) return null;
  if (typeof value === 'boolean' || typeof value === 'string') return value;
  if (typeof value === 'number') return figure(value, path);
  if (value instanceof Map || value instanceof Set) return plain([...value], path);
  if (ArrayBuffer.isView(value)) return row([...(value as unknown as Iterable<unknown>)], path);
  if (Array.isArray(value)) return row(value, path);
  if (typeof value === 'object') {
    const fields = Object.entries(value).filter(([, inner]) => inner !== undefined);
    return Object.fromEntries(fields.map(([key, inner]) => [key, plain(inner, `${path}.${key}`)]));
  }
  throw new Error(`${path}: a ${typeof value} cannot be kept`);
}

function figure(value: number, path: string): Plain {
  if (Number.isNaN(value)) throw new Error(`${path} is not a number`);
  if (!Number.isFinite(value)) return String(value);
  return Math.abs(value) < NOTHING ? 0 : Number(value.toPrecision(DIGITS));
}

function row(list: readonly unknown[], path: string): Plain {
  if (list.length > 2 && list.every(isFields)) {
    const keys = new Set(list.flatMap((one) => Object.keys(one).filter((key) => one[key] !== undefined)));
    const columns = [...keys].map((key) => [
      key,
      row(
        list.map((one) => one[key]),
        `${path}.${key}`,
      ),
    ]);
    return { '#': list.length, ...Object.fromEntries(columns) };
  }
  const all = list.map((one, i) => plain(one, `${path}[${i}]`));
  if (all.length > 2 && all.every((one) => one === all[0])) return { '#': all.length, all: all[0]! };
  if (all.length <= LONGEST) return all;
  if (all.every((one) => typeof one === 'string')) return runs(all);
  return all.every((one) => typeof one === 'number') ? summed(all, path) : all;
}

/** Words that come several times on end are told once, with how often. */
function runs(words: readonly string[]): readonly string[] {
  const found: { word: string; times: number }[] = [];
  for (const word of words) {
    const last = found.at(-1);
    if (last?.word === word) last.times++;
    else found.push({ word, times: 1 });
  }
  return found.map(({ word, times }) => (times === 1 ? word : `${times} x ${word}`));
}

function summed(figures: readonly number[], path: string): Plain {
  const sum = figures.reduce((total, one) => total + one, 0);
  // Unlike weights, so that two figures which change places are told from none.
  const weighted = figures.reduce((total, one, i) => total + one * (1 + ((i * Math.SQRT2) % 1)), 0);
  const sums = [figure(sum, path), figure(weighted, path)];
  return { '#': figures.length, ends: [figures[0]!, figures.at(-1)!], sums };
}

function isFields(value: unknown): value is Readonly<Record<string, unknown>> {
  if (value === null || typeof value !== 'object') return false;
  return !Array.isArray(value) && !ArrayBuffer.isView(value) && !(value instanceof Map) && !(value instanceof Set);
}
