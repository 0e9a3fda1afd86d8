import type { Problem } from '../units/result.ts';
import { durationOf, figureOf } from './table-cells.ts';
import type { RunsTable, TableMapping, TableRow } from './table-columns.ts';
import { MEASURED, type Meaning } from './table-meanings.ts';
import { unitNamed, unitsOf } from './table-units.ts';

/** What people write where there is nothing to write. */
const EMPTY = /^(?:[-\u2013\u2014.?]|n\/?a)?$/i;

/** The cells of a row by their meaning; keeps what was wrong with any. */
export class RowCells {
  readonly problems: Problem[] = [];
  readonly #table: RunsTable;
  readonly #mapping: TableMapping;
  readonly #row: TableRow;

  constructor(table: RunsTable, mapping: TableMapping, row: TableRow) {
    this.#table = table;
    this.#mapping = mapping;
    this.#row = row;
  }

  maps(meaning: Meaning): boolean {
    return this.#mapping.some((each) => each?.meaning === meaning);
  }

  /** What stands in the cell; undefined where nothing does. */
  text(meaning: Meaning): string | undefined {
    const cell = this.#row.cells[this.#columnOf(meaning)];
    if (cell === undefined || EMPTY.test(cell)) return undefined;
    // Spreadsheets take an apostrophe in front for "this is text"; the writer sets it against formulas.
    return cell.replace(/^'(?=[=+\-@])/, '');
  }

  read<T>(meaning: Meaning, reader: (cell: string) => T | undefined, wrong: string): T | undefined {
    const cell = this.text(meaning);
    if (cell === undefined) return undefined;
    const value = reader(cell);
    if (value === undefined) this.#refuseCell('unreadable', this.#columnOf(meaning), wrong);
    return value;
  }

  figure(meaning: Meaning): number | undefined {
    return this.#figureAt(this.#columnOf(meaning), meaning);
  }

  /** All speeds over ground of the row, in the order of their columns. */
  speeds(): { readonly meaning: Meaning; readonly value: number }[] {
    return this.#mapping.flatMap((each, column) => {
      if (!each || !/^speed/.test(each.meaning)) return [];
      const value = this.#figureAt(column, each.meaning);
      return value === undefined ? [] : [{ meaning: each.meaning, value }];
    });
  }

  refuse(code: string, message: string, meaning?: Meaning): void {
    if (meaning !== undefined) {
      this.#refuseCell(code, this.#columnOf(meaning), message);
      return;
    }
    const { number } = this.#row;
    this.problems.push({ code, path: `rows.${number}`, message: `Row ${number}: ${message}` });
  }

  #columnOf(meaning: Meaning): number {
    return this.#mapping.findIndex((each) => each?.meaning === meaning);
  }

  #figureAt(column: number, meaning: Meaning): number | undefined {
    const cell = this.#row.cells[column];
    const measured = MEASURED[meaning];
    if (!measured || cell === undefined || EMPTY.test(cell)) return undefined;
    const given = this.#mapping[column]?.unit;
    const unit = (given === undefined ? undefined : unitNamed(measured.in, given)) ?? unitsOf(measured.in)[0]!;
    const { decimal } = this.#table;
    const value = meaning === 'time' ? durationOf(cell, decimal, unit) : figureOf(cell, decimal, unit);
    if (value === undefined) {
      this.#refuseCell(
        'unreadable',
        column,
        `"${cell.slice(0, 40)}" is not a figure${unit.sign ? ` in ${unit.sign}` : ''}`,
      );
    } else if (value < measured.least || value > measured.most) {
      const most = value > measured.most;
      const limit = most ? measured.most : measured.least;
      this.#refuseCell(
        'out-of-range',
        column,
        `"${cell.slice(0, 40)}" ${unit.sign} is too ${most ? 'much' : 'little'}`,
        limit,
      );
      return undefined;
    }
    return value;
  }

  #refuseCell(code: string, column: number, message: string, limit?: number): void {
    const { number } = this.#row;
    const { header } = this.#table.columns[column]!;
    this.problems.push({
      code,
      path: `rows.${number}.${header}`,
      message: `Row ${number}, "${header}": ${message}`,
      ...(limit !== undefined && { limit }),
    });
  }
}
