import Papa from 'papaparse';
import type { Result } from '../units/result.ts';
import { type DecimalSign, decimalSignOf } from './table-cells.ts';
import { type Meaning, recognised } from './table-meanings.ts';

/** Characters of a table; rows and columns of it. */
const TEXT_LIMIT = 5e6;
const MOST_ROWS = 5000;
const MOST_COLUMNS = 100;
const SAMPLE_LENGTH = 60;

export interface TableColumn {
  readonly header: string;
  /** The first cell that is not empty. */
  readonly sample: string;
  /** What its head says it is. Absent: not known, not read. */
  readonly meaning?: Meaning;
  /** Sign of the unit its figures are in. */
  readonly unit?: string;
}

export interface TableRow {
  /** As a spreadsheet counts them, from 1. */
  readonly number: number;
  /** As many as there are columns, without spaces round them. */
  readonly cells: readonly string[];
}

/** A table of runs as read, before its columns are given their meaning. */
export interface RunsTable {
  readonly columns: readonly TableColumn[];
  readonly rows: readonly TableRow[];
  readonly decimal: DecimalSign;
}

/** What a column stands for and in which unit; undefined: not read. As many as there are columns. */
export type TableMapping = readonly ({ readonly meaning: Meaning; readonly unit?: string } | undefined)[];

/** Only these may stand in several columns: a pass each. */
const REPEATED: readonly Meaning[] = ['speed-out', 'speed-back'];

/**
 * Reads comma, semicolon or tab separated text and guesses what each column is. The first row with at least two cells
 * is taken as heads. Nothing is understood of the figures yet: show the mapping, then `runsFromTable`.
 */
export function tableColumns(text: string): Result<RunsTable> {
  if (text.length > TEXT_LIMIT) {
    return refusal(
      'too-big',
      `The table is too large: at most ${TEXT_LIMIT / 1e6} million characters are read`,
      TEXT_LIMIT,
    );
  }
  const bare = text.replace(/^\ufeff/, '');
  const delimiter = delimiterOf(bare);
  // Some more than allowed, to tell.
  const { data, errors } = Papa.parse<string[]>(bare, { delimiter, preview: MOST_ROWS + 50 });
  const open = errors.find(({ type }) => type === 'Quotes');
  if (open) {
    const row = (open.row ?? 0) + 1;
    return refusal('quotes', `A quotation mark in row ${row} is not closed, or stands within a cell`);
  }
  const filled = data
    .map((cells, index) => ({ number: index + 1, cells: cells.map((cell) => cell.trim()) }))
    .filter(({ cells }) => cells.some((cell) => cell !== ''));
  const head = filled.findIndex(({ cells }) => cells.filter((cell) => cell !== '').length >= 2);
  if (head < 0)
    return refusal('no-table', 'This is not a table: no row has two cells parted by comma, semicolon or tab');
  const rows = filled.slice(head + 1);
  if (rows.length === 0) return refusal('no-rows', 'The table has heads but no rows under them');
  if (rows.length > MOST_ROWS) return refusal('too-big', `The table has more than ${MOST_ROWS} rows`, MOST_ROWS);
  const width = Math.max(...filled.slice(head).map(({ cells }) => cells.length));
  if (width > MOST_COLUMNS) return refusal('too-big', `The table has more than ${MOST_COLUMNS} columns`, MOST_COLUMNS);

  const heads = filled[head]!.cells;
  const even = rows.map(({ number, cells }) => ({
    number,
    cells: Array.from({ length: width }, (_, column) => cells[column] ?? ''),
  }));
  const columns = Array.from({ length: width }, (_, column): TableColumn => {
    const sample = even.find(({ cells }) => cells[column] !== '')?.cells[column] ?? '';
    return { header: heads[column] ?? '', sample: sample.slice(0, SAMPLE_LENGTH), ...recognised(heads[column] ?? '') };
  });
  const decimal = decimalSignOf(
    even.flatMap(({ cells }) => cells),
    delimiter,
  );
  return { ok: true, value: { columns: withoutDoubts(columns), rows: even, decimal } };
}

function refusal(code: string, message: string, limit?: number): Result<never> {
  return { ok: false, problems: [{ code, path: '', message, ...(limit !== undefined && { limit }) }] };
}

/** The sign that parts the head into cells, and most rows into as many. */
function delimiterOf(text: string): string {
  let best = { sign: ',', even: 0, cells: 0 };
  for (const sign of [',', ';', '\t', '|']) {
    const { data } = Papa.parse<string[]>(text, { delimiter: sign, preview: 30, skipEmptyLines: 'greedy' });
    const cells = data.find((row) => row.length >= 2)?.length ?? 0;
    if (cells < 2) continue;
    const even = data.filter((row) => row.length === cells).length / data.length;
    if (even > best.even || (even === best.even && cells > best.cells)) best = { sign, even, cells };
  }
  return best.sign;
}

/** Each meaning once, unless it may repeat; a time of day is no duration. */
function withoutDoubts(columns: readonly TableColumn[]): TableColumn[] {
  const amounts = columns.some(({ meaning }) => meaning === 'fuel' || meaning === 'energy');
  return columns.map((column, index) => {
    const { meaning, header, sample } = column;
    const again = columns.findIndex((other) => other.meaning === meaning) < index;
    const twice = again && meaning !== undefined && !REPEATED.includes(meaning);
    const clock = meaning === 'time' && !amounts;
    return twice || clock ? { header, sample } : column;
  });
}
