import { html, nothing, type PropertyValues } from 'lit';
import { property } from 'lit/decorators.js';
import type { Conditions } from '../../core/water/shapes.ts';
import { define } from '../define.ts';
import '../field/choice-field.ts';
import type { ChoiceMade } from '../field/choice-field.ts';
import '../field/quantity-field.ts';
import type { QuantityTyped } from '../field/quantity-field.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { formStyles } from '../theme/form.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { conditionWords } from '../words/en-forms.ts';
import { seaWords as words } from '../words/en-sea.ts';

export type SeaEdited = CustomEvent<{ sea: Conditions['sea'] }>;
type Mode = 'wind' | 'calm' | 'known';

/**
 * @summary The sea: worked out from wind and open water with the swell on top, flat, or a height.
 * @fires sea-edited - the user changed it; undefined where it follows from the wind and no swell is told
 */
export class SeaField extends SpeakingElement {
  static override styles = [tokens, controls, formStyles];

  @property({ attribute: false }) sea: Conditions['sea'];
  /** Wind and local waters are there to work the waves out from. */
  @property({ type: Boolean, attribute: 'wind-told' }) windTold = false;
  @property({ type: Boolean, attribute: 'waters-told' }) watersTold = false;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  #mode: Mode = 'wind';
  #told: Conditions['sea'];

  protected override willUpdate(changed: PropertyValues<this>): void {
    const { sea } = this;
    if (!changed.has('sea') || (this.hasUpdated && sea === this.#told)) return;
    this.#told = sea;
    this.#mode = sea === 'calm' ? 'calm' : sea && 'height' in sea ? 'known' : 'wind';
  }

  override render() {
    return html`<div class="stack close">
      <homeleg-choice-field
        label=${conditionWords.sea}
        .choices=${[
          { value: 'wind', label: words.fromWind },
          { value: 'calm', label: conditionWords.flat },
          { value: 'known', label: conditionWords.known },
        ]}
        .value=${this.#mode}
        hint=${this.#mode === 'wind' ? this.#hint() : ''}
        @choice-made=${this.#chosen}
      ></homeleg-choice-field>
      ${this.#mode === 'wind' ? this.#swell() : this.#mode === 'known' ? this.#height() : nothing}
    </div>`;
  }

  #hint(): string {
    if (!this.watersTold) return words.needsWaters;
    return this.windTold ? words.worked : words.needsWind;
  }

  #swell() {
    const { sea } = this;
    return html`<homeleg-quantity-field
      label=${words.swell}
      measure="length"
      min="0"
      max="10"
      hint=${words.swellHint}
      .measures=${this.measures}
      .value=${typeof sea === 'object' && 'swell' in sea ? sea.swell : undefined}
      @quantity-typed=${({ detail: { value } }: QuantityTyped) => this.#tell(value === undefined ? undefined : { swell: value })}
    ></homeleg-quantity-field>`;
  }

  #height() {
    const { sea } = this;
    const height = typeof sea === 'object' && 'height' in sea ? sea.height : undefined;
    return html`<homeleg-quantity-field
      label=${conditionWords.waveHeight}
      measure="length"
      min="0"
      max="10"
      hint=${height === undefined ? conditionWords.heightNeeded : conditionWords.waveHint}
      .measures=${this.measures}
      .value=${height}
      @quantity-typed=${({ detail: { value } }: QuantityTyped) => this.#tell(value === undefined ? undefined : { height: value })}
    ></homeleg-quantity-field>`;
  }

  #chosen(event: ChoiceMade): void {
    this.#mode = event.detail.value as Mode;
    this.requestUpdate();
    // Known but without a height is worked out or unknown, never calm.
    this.#tell(this.#mode === 'calm' ? 'calm' : undefined);
  }

  #tell(sea: Conditions['sea']): void {
    if (sea === this.sea) return;
    this.#told = sea;
    this.sea = sea;
    this.dispatchEvent(new CustomEvent('sea-edited', { detail: { sea }, bubbles: true }) satisfies SeaEdited);
  }
}

define('homeleg-sea-field', SeaField);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-sea-field': SeaField;
  }
}
