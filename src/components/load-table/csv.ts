/** A cell of a CSV file: text or a figure in the unit its heading names; undefined stays empty. */
export type CsvCell = string | number | undefined;

/**
 * Rows as CSV (RFC 4180): commas, points, CRLF. Text that a spreadsheet would take for a formula is kept text by an
 * apostrophe; no-break spaces become plain ones.
 */
export function csvText(rows: readonly (readonly CsvCell[])[]): string {
  return rows.map((row) => `${row.map(written).join(',')}\r\n`).join('');
}

function written(cell: CsvCell): string {
  if (cell === undefined) return '';
  if (typeof cell === 'number') return Number.isFinite(cell) ? String(Number(cell.toPrecision(4))) : '';
  // Spaces that keep a figure and its unit together are a screen's; in a table they hinder searching.
  const plain = cell.replaceAll(/[\u00a0\u202f]/g, ' ');
  const text = /^[=+\-@\t\r]/.test(plain) ? `'${plain}` : plain;
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
