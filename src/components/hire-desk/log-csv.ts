import Papa from 'papaparse';
import type { Hire } from '../../core/hire/shapes.ts';
import type { Measures } from '../units/measures.ts';
import { logWords as words } from '../words/en-desk.ts';
import { type LogRow, logRow } from './log-rows.ts';

const LOG_COLUMNS = [
  'boat',
  'where',
  'people',
  'weight',
  'answer',
  'experience',
  'checked',
  'left',
  'due',
  'back',
  'late',
  'used',
  'shown',
  'note',
] as const satisfies readonly (keyof LogRow)[];

/**
 * The log of a day as CSV with a byte order mark, for spreadsheets. Text that one would take for a formula is kept text
 * by an apostrophe, also behind spaces. Contacts stay out.
 */
export function logCsv(hires: readonly Hire[], day: string, now: number, m: Measures): string {
  const rows = hires.map((hire) => {
    const row = logRow(hire, now, m);
    return [day, ...LOG_COLUMNS.map((column) => plain(row[column]))];
  });
  const csv = Papa.unparse(
    { fields: [words.day, ...LOG_COLUMNS.map((column) => words[column])], data: rows },
    { newline: '\r\n', escapeFormulae: /^\s*[=+\-@\t\r|]/ },
  );
  return `\uFEFF${csv}\r\n`;
}

/** No-break spaces, which spreadsheets take for letters, become plain ones. */
function plain(cell: string | number): string | number {
  return typeof cell === 'string' ? cell.replaceAll('\u00a0', ' ') : cell;
}
