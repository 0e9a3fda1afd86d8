import { html, nothing } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { Hire } from '../../core/hire/shapes.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { saveFile } from '../planner/save-file.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { logWords as words } from '../words/en-desk.ts';
import { dayLogStyles } from './day-log.styles.ts';
import { deskFormStyles } from './desk-form.styles.ts';
import { dayOf, dayText } from './desk-time.ts';
import { logCsv } from './log-csv.ts';
import { hiresOn, logDays, logRow } from './log-rows.ts';
import { printOn } from './paper.ts';

const COLUMNS = [
  'boat',
  'where',
  'people',
  'weight',
  'answer',
  'left',
  'due',
  'back',
  'late',
  'used',
  'shown',
  'note',
] as const;

/** @summary The hires of a day, to read, print and save. */
export class DayLog extends SpeakingElement {
  static override styles = [tokens, controls, deskFormStyles, dayLogStyles];

  @property({ attribute: false }) hires: readonly Hire[] = [];
  @property({ type: Number }) now = 0;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  @state() private day = '';

  override render() {
    const { measures: m } = this;
    const today = dayOf(this.now);
    const day = this.day || today;
    const hires = hiresOn(this.hires, day);
    return html`<section class="card" aria-label=${words.title}>
      <h2>${words.title}<span class="only-paper">: ${dayText(day, m.lang)}</span></h2>
      <div class="row off-paper">
        <label class="days">
          ${words.day}
          <select @change=${(event: Event) => (this.day = (event.target as HTMLSelectElement).value)}>
            ${logDays(this.hires, today).map(
              (each) => html`<option value=${each} .selected=${each === day}>${dayText(each, m.lang)}</option>`,
            )}
          </select>
        </label>
        <button type="button" ?disabled=${hires.length === 0} @click=${() => this.#save(hires, day)}>${words.csv}</button>
        <button type="button" ?disabled=${hires.length === 0} @click=${() => printOn('A4')}>${words.print}</button>
      </div>
      ${hires.length === 0 ? html`<p class="muted">${words.none}</p>` : this.#table(hires)}
    </section>`;
  }

  #table(hires: readonly Hire[]) {
    const rows = hires.map((hire) => logRow(hire, this.now, this.measures));
    const shown = COLUMNS.filter((column) => rows.some((row) => row[column] !== ''));
    return html`<table role="table">
      <thead role="rowgroup">
        <tr role="row">
          ${shown.map((column) => html`<th role="columnheader" scope="col">${words[column]}</th>`)}
        </tr>
      </thead>
      <tbody role="rowgroup">
        ${rows.map(
          (row) => html`<tr role="row">
            ${shown.map(
              (column) => html`<td role="cell" class=${row[column] === '' ? 'empty' : ''}>
                <span class="name" aria-hidden="true">${words[column]}</span>
                ${row[column] === '' ? nothing : row[column]}
              </td>`,
            )}
          </tr>`,
        )}
      </tbody>
    </table>`;
  }

  #save(hires: readonly Hire[], day: string): void {
    saveFile(`hire-log-${day}.csv`, logCsv(hires, day, this.now, this.measures), 'text/csv');
  }
}

define('homeleg-day-log', DayLog);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-day-log': DayLog;
  }
}
