import { html, nothing, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { LatLon } from '../../core/route/shapes.ts';
import type { WindAt } from '../../core/water/shapes.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import type { NamedText } from '../open-text/text-source.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { conditionWords } from '../words/en-forms.ts';
import { windWords as words } from '../words/en-wind.ts';
import './forecast-fetch.ts';
import type { ForecastFetched } from './forecast-fetch.ts';
import type { ForecastTaken } from './forecast-import.ts';
import { type PlaceClock, placeClock } from './place-clock.ts';
import {
  inOrder,
  nextRow,
  type ReadRow,
  readRow,
  rowOf,
  sortedRows,
  type WindCell,
  type WindRow,
} from './wind-rows.ts';
import { windTableStyles } from './wind-table.styles.ts';
import { faultText, reachTold } from './wind-texts.ts';

/** The rows that are filled in, by time; empty while there is none. */
export type ForecastEdited = CustomEvent<{ forecast: readonly WindAt[] }>;

/** Rows shown before somebody asks for all. */
const FIRST = 12;

/**
 * @summary Wind by time as a small table: typed, taken from a file or the clipboard, or fetched where the host allows it.
 * @fires forecast-edited - other rows are filled in
 */
export class WindTable extends SpeakingElement {
  static override styles = [tokens, controls, windTableStyles];

  @property({ attribute: false }) forecast: readonly WindAt[] = [];
  @property({ attribute: false }) measures: Measures = NAUTICAL;
  /** ISO 8601 with offset. */
  @property() departure: string | undefined;
  @property() timezone: string | undefined;
  /** How long the trip takes at its slowest, s. */
  @property({ attribute: false }) duration: number | undefined;
  /** Start of the route, for which a forecast is fetched. */
  @property({ attribute: false }) place: LatLon | undefined;
  /** Address of a forecast with {lat} and {lon}, set by the host; empty: nothing is fetched. */
  @property() source = '';

  @state() private rows: readonly WindRow[] = [];
  @state() private all = false;
  @state() private message = '';
  @state() private fetched: NamedText | undefined;
  @state() private importing = false;

  #told: readonly WindAt[] | undefined;
  #writtenIn = '';
  #keys = 0;
  /** Cells that somebody left, whose faults are said. */
  #left = new Set<string>();

  protected override willUpdate(changed: PropertyValues<this>): void {
    const { system, lang } = this.measures;
    const clock = this.#clock;
    const written = `${system} ${lang} ${this.timezone} ${clock.offsetAt(0)}`;
    const outside = changed.has('forecast') && this.forecast !== this.#told;
    if (outside || (this.#writtenIn !== written && this.#winds.length === this.rows.length)) {
      const winds = this.#told === undefined || outside ? this.forecast : this.#told;
      this.rows = winds.map((wind) => rowOf(wind, ++this.#keys, clock, this.measures));
      this.#left.clear();
      this.#told = winds;
    }
    this.#writtenIn = written;
    if (this.rows.length === 0 && !this.hasUpdated) this.rows = [nextRow([], ++this.#keys, this.departure, clock)];
  }

  get #clock(): PlaceClock {
    return placeClock(this);
  }

  get #winds(): readonly WindAt[] {
    return this.rows.flatMap((row) => readRow(row, this.#clock, this.measures).wind ?? []);
  }

  override render() {
    const { rows } = this;
    const unit = this.measures.unit('speed');
    const shown = this.all ? rows : rows.slice(0, FIRST + 2);
    return html`<div class="stack">
      ${rows.length === 0 ? html`<p class="hint">${words.empty}</p>` : nothing}
      <table role="table" ?hidden=${rows.length === 0}>
        <caption class="sr">${words.title}</caption>
        <thead role="rowgroup">
          <tr role="row">
            ${[words.time, words.from, words.speed(unit), words.gust(unit)].map(
              (name) => html`<th role="columnheader" scope="col">${name}</th>`,
            )}
            <td role="cell"></td>
          </tr>
        </thead>
        <tbody role="rowgroup">
          ${repeat(
            shown,
            ({ key }) => key,
            (row, i) => this.#row(row, i),
          )}
        </tbody>
      </table>
      <div class="buttons">
        ${
          shown.length < rows.length
            ? html`<button type="button" class="quiet" @click=${() => (this.all = true)}>${words.all(rows.length)}</button>`
            : nothing
        }
        <button type="button" @click=${this.#added}>${words.add}</button>
        ${inOrder(rows) ? nothing : html`<button type="button" @click=${this.#sorted}>${words.sort}</button>`}
      </div>
      ${this.#reach()}
      ${
        this.source
          ? html`<homeleg-forecast-fetch
              .source=${this.source}
              .place=${this.place}
              .departure=${this.departure}
              .duration=${this.duration}
              @forecast-fetched=${this.#answered}
            ></homeleg-forecast-fetch>`
          : nothing
      }
      <p role="status" class="problem" ?hidden=${!this.message}>${this.message}</p>
      <details ?open=${this.importing} @toggle=${this.#importToggled}>
        <summary>${words.import}</summary>
        <div class="inside">
          ${
            this.importing
              ? html`<homeleg-forecast-import
                  .measures=${this.measures}
                  .departure=${this.departure}
                  .timezone=${this.timezone}
                  .given=${this.fetched}
                  @forecast-taken=${this.#taken}
                ></homeleg-forecast-import>`
              : nothing
          }
        </div>
      </details>
    </div>`;
  }

  #row(row: WindRow, i: number) {
    const read = readRow(row, this.#clock, this.measures);
    const unit = this.measures.unit('speed');
    return html`<tr role="row">
      ${this.#cell(row, i, 'time', words.time, read)} ${this.#cell(row, i, 'from', words.from, read)}
      ${this.#cell(row, i, 'speed', words.speed(unit), read)} ${this.#cell(row, i, 'gust', words.gust(unit), read)}
      <td role="cell">
        <button type="button" class="icon" aria-label=${words.remove(i + 1)} @click=${() => this.#removed(row)}>×</button>
      </td>
    </tr>`;
  }

  #cell(row: WindRow, i: number, cell: WindCell, name: string, { faults }: ReadRow) {
    const figure = cell === 'speed' || cell === 'gust';
    const fault = faults[cell];
    const said = fault && this.#left.has(`${row.key} ${cell}`) ? faultText(fault, cell, this.measures) : '';
    const id = `${cell}-${row.key}`;
    return html`<td role="cell" class=${cell}>
      <span class="label" aria-hidden="true">${name}</span>
      <input
        id=${id}
        type=${cell === 'time' ? 'datetime-local' : 'text'}
        inputmode=${figure ? 'decimal' : nothing}
        autocomplete="off"
        autocapitalize=${cell === 'from' ? 'characters' : nothing}
        placeholder=${cell === 'from' && i === 0 ? words.fromHint : nothing}
        aria-label=${words.cell(name, i + 1)}
        aria-invalid=${said ? 'true' : nothing}
        aria-describedby=${said ? `${id}-problem` : nothing}
        .value=${row[cell]}
        @input=${(event: Event) => this.#typed(row, cell, (event.target as HTMLInputElement).value)}
        @change=${() => this.#cellLeft(row, cell)}
      />
      ${said ? html`<p id="${id}-problem" class="problem">${said}</p>` : nothing}
    </td>`;
  }

  #reach() {
    const { departure, duration } = this;
    const trip = { departure, duration, clock: this.#clock };
    const { lines, fine } = reachTold(this.rows, this.#winds, trip, this.measures);
    if (lines.length === 0) return nothing;
    return html`<p class="reach ${fine ? '' : 'short'}" aria-live="polite">${lines.join(' ')}</p>`;
  }

  #typed(row: WindRow, cell: WindCell, text: string): void {
    this.#keep(this.rows.map((each) => (each.key === row.key ? { ...each, [cell]: text } : each)));
  }

  #cellLeft({ key }: WindRow, cell: WindCell): void {
    this.#left.add(`${key} ${cell}`);
    this.requestUpdate();
  }

  async #added(): Promise<void> {
    const row = nextRow(this.rows, ++this.#keys, this.departure, this.#clock);
    this.all ||= this.rows.length >= FIRST;
    this.#keep([...this.rows, row]);
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLInputElement>(`#${row.from === '' ? 'from' : 'speed'}-${row.key}`)?.focus();
  }

  async #removed({ key }: WindRow): Promise<void> {
    const at = this.rows.findIndex((row) => row.key === key);
    this.#keep(this.rows.filter((row) => row.key !== key));
    await this.updateComplete;
    const buttons = this.renderRoot.querySelectorAll<HTMLButtonElement>('tbody .icon');
    (
      buttons[Math.min(at, buttons.length - 1)] ?? this.renderRoot.querySelector<HTMLElement>('.buttons button')
    )?.focus();
  }

  #sorted(): void {
    this.#keep(sortedRows(this.rows));
  }

  #taken({ detail }: ForecastTaken): void {
    this.importing = false;
    this.fetched = undefined;
    this.#left.clear();
    this.all = false;
    this.#keep(
      detail.forecast.map((wind) => rowOf(wind, ++this.#keys, this.#clock, this.measures)),
      detail.forecast,
    );
  }

  /** `exact`: winds that need not go through the rounding of the cells. */
  #keep(rows: readonly WindRow[], exact?: readonly WindAt[]): void {
    this.rows = rows;
    const forecast = exact ?? this.#winds;
    this.#told = forecast;
    this.forecast = forecast;
    const detail = { forecast };
    this.dispatchEvent(new CustomEvent('forecast-edited', { detail, bubbles: true }) satisfies ForecastEdited);
  }

  async #importToggled(event: Event): Promise<void> {
    const { open } = event.currentTarget as HTMLDetailsElement;
    if (!open) {
      this.importing = false;
      return;
    }
    await this.#openImport();
  }

  async #openImport(): Promise<void> {
    try {
      await import('./forecast-import.ts');
      this.message = '';
      this.importing = true;
    } catch {
      this.message = this.say(() => conditionWords.partFailed);
    }
  }

  async #answered({ detail }: ForecastFetched): Promise<void> {
    this.fetched = detail;
    await this.#openImport();
  }
}

define('homeleg-wind-table', WindTable);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-wind-table': WindTable;
  }
}
