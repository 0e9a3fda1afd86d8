import { html, type TemplateResult } from 'lit';
import type { LoadColumn, LoadTable } from '../../core/compare/shapes.ts';
import type { Measures } from '../units/measures.ts';
import { propellerText, compareWords as words } from '../words/en-compare.ts';
import { shaftWords } from '../words/en-craft.ts';
import { dataName } from '../words/en-data.ts';
import { cellDrawing, toneOf } from './cell-drawing.ts';
import type { NamedRow } from './rows.ts';
import { storeName } from './setups.ts';

/** Rows of loads, columns of engines. In a narrow place each cell becomes a card; the roles spelled out survive that. */
export function tableDrawing(table: LoadTable, rows: readonly NamedRow[], m: Measures): TemplateResult {
  return html`<div class="scroll" tabindex="0" role="group" aria-label=${words.table}>
    <table role="table">
      <caption>${words.caption}</caption>
      <thead role="rowgroup">
        <tr role="row">
          <th role="columnheader" scope="col">${words.load}</th>
          ${table.columns.map((column) => html`<th role="columnheader" scope="col">${columnHead(column, m)}</th>`)}
        </tr>
      </thead>
      <tbody role="rowgroup">
        ${rows.map((row, i) => tableRow(row, table, i, m))}
      </tbody>
    </table>
  </div>`;
}

function columnHead({ drive, store }: LoadColumn, m: Measures) {
  const shaft = drive.shaft ? `, ${words.shaftOf(shaftWords[drive.shaft])}` : '';
  return html`<span class="engine">${dataName(drive.name)}</span>
    <span class="under">${propellerText(drive.propeller, m.lang)}${shaft}; ${m.show('mass', drive.mass)}</span>
    <span class="under">${storeName(store)}</span>`;
}

function tableRow(row: NamedRow, table: LoadTable, i: number, m: Measures) {
  const cells = table.cells[i]!;
  const masses = cells.map(({ mass }) => mass);
  const [least, most] = [Math.min(...masses), Math.max(...masses)];
  const allUp = m.band('mass', { low: least, median: least, high: most });
  return html`<tr role="row">
    <th role="rowheader" scope="row"><span>${row.name}</span> <span class="under">${words.allUp(allUp)}</span></th>
    ${cells.map((cell, j) => {
      const { drive } = table.columns[j]!;
      return html`<td role="cell" class=${toneOf(cell)}>
        <span class="of" aria-hidden="true">${dataName(drive.name)}</span>
        ${cellDrawing(cell, m)}
      </td>`;
    })}
  </tr>`;
}
