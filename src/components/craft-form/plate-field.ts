import { html, nothing } from 'lit';
import { property } from 'lit/decorators.js';
import type { DesignCategory, Hull, Plate } from '../../core/craft/shapes.ts';
import type { Measure } from '../../core/trip/shapes.ts';
import { define } from '../define.ts';
import { fieldStyles } from '../field/field.styles.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import '../field/quantity-field.ts';
import type { QuantityTyped } from '../field/quantity-field.ts';
import { controls } from '../theme/controls.styles.ts';
import { formStyles } from '../theme/form.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { categoryWords, plateWords, schemeWords } from '../words/en-craft.ts';
import { platePart } from './edit-craft.ts';

export type PlateEdited = CustomEvent<{ plate: Hull['plate'] }>;

type Figure = 'maxLoad' | 'persons' | 'maxPower' | 'maxEngineMass';

const FIGURES: readonly { name: Figure; measure: Measure; min: number; max: number; whole: boolean }[] = [
  { name: 'maxLoad', measure: 'mass', min: 20, max: 5000, whole: false },
  { name: 'persons', measure: 'count', min: 1, max: 40, whole: true },
  { name: 'maxPower', measure: 'power', min: 100, max: 300_000, whole: false },
  { name: 'maxEngineMass', measure: 'mass', min: 2, max: 600, whole: false },
];
const CATEGORIES: readonly DesignCategory[] = ['A', 'B', 'C', 'D'];
const SCHEMES: readonly Plate['scheme'][] = ['unknown', 'eu', 'us'];

/**
 * @summary What the builder's plate says. Empty until somebody reads it; typical figures are hints only.
 * @fires plate-edited - the user typed a figure, picked a kind, or said that there is no plate
 */
export class PlateField extends SpeakingElement {
  static override styles = [tokens, controls, fieldStyles, formStyles];

  @property({ attribute: false }) plate: Hull['plate'];
  @property({ attribute: false }) typical: Plate | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  override render() {
    const none = this.plate === 'none';
    return html`<fieldset aria-describedby="why">
      <legend>${plateWords.title}</legend>
      <p id="why" class="hint">${none ? plateWords.noneWhy : plateWords.why}</p>
      <label class="check">
        <input type="checkbox" .checked=${none} @change=${this.#noneTicked} />
        <span>${plateWords.none}</span>
      </label>
      ${none ? nothing : this.#figures()}
    </fieldset>`;
  }

  #figures() {
    const plate = this.plate === 'none' ? undefined : this.plate;
    return html`<div class="fields">
      ${FIGURES.map(
        ({ name, measure, min, max, whole }) => html`<homeleg-quantity-field
          name=${name}
          label=${plateWords[name]}
          .measure=${measure}
          .min=${min}
          .max=${max}
          .whole=${whole}
          hint=${this.#hint(name, measure)}
          .measures=${this.measures}
          .value=${plate?.[name]}
          @quantity-typed=${({ detail }: QuantityTyped) => this.#change({ [name]: detail.value })}
        ></homeleg-quantity-field>`,
      )}
    </div>
    <div class="fields wide more">
      <div class="field">
        <label for="category">${plateWords.category}</label>
        <select id="category" @change=${this.#categoryPicked}>
          <option value="" .selected=${!plate?.category}>${plateWords.notRead}</option>
          ${CATEGORIES.map(
            (each) => html`<option value=${each} .selected=${plate?.category === each}>${categoryWords[each]}</option>`,
          )}
        </select>
      </div>
      <div class="field">
        <label for="scheme">${plateWords.scheme}</label>
        <select id="scheme" @change=${this.#schemePicked}>
          ${SCHEMES.map(
            (each) =>
              html`<option value=${each} .selected=${(plate?.scheme ?? 'unknown') === each}>${schemeWords[each]}</option>`,
          )}
        </select>
      </div>
    </div>`;
  }

  #hint(name: Figure, measure: Measure): string {
    const figure = this.typical?.[name];
    return figure === undefined ? '' : plateWords.typical(this.measures.show(measure, figure));
  }

  #noneTicked(event: Event): void {
    this.#tell((event.target as HTMLInputElement).checked ? 'none' : undefined);
  }

  #categoryPicked(event: Event): void {
    const { value } = event.target as HTMLSelectElement;
    this.#change({ category: value === '' ? undefined : (value as DesignCategory) });
  }

  #schemePicked(event: Event): void {
    this.#change({ scheme: (event.target as HTMLSelectElement).value as Plate['scheme'] });
  }

  #change(change: Partial<Plate>): void {
    this.#tell(platePart(this.plate, change));
  }

  #tell(plate: Hull['plate']): void {
    this.plate = plate;
    this.dispatchEvent(new CustomEvent('plate-edited', { detail: { plate }, bubbles: true }) satisfies PlateEdited);
  }
}

define('homeleg-plate-field', PlateField);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-plate-field': PlateField;
  }
}
