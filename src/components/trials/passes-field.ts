import { html, nothing } from 'lit';
import { property } from 'lit/decorators.js';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import '../field/choice-field.ts';
import type { ChoiceMade } from '../field/choice-field.ts';
import '../field/quantity-field.ts';
import { fieldStyles } from '../field/field.styles.ts';
import type { QuantityTyped } from '../field/quantity-field.ts';
import { controls } from '../theme/controls.styles.ts';
import { formStyles } from '../theme/form.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { commonWords } from '../words/en-common.ts';
import { runWords as words } from '../words/en-trials.ts';
import { passesStyles } from './passes-field.styles.ts';
import type { PassEntry } from './run-entry.ts';
import { stillWaterText } from './still-water-text.ts';

export interface Passes {
  readonly passes: readonly PassEntry[];
  readonly stream?: number | undefined;
}
export type PassesTyped = CustomEvent<Passes>;

const MOST_PASSES = 12;
/** m/s; faster than any boat this is for. */
const FASTEST = 30;

/**
 * @summary Speeds over ground of the passes of a run, out and back, and the stream where there is no pass back.
 * @fires passes-typed - the user changed a speed, a way or the stream
 */
export class PassesField extends SpeakingElement {
  static override styles = [tokens, controls, fieldStyles, formStyles, passesStyles];

  @property({ attribute: false }) passes: readonly PassEntry[] = [];
  /** With the boat above 0, m/s. */
  @property({ attribute: false }) stream: number | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;
  @property() problem = '';

  override render() {
    const { passes, measures, problem } = this;
    const oneWay = passes.every(({ way }) => way === passes[0]?.way);
    return html`<fieldset aria-describedby="speeds-hint">
      <legend>${words.speeds}</legend>
      <div class="passes">${passes.map((pass, i) => this.#pass(pass, i))}</div>
      <p class="problem" role="alert" ?hidden=${!problem}>${problem}</p>
      <div class="tools">
        <button type="button" ?disabled=${passes.length >= MOST_PASSES} @click=${this.#added}>${words.addPass}</button>
      </div>
      <p id="speeds-hint" class="hint">${words.speedsHint}</p>
      ${oneWay ? this.#stream() : nothing}
      <p class="found" role="status">${stillWaterText(passes, oneWay ? this.stream : undefined, measures)}</p>
    </fieldset>`;
  }

  #pass({ way, over }: PassEntry, i: number) {
    const other = way === 'out' ? 'back' : 'out';
    return html`<div class="pass">
      <homeleg-quantity-field
        label=${words.pass(i + 1, way)}
        measure="speed"
        min="0.1"
        max=${FASTEST}
        .measures=${this.measures}
        .value=${over}
        @quantity-typed=${(event: QuantityTyped) => this.#put(i, { way, over: event.detail.value })}
      ></homeleg-quantity-field>
      <button type="button" class="icon way" aria-label="${words.turnWay(way)}: ${words.pass(i + 1, way)}" title=${words.turnWay(way)}
        @click=${() => this.#put(i, { way: other, over })}>
        <svg viewBox="0 0 20 20" width="20" height="20" aria-hidden="true">
          <path d=${way === 'out' ? 'M3 10H16M11 5L16 10L11 15' : 'M17 10H4M9 5L4 10L9 15'} />
        </svg>
      </button>
      <button type="button" class="quiet icon" aria-label=${words.removePass(i + 1)} ?disabled=${this.passes.length < 2}
        @click=${() => this.#tell({ passes: this.passes.toSpliced(i, 1) })}>
        <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true"><path d="M3 3L13 13M13 3L3 13" /></svg>
      </button>
    </div>`;
  }

  #stream() {
    const { stream } = this;
    const way = stream === undefined ? 'unknown' : stream < 0 ? 'against' : 'with';
    return html`<div class="fields stream">
      <homeleg-choice-field
        label=${words.stream}
        .choices=${[
          { value: 'unknown', label: commonWords.notKnown },
          { value: 'with', label: words.streamWith },
          { value: 'against', label: words.streamAgainst },
        ]}
        .value=${way}
        hint=${words.streamHint}
        @choice-made=${(event: ChoiceMade) => this.#streamWay(event.detail.value)}
      ></homeleg-choice-field>
      ${
        stream === undefined
          ? nothing
          : html`<homeleg-quantity-field
            label=${words.stream}
            measure="speed"
            min="0"
            max="6"
            .measures=${this.measures}
            .value=${Math.abs(stream)}
            @quantity-typed=${({ detail }: QuantityTyped) =>
              this.#tell({ stream: (way === 'against' ? -1 : 1) * (detail.value ?? 0) })}
          ></homeleg-quantity-field>`
      }
    </div>`;
  }

  #streamWay(way: string): void {
    const size = Math.abs(this.stream ?? 0);
    // A trace keeps the side chosen while the figure is still 0.
    this.#tell({ stream: way === 'unknown' ? undefined : way === 'against' ? -(size || 1e-6) : size });
  }

  #added(): void {
    const last = this.passes.at(-1)?.way ?? 'back';
    this.#tell({ passes: [...this.passes, { way: last === 'out' ? 'back' : 'out' }] });
  }

  #put(i: number, pass: PassEntry): void {
    this.#tell({ passes: this.passes.with(i, pass) });
  }

  #tell(change: Partial<Passes>): void {
    const detail: Passes = { passes: this.passes, stream: this.stream, ...change };
    this.passes = detail.passes;
    this.stream = detail.stream;
    this.dispatchEvent(new CustomEvent('passes-typed', { detail, bubbles: true }) satisfies PassesTyped);
  }
}

define('homeleg-passes-field', PassesField);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-passes-field': PassesField;
  }
}
