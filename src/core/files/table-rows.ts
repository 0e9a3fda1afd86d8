import Papa from 'papaparse';
import type { Problem, Result } from '../units/result.ts';
import { parseJsonText } from './json-text.ts';

/** Most characters of a table. */
const MOST_TEXT = 5e6;
/** Most rows. */
const MOST_ROWS = 5000;
/** Headings are looked for in this many rows; some files begin with rows about the place. */
const HEADING_ROWS = 50;

/** A table whatever it was written in: cells by the name of their column, which may be a dotted path in JSON. */
export interface TableRows {
  readonly kind: 'csv' | 'json';
  readonly columns: readonly string[];
  readonly rows: readonly {
    /** As a user counts: lines of the file, or entries of the list from 1. */
    readonly number: number;
    cell(column: string): unknown;
  }[];
}

/**
 * Reads CSV (any delimiter, quotes, a byte order mark) or JSON: a list of objects, or an object of lists of one length, at
 * the root, one level down, or at a dotted path `within`. `wanted` are columns that have to be there.
 */
export function tableRows(text: string, wanted: readonly string[], within?: string): Result<TableRows> {
  return /^[\uFEFF\s]*[[{]/.test(text) ? jsonRows(text, wanted, within) : csvRows(text, wanted);
}

function csvRows(text: string, wanted: readonly string[]): Result<TableRows> {
  if (text.length > MOST_TEXT)
    return problem(
      'too-big',
      `The table is too large: at most ${MOST_TEXT / 1e6} million characters are read`,
      MOST_TEXT,
    );
  if (text.trim() === '') return problem('empty', 'The table is empty');
  const parsed = Papa.parse<string[]>(text.replace(/^\uFEFF/, ''), { skipEmptyLines: false });
  const quotes = parsed.errors.find(({ type }) => type === 'Quotes');
  if (quotes) return problem('bad-quotes', `A quote is not closed or misplaced in row ${(quotes.row ?? 0) + 1}`);

  const lines = parsed.data.map((cells) => cells.map((cell) => cell.trim()));
  const heads = lines.slice(0, HEADING_ROWS);
  const has = (cells: readonly string[]) => wanted.every((column) => place(cells, column) >= 0);
  const widest = heads.reduce((most, cells) => Math.max(most, filled(cells)), 0);
  const heading = wanted.length > 0 ? heads.findIndex(has) : heads.findIndex((cells) => filled(cells) === widest);
  if (heading < 0) {
    const first = heads.find((cells) => filled(cells) === widest) ?? [];
    return { ok: false, problems: wanted.filter((column) => place(first, column) < 0).map(noColumn) };
  }
  const columns = lines[heading]!;
  const rows = lines.flatMap((cells, i) => {
    if (i <= heading || filled(cells) === 0) return [];
    return [{ number: i + 1, cell: (column: string): unknown => cells[place(columns, column)] }];
  });
  return counted({ kind: 'csv', columns: columns.filter((column) => column !== ''), rows });
}

function jsonRows(text: string, wanted: readonly string[], within: string | undefined): Result<TableRows> {
  const parsed = parseJsonText(text, MOST_TEXT);
  if (!parsed.ok) return parsed;
  const inside = within === undefined || within === '' ? undefined : valueAt(parsed.value, within);
  if (within && inside === undefined) return problem('no-part', `The file has no part ${JSON.stringify(within)}`);
  const places = inside !== undefined ? [inside] : [parsed.value, ...partsOf(parsed.value)];
  const tables = places.flatMap((value) => tableIn(value) ?? []);
  const found = tables.find(({ rows }) => wanted.every((column) => rows.some((row) => row.cell(column) !== undefined)));
  if (found) return counted(found);
  const first = tables[0];
  if (!first) return problem('no-table', 'The file holds no list of forecast times');
  if (first.rows.length === 0) return problem('empty', 'The table has no rows');
  const missing = wanted.filter((column) => first.rows.every((row) => row.cell(column) === undefined));
  return { ok: false, problems: missing.map(noColumn) };
}

/** A list of objects, or lists side by side; the longest of those says how many rows there are. */
function tableIn(value: unknown): TableRows | undefined {
  if (Array.isArray(value)) {
    if (!value.every(describesObject)) return undefined;
    const columns = value[0] ? pathsOf(value[0]) : [];
    return {
      kind: 'json',
      columns,
      rows: value.map((row, i) => ({ number: i + 1, cell: (column) => valueAt(row, column) })),
    };
  }
  if (!describesObject(value)) return undefined;
  const lists = Object.entries(value).filter((pair): pair is [string, unknown[]] => Array.isArray(pair[1]));
  if (lists.length < 2) return undefined;
  const length = Math.max(...lists.map(([, list]) => list.length));
  const byName = new Map(lists);
  const rows = Array.from({ length }, (_, i) => ({ number: i + 1, cell: (column: string) => byName.get(column)?.[i] }));
  return { kind: 'json', columns: [...byName.keys()], rows };
}

function counted(table: TableRows): Result<TableRows> {
  if (table.rows.length === 0) return problem('empty', 'The table has no rows');
  if (table.rows.length > MOST_ROWS) return problem('too-long', `At most ${MOST_ROWS} rows are read`, MOST_ROWS);
  return { ok: true, value: table };
}

function place(columns: readonly string[], wanted: string): number {
  const exact = columns.indexOf(wanted.trim());
  return exact >= 0 ? exact : columns.findIndex((column) => column.toLowerCase() === wanted.trim().toLowerCase());
}

function filled(cells: readonly string[]): number {
  return cells.filter((cell) => cell !== '').length;
}

function partsOf(value: unknown): unknown[] {
  return describesObject(value) ? Object.values(value) : [];
}

/** Names of plain values, and of those one level down. */
function pathsOf(row: Record<string, unknown>): string[] {
  return Object.entries(row).flatMap(([name, value]) =>
    describesObject(value) ? Object.keys(value).map((inner) => `${name}.${inner}`) : [name],
  );
}

/** A value by its own name, dots and all, or by the path that the dots make. */
function valueAt(value: unknown, path: string): unknown {
  if (!describesObject(value)) return undefined;
  if (Object.hasOwn(value, path)) return value[path];
  const dot = path.indexOf('.');
  const head = path.slice(0, dot);
  return dot > 0 && Object.hasOwn(value, head) ? valueAt(value[head], path.slice(dot + 1)) : undefined;
}

function describesObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function noColumn(column: string): Problem {
  return { code: 'no-column', path: column, message: `The table has no column ${JSON.stringify(column)}` };
}

function problem(code: string, message: string, limit?: number): Result<never> {
  return { ok: false, problems: [{ code, path: '', message, limit }] };
}
