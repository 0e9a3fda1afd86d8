import { html, nothing } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { TableRuns } from '../../core/files/runs-table.ts';
import type { RunsTable, TableMapping } from '../../core/files/table-columns.ts';
import type { Meaning } from '../../core/files/table-meanings.ts';
import type { Trials } from '../../core/trials/shapes.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { choice } from '../open-text/column-choice.ts';
import { problemList } from '../open-text/problem-list.ts';
import '../open-text/text-source.ts';
import type { TextRead } from '../open-text/text-source.ts';
import { saveFile } from '../planner/save-file.ts';
import { controls } from '../theme/controls.styles.ts';
import { openFileStyles } from '../theme/open-file.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { dataName } from '../words/en-data.ts';
import { problemText } from '../words/en-problems.ts';
import { meaningWords, tableWords as words } from '../words/en-trials.ts';
import { lastLoad } from './edit-trials.ts';
import { rowTableStyles } from './row-table.styles.ts';
import { tableImportStyles } from './table-import.styles.ts';
import { setupName } from './texts.ts';
import type { RunsMade } from './track-import.ts';

type Door = typeof import('./table-door.ts');
type ColumnMeaning = TableMapping[number];

/**
 * @summary Reads runs from a table: what each column means is shown first and can be changed. Saves runs as a table.
 * @fires runs-made - the user takes the runs over
 */
export class TableImport extends SpeakingElement {
  static override styles = [tokens, controls, openFileStyles, rowTableStyles, tableImportStyles];

  @property({ attribute: false }) trials: Trials | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  @state() private table: RunsTable | undefined;
  @state() private mapping: TableMapping = [];
  @state() private name = '';
  @state() private message = '';

  #door: Door | undefined;

  override render() {
    const { trials } = this;
    if (!trials) return nothing;
    return html`
      <p class="why">${words.why}</p>
      <homeleg-text-source
        primary
        accept=".csv,.tsv,.txt,text/csv,text/tab-separated-values,text/plain"
        .words=${words}
        .message=${this.message}
        @text-read=${({ detail: { text, name } }: TextRead) => this.#read(text, name)}
      >
        <button type="button" ?disabled=${trials.runs.length === 0} @click=${() => this.#saved(trials)}>${words.save}</button>
      </homeleg-text-source>
      ${this.table ? this.#columns(trials, this.table) : nothing}
    `;
  }

  #columns(trials: Trials, table: RunsTable) {
    const found = this.#runs(trials, table);
    return html`
      <h3>${words.columnsOf(this.name)}</h3>
      <table role="table">
        <caption class="sr">${words.columnsOf(this.name)}</caption>
        <thead role="rowgroup">
          <tr role="row">
            ${[words.column, words.firstCell, words.means, words.unit].map(
              (name) => html`<th role="columnheader" scope="col">${name}</th>`,
            )}
          </tr>
        </thead>
        <tbody role="rowgroup">
          ${table.columns.map(({ header, sample }, i) => this.#row(header, sample, i))}
        </tbody>
      </table>
      ${found ? this.#outcome(found) : nothing}
    `;
  }

  #row(header: string, sample: string, i: number) {
    const now = this.mapping[i];
    const units = now ? (this.#door?.unitsFor(now.meaning) ?? []) : [];
    const name = header || words.unnamed(i + 1);
    return html`<tr role="row" class=${now ? '' : 'aside'}>
      <th role="rowheader" scope="row">${name}</th>
      ${this.#cell(words.firstCell, sample || '\u2013')}
      ${this.#cell(
        words.means,
        choice({
          name: words.meaningOf(name),
          options: [['', words.notRead], ...Object.entries(meaningWords)],
          now: now?.meaning ?? '',
          chosen: (meaning) => this.#meant(i, meaning),
        }),
      )}
      ${this.#cell(
        words.unit,
        units.length > 0
          ? choice({
              name: words.unitOf(name),
              options: units.map(({ sign }) => [sign, sign] as const),
              now: now?.unit ?? '',
              chosen: (unit) => this.#measured(i, unit),
            })
          : '\u2013',
      )}
    </tr>`;
  }

  #cell(label: string, value: unknown) {
    return html`<td role="cell"><span class="label" aria-hidden="true">${label}</span><div>${value}</div></td>`;
  }

  #outcome({ runs, problems }: TableRuns) {
    return html`
      <div role="status">
        <p class="sum">${words.readable(runs.length)}</p>
        ${problemList(problems, words.more)}
      </div>
      <div class="buttons">
        <button type="button" class="primary" ?disabled=${runs.length === 0} @click=${() => this.#taken(runs)}>
          ${words.take(runs.length)}
        </button>
        <button type="button" @click=${this.#closed}>${words.close}</button>
      </div>
    `;
  }

  #runs(trials: Trials, table: RunsTable): TableRuns | undefined {
    return this.#door?.runsFromTable(table, this.mapping, {
      setups: trials.setups.map((setup) => ({
        id: setup.id,
        name: trials.setups.length > 1 ? setupName(setup, this.measures) : dataName(setup.drive.name),
        kind: setup.drive.kind,
      })),
      load: lastLoad(trials),
      taken: trials.runs.map(({ id }) => id),
    });
  }

  async #read(text: string, name: string): Promise<void> {
    try {
      this.#door ??= await import('./table-door.ts');
    } catch {
      this.message = words.failed;
      return;
    }
    const read = this.#door.tableColumns(text);
    this.table = read.ok ? read.value : undefined;
    this.name = name;
    this.message = read.ok
      ? ''
      : this.say(() => read.problems.map((problem) => `${name}: ${problemText(problem)}.`).join(' '));
    this.mapping = read.ok
      ? read.value.columns.map(({ meaning, unit }): ColumnMeaning => meaning && { meaning, ...(unit && { unit }) })
      : [];
  }

  #meant(i: number, meaning: string): void {
    const unit = meaning ? this.#door?.unitsFor(meaning as Meaning)[0]?.sign : undefined;
    this.mapping = this.mapping.with(i, meaning ? { meaning: meaning as Meaning, ...(unit && { unit }) } : undefined);
  }

  #measured(i: number, unit: string): void {
    const now = this.mapping[i];
    if (now) this.mapping = this.mapping.with(i, { ...now, unit });
  }

  #taken(runs: TableRuns['runs']): void {
    this.#closed();
    this.dispatchEvent(new CustomEvent('runs-made', { detail: { runs }, bubbles: true }) satisfies RunsMade);
  }

  #closed(): void {
    this.table = undefined;
    this.message = '';
  }

  async #saved(trials: Trials): Promise<void> {
    try {
      this.#door ??= await import('./table-door.ts');
      saveFile('runs.csv', this.#door.runsTable(trials), 'text/csv');
    } catch {
      this.message = words.failed;
    }
  }
}

define('homeleg-table-import', TableImport);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-table-import': TableImport;
  }
}
