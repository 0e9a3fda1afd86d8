import { html, nothing } from 'lit';
import { property } from 'lit/decorators.js';
import type { Load } from '../../core/load/shapes.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures, StoreKind } from '../units/measures.ts';
import { commonWords } from '../words/en-common.ts';
import { fillWords } from '../words/en-forms.ts';
import './choice-field.ts';
import type { ChoiceMade } from './choice-field.ts';
import { fieldStyles } from './field.styles.ts';
import { fillStyles } from './fill-field.styles.ts';
import './quantity-field.ts';
import type { QuantityTyped } from './quantity-field.ts';

export type Fill = Pick<Load, 'fill' | 'fillKnownBy'>;
export type FillEdited = CustomEvent<Fill>;

const QUARTERS = [0.25, 0.5, 0.75, 1] as const;

/**
 * @summary How full the tank or battery is, and how that is known. Not given until somebody gives it.
 * @fires fill-edited - the user set or cleared the level or how it is known
 */
export class FillField extends SpeakingElement {
  static override styles = [tokens, controls, fieldStyles, fillStyles];

  /** Share of full, 0 to 1; undefined: not known. */
  @property({ attribute: false }) fill: number | undefined;
  @property({ attribute: false }) fillKnownBy: Load['fillKnownBy'];
  @property() store: StoreKind = 'fuel';
  /** In place of the usual heading, for a level read at another time. */
  @property() heading = '';
  /** What a full tank or battery holds, kg or J; shown beside the share. */
  @property({ attribute: false }) full: number | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  override render() {
    const { fill, store, measures } = this;
    const known = fill !== undefined;
    return html`
      <fieldset>
        <legend>${this.heading || fillWords.title(store)}</legend>
        <div class="levels">
          <button type="button" aria-pressed=${String(!known)} @click=${() => this.#set(undefined)}>${commonWords.notKnown}</button>
          ${QUARTERS.map(
            (quarter, i) => html`<button
              type="button"
              class="quarter"
              aria-label=${fillWords.quarterNames[i] ?? nothing}
              aria-pressed=${String(known && Math.abs(fill - quarter) < 0.005)}
              @click=${() => this.#set(quarter)}
            >
              ${fillWords.quarters[i]}
            </button>`,
          )}
        </div>
        <div class="exact">
          <div class="slider">
            <label for="level">${fillWords.level}<span class="amount">${this.#amount()}</span></label>
            <input
              id="level"
              type="range"
              min="0"
              max="100"
              step="1"
              class=${known ? '' : 'unset'}
              .value=${String(Math.round((fill ?? 0.5) * 100))}
              aria-valuetext=${known ? measures.show('share', fill) : commonWords.notKnown}
              @input=${(event: Event) => this.#set(Number((event.target as HTMLInputElement).value) / 100)}
            />
          </div>
          <homeleg-quantity-field
            label=${fillWords.exact}
            measure="share"
            min="0"
            max="1"
            .measures=${measures}
            .value=${fill}
            @quantity-typed=${(event: QuantityTyped) => this.#set(event.detail.value)}
          ></homeleg-quantity-field>
        </div>
        ${
          known
            ? html`<homeleg-choice-field
                label=${fillWords.knownBy}
                .choices=${[
                  { value: 'measured', label: fillWords.measured(store) },
                  { value: 'gauge', label: fillWords.gauge(store) },
                ]}
                .value=${this.fillKnownBy ?? 'gauge'}
                @choice-made=${(event: ChoiceMade) => this.#knownBy(event.detail.value as 'measured' | 'gauge')}
              ></homeleg-choice-field>`
            : html`<p class="hint">${fillWords.unknownHint}</p>`
        }
      </fieldset>
    `;
  }

  #amount(): string {
    const { fill, full, measures, store } = this;
    if (fill === undefined) return commonWords.notKnown;
    const share = measures.show('share', fill);
    return full === undefined ? share : `${share}, ${measures.show('amount', fill * full, store)}`;
  }

  #set(fill: number | undefined): void {
    if (fill === this.fill) return;
    this.fill = fill;
    this.#tell();
  }

  #knownBy(how: 'measured' | 'gauge'): void {
    this.fillKnownBy = how;
    this.#tell();
  }

  /** How it is known says nothing while nothing is known. */
  #tell(): void {
    const { fill, fillKnownBy } = this;
    const detail: Fill = fill === undefined ? {} : { fill, fillKnownBy: fillKnownBy ?? 'gauge' };
    this.dispatchEvent(new CustomEvent('fill-edited', { detail, bubbles: true }) satisfies FillEdited);
  }
}

define('homeleg-fill-field', FillField);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-fill-field': FillField;
  }
}
