import { html, nothing, type PropertyValues } from 'lit';
import { property } from 'lit/decorators.js';
import { KNOT } from '../../core/units/convert.ts';
import { BEAUFORT, beaufortMiddle, beaufortOf } from '../../core/water/beaufort.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import '../field/choice-field.ts';
import type { ChoiceMade } from '../field/choice-field.ts';
import { fieldStyles } from '../field/field.styles.ts';
import '../field/quantity-field.ts';
import type { QuantityTyped } from '../field/quantity-field.ts';
import { controls } from '../theme/controls.styles.ts';
import { formStyles } from '../theme/form.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { commonWords } from '../words/en-common.ts';
import { compassPoint } from '../words/en-compass.ts';
import { conditionWords } from '../words/en-forms.ts';

/** A direction, degrees true, and how strong, m/s. */
export interface Flow {
  readonly deg: number;
  readonly speed: number;
}
/** `changing`: by the hour, told elsewhere. */
export type FlowTold = 'none' | 'changing' | Flow | undefined;
type Mode = 'unknown' | 'none' | 'changing' | 'known';
export type FlowEdited = CustomEvent<{ value: FlowTold }>;

const POINTS = Array.from({ length: 16 }, (_, i) => i * 22.5);
/** Above these a figure is a slip: no small boat plans for storm force or a 12 kn stream. */
const STRONGEST = { wind: 32, stream: 12 * KNOT } as const;

/**
 * @summary Wind or stream: not known, none, a direction and how strong, or changing by the hour.
 * @fires flow-edited - the user changed it; undefined while not known or half filled in
 */
export class FlowField extends SpeakingElement {
  static override styles = [tokens, controls, fieldStyles, formStyles];

  @property() kind: 'wind' | 'stream' = 'wind';
  @property({ attribute: false }) value: FlowTold;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  #mode: Mode = 'unknown';
  #deg: number | undefined;
  #speed: number | undefined;
  /** What was told last, so that its echo does not wipe a field half filled in. */
  #told: FlowTold;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('value') || same(this.value, this.#told)) return;
    this.#told = this.value;
    this.#mode = typeof this.value === 'object' ? 'known' : (this.value ?? 'unknown');
    const flow = typeof this.value === 'object' ? this.value : undefined;
    // What was typed before is there again where somebody comes back to it.
    if (!flow) return;
    this.#deg = flow.deg;
    this.#speed = flow.speed;
  }

  override render() {
    const wind = this.kind === 'wind';
    return html`
      <div class="stack close">
        <homeleg-choice-field
          label=${wind ? conditionWords.wind : conditionWords.stream}
          .choices=${[
            { value: 'unknown', label: commonWords.notKnown },
            { value: 'none', label: wind ? conditionWords.calm : conditionWords.slack },
            { value: 'known', label: wind ? conditionWords.oneWind : conditionWords.oneStream },
            { value: 'changing', label: wind ? conditionWords.byTime : conditionWords.byTide },
          ]}
          .value=${this.#mode}
          @choice-made=${(event: ChoiceMade) => this.#edit(() => (this.#mode = event.detail.value as Mode))}
        ></homeleg-choice-field>
        ${this.#mode === 'known' ? this.#figures(wind) : nothing}
      </div>
    `;
  }

  #figures(wind: boolean) {
    const missing = this.#deg === undefined || this.#speed === undefined;
    return html`
      <fieldset aria-describedby=${missing ? 'missing' : nothing}>
        <legend>${wind ? conditionWords.windFrom : conditionWords.streamSet}</legend>
        <div class="fields">
          <div class="field">
            <label for="point">${conditionWords.point}</label>
            <select id="point" @change=${this.#pointPicked}>
              <option value="" ?selected=${this.#deg === undefined}></option>
              ${POINTS.map(
                (
                  deg,
                ) => html`<option value=${deg} .selected=${this.#deg !== undefined && compassPoint(this.#deg) === compassPoint(deg)}>
                  ${compassPoint(deg)}
                </option>`,
              )}
            </select>
          </div>
          <homeleg-quantity-field
            label=${conditionWords.degrees}
            measure="angle"
            min="0"
            max="360"
            .measures=${this.measures}
            .value=${this.#deg}
            @quantity-typed=${(event: QuantityTyped) => this.#edit(() => (this.#deg = event.detail.value))}
          ></homeleg-quantity-field>
          <homeleg-quantity-field
            label=${wind ? conditionWords.windSpeed : conditionWords.streamRate}
            measure="speed"
            min="0"
            max=${STRONGEST[this.kind]}
            .measures=${this.measures}
            .value=${this.#speed}
            @quantity-typed=${(event: QuantityTyped) => this.#edit(() => (this.#speed = event.detail.value))}
          ></homeleg-quantity-field>
          ${wind ? this.#forces() : nothing}
        </div>
        <p id="missing" class="hint" aria-live="polite">${missing ? conditionWords.bothNeeded : nothing}</p>
      </fieldset>
    `;
  }

  #forces() {
    const force = this.#speed === undefined ? undefined : beaufortOf(this.#speed);
    return html`<div class="field">
      <label for="force">${conditionWords.force}</label>
      <select id="force" @change=${this.#forcePicked}>
        <option value="" ?selected=${force === undefined}></option>
        ${BEAUFORT.filter(({ max }) => max < STRONGEST.wind).map(
          ({ force: each }) => html`<option value=${each} .selected=${each === force}>${each}</option>`,
        )}
      </select>
    </div>`;
  }

  #pointPicked(event: Event): void {
    const { value } = event.target as HTMLSelectElement;
    this.#edit(() => (this.#deg = value === '' ? undefined : Number(value)));
  }

  #forcePicked(event: Event): void {
    const { value } = event.target as HTMLSelectElement;
    this.#edit(() => (this.#speed = value === '' ? undefined : beaufortMiddle(Number(value))));
  }

  #edit(change: () => void): void {
    change();
    this.requestUpdate();
    const value = this.#whole();
    if (same(value, this.#told)) return;
    this.#told = value;
    this.value = value;
    this.dispatchEvent(new CustomEvent('flow-edited', { detail: { value }, bubbles: true }) satisfies FlowEdited);
  }

  /** Half filled in is not known, never calm. */
  #whole(): FlowTold {
    if (this.#mode !== 'known') return this.#mode === 'unknown' ? undefined : this.#mode;
    if (this.#deg === undefined || this.#speed === undefined) return undefined;
    return { deg: this.#deg % 360, speed: this.#speed };
  }
}

function same(a: FlowTold, b: FlowTold): boolean {
  if (typeof a !== 'object' || typeof b !== 'object') return a === b;
  return a.deg === b.deg && a.speed === b.speed;
}

define('homeleg-flow-field', FlowField);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-flow-field': FlowField;
  }
}
