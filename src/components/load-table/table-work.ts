import { loadTable, type TableQuestion } from '../../core/compare/load-table.ts';
import type { Cell, LoadColumn, LoadRow } from '../../core/compare/shapes.ts';
import type { Hull } from '../../core/craft/shapes.ts';

export interface TableWork {
  readonly hull: Hull;
  readonly rows: readonly LoadRow[];
  readonly columns: readonly LoadColumn[];
  readonly question: TableQuestion;
}

/** The table row by row. */
export function* tableWork({ hull, rows, columns, question }: TableWork): Generator<readonly Cell[]> {
  for (const row of rows) yield loadTable(hull, [row], columns, question).cells[0]!;
}
