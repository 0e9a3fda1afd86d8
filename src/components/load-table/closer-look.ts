import { html, nothing, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { Changes } from '../../core/compare/changes.ts';
import type { Setting } from '../../core/compare/loaded.ts';
import type { PropellerAdvice } from '../../core/compare/propeller-advice.ts';
import { usualWindow } from '../../core/compare/propeller-advice.ts';
import type { LoadColumn } from '../../core/compare/shapes.ts';
import type { Hull } from '../../core/craft/shapes.ts';
import { curveWords } from '../curve-plot/words.ts';
import { define } from '../define.ts';
import { fieldStyles } from '../field/field.styles.ts';
import type { QuantityTyped } from '../field/quantity-field.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import '../field/quantity-field.ts';
import { controls } from '../theme/controls.styles.ts';
import { formStyles } from '../theme/form.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { adviceText, lookWords as words } from '../words/en-compare.ts';
import { dataName } from '../words/en-data.ts';
import { AfterRest, type GoOn } from './after-rest.ts';
import { changesTable } from './changes-drawing.ts';
import { closerLookStyles } from './closer-look.styles.ts';
import { type Looked, type LookWork, lookWork } from './look-work.ts';
import { tableWorker } from './new-worker.ts';
import { pieces } from './pieces.ts';
import { pitchTable } from './pitch-drawing.ts';
import type { NamedRow } from './rows.ts';

/**
 * @summary One load on one engine: whether its propeller suits, from the revs at full throttle, and what the usual
 * tricks change, with their size and how sure it is.
 */
export class CloserLook extends SpeakingElement {
  static override styles = [tokens, controls, fieldStyles, formStyles, closerLookStyles];

  @property({ attribute: false }) hull: Hull | undefined;
  @property({ attribute: false }) rows: readonly NamedRow[] = [];
  @property({ attribute: false }) columns: readonly LoadColumn[] = [];
  @property({ attribute: false }) setting: Setting = { water: 'sea', batteryTemperatureC: 10 };
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  @state() private rowId = 'crew-2';
  @state() private columnId = '';
  @state() private low: number | undefined;
  @state() private high: number | undefined;
  @state() private measuredRpm: number | undefined;
  @state() private crewMove = 0.3;
  @state() private trimDeg = 4;
  @state() private advice: PropellerAdvice | undefined;
  @state() private found: Changes | undefined;

  #row: NamedRow | undefined;
  #column: LoadColumn | undefined;
  readonly #later = new AfterRest(this, 150);

  protected override willUpdate(changed: PropertyValues<this>): void {
    const before = this.#column;
    this.#row = this.rows.find(({ id }) => id === this.rowId) ?? this.rows[0];
    this.#column = this.columns.find(({ id }) => id === this.columnId) ?? this.columns[1] ?? this.columns[0];
    // What was read off one engine says nothing of another.
    if (before && this.#column && before.drive.name !== this.#column.drive.name) {
      this.low = undefined;
      this.high = undefined;
      this.measuredRpm = undefined;
    }
    if ([...changed.keys()].some((key) => key !== 'advice' && key !== 'found')) {
      this.#later.start((goOn) => this.#workOut(goOn));
    }
  }

  override render() {
    const { advice, found } = this;
    return html`
      <section aria-labelledby="title">
        <h2 id="title">${words.title}</h2>
        <p class="hint">${words.hint}</p>
        <form class="fields pick" @submit=${(event: Event) => event.preventDefault()}>
          <div class="field">
            <label for="row">${words.load}</label>
            <select id="row" @change=${(event: Event) => (this.rowId = picked(event))}>
              ${this.rows.map(({ id, name }) => html`<option value=${id} .selected=${id === this.#row?.id}>${name}</option>`)}
            </select>
          </div>
          <div class="field">
            <label for="column">${words.engine}</label>
            <select id="column" @change=${(event: Event) => (this.columnId = picked(event))}>
              ${this.columns.map(
                ({ id, drive }) =>
                  html`<option value=${id} .selected=${id === this.#column?.id}>${dataName(drive.name)}</option>`,
              )}
            </select>
          </div>
        </form>
        ${advice ? this.#propeller(advice) : nothing} ${found ? this.#tricks(found) : nothing}
      </section>
    `;
  }

  #propeller(advice: PropellerAdvice) {
    const { window } = advice;
    return html`<div class="part">
      <h3>${words.propeller}</h3>
      <div class="fields">
        <fieldset class="window" aria-describedby="window-hint">
          <legend>${words.window}</legend>
          <div class="pair">
            ${this.#rpmField(words.low, this.low ?? window.low, (rpm) => (this.low = rpm))}
            ${this.#rpmField(words.high, this.high ?? window.high, (rpm) => (this.high = rpm))}
          </div>
          <p id="window-hint" class="hint">${words.windowHint}</p>
        </fieldset>
        <homeleg-quantity-field
          label=${words.measuredRpm}
          .unit=${curveWords.rpm}
          .unitSize=${1}
          .min=${300}
          .max=${9000}
          .measures=${this.measures}
          .value=${this.measuredRpm}
          hint=${words.measuredRpmHint}
          @quantity-typed=${(event: QuantityTyped) => (this.measuredRpm = event.detail.value)}
        ></homeleg-quantity-field>
      </div>
      ${this.#windowWrong() ? html`<p class="problem" role="alert">${words.windowProblem}</p>` : nothing}
      <div class=${`said ${advice.stuck || advice.finding !== 'in-window' ? 'doubt' : 'fine'}`} role="status">
        ${adviceText(advice, this.measures.lang).map((sentence) => html`<p>${sentence}</p>`)}
      </div>
      <details>
        <summary>${words.pitches}</summary>
        ${pitchTable(advice, this.measures)}
      </details>
    </div>`;
  }

  #rpmField(label: string, value: number, typed: (rpm: number | undefined) => void) {
    return html`<homeleg-quantity-field
      label=${label}
      .unit=${curveWords.rpm}
      .unitSize=${1}
      .min=${300}
      .max=${9000}
      .measures=${this.measures}
      .value=${value}
      @quantity-typed=${(event: QuantityTyped) => typed(event.detail.value)}
    ></homeleg-quantity-field>`;
  }

  #tricks(found: Changes) {
    return html`<div class="part">
      <h3>${words.changes}</h3>
      <div class="fields">
        <homeleg-quantity-field
          label=${words.crewMove}
          measure="length"
          required
          .min=${0.05}
          .max=${2}
          .measures=${this.measures}
          .value=${this.crewMove}
          @quantity-typed=${(event: QuantityTyped) => (this.crewMove = event.detail.value ?? this.crewMove)}
        ></homeleg-quantity-field>
        <homeleg-quantity-field
          label=${words.trimDeg}
          measure="angle"
          required
          .min=${0.5}
          .max=${15}
          .measures=${this.measures}
          .value=${this.trimDeg}
          hint=${words.trimHint}
          @quantity-typed=${(event: QuantityTyped) => (this.trimDeg = event.detail.value ?? this.trimDeg)}
        ></homeleg-quantity-field>
      </div>
      ${changesTable(found, { crewMove: this.crewMove, trimDeg: this.trimDeg, planing: this.hull?.form !== 'displacement' }, this.measures)}
      <p class="hint">${words.between}</p>
      ${this.hull?.form === 'displacement' ? nothing : html`<p class="hint">${words.plane}: ${words.onto}</p>`}
    </div>`;
  }

  #windowWrong(): boolean {
    return this.low !== undefined && this.high !== undefined && this.high <= this.low;
  }

  async #workOut(goOn: GoOn): Promise<void> {
    const [hull, row, column] = [this.hull, this.#row, this.#column];
    if (!hull || !row || !column) return;
    const usual = usualWindow(column.drive.ratedRpm);
    const low = this.low ?? usual.low;
    const high = this.high ?? usual.high;
    const { setting, measuredRpm, crewMove, trimDeg } = this;
    const window = high > low ? { low, high } : usual;
    const seen = await pieces<LookWork, Looked>({
      worker: tableWorker,
      asked: { look: 'closer', hull, row, column, setting, window, measuredRpm, crewMove, trimDeg },
      onPage: lookWork,
      goOn,
    });
    if (!seen) return;
    for (const piece of seen) if ('advice' in piece) this.advice = piece.advice;
    const state = seen.find((piece) => 'now' in piece);
    const changes = seen.flatMap((piece) => ('change' in piece ? [piece.change] : []));
    if (state) this.found = { now: state.now, cruise: state.cruise, changes };
  }
}

function picked(event: Event): string {
  return (event.target as HTMLSelectElement).value;
}

define('homeleg-closer-look', CloserLook);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-closer-look': CloserLook;
  }
}
