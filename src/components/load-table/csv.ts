/** A cell of a CSV file: text or a figure in the unit its heading names; undefined stays empty. */
export type CsvCell = string | number | undefined;

/**
 * Rows as CSV (RFC 4180): commas, points, CRLF. Text that a spreadsheet would take for a formula is kept text by an
 * apostrophe.
 */
export function csvText(rows: readonly (readonly CsvCell[])[]): string {
  return rows.map((row) => `${row.map(written).join(',')}\r\n`).join('');
}

function written(cell: CsvCell): string {
  if (cell === undefined) return '';
  if (typeof cell === 'number') return Number.isFinite(cell) ? String(Number(cell.toPrecision(4))) : '';
  const text = /^[=+\-@\t\r]/.test(cell) ? `'${cell}` : cell;
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
