import { html, nothing } from 'lit';
import { property } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import type { LatLon } from '../../core/route/shapes.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { tableFieldStyles } from './table-field.styles.ts';
import { type AddedField, readAddition } from './typed-fields.ts';
import { TypedTexts } from './typed-texts.ts';
import { waypointWords as words } from './words.ts';

export type PlaceAdded = CustomEvent<{ at: LatLon }>;

/** The form is the only row of its texts. */
const FORM = 0;
const FIELDS: readonly AddedField[] = ['place', 'bearing', 'distance'];

/**
 * @summary A form for one more waypoint: by latitude and longitude, or by bearing and distance from the last.
 * @fires place-added - the place read
 */
export class AddWaypoint extends SpeakingElement {
  static override styles = [tokens, controls, tableFieldStyles];

  /** Where bearing and distance count from; undefined while there is no waypoint. */
  @property({ attribute: false }) last: LatLon | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  #texts = new TypedTexts();

  override focus(options?: FocusOptions): void {
    this.#field('place')?.focus(options);
  }

  override render() {
    const { last, measures } = this;
    return html`<form class="fields framed" novalidate @submit=${this.#sent}>
      <p class="title">${last ? words.addNext : words.addStart}</p>
      ${this.#input('place', words.addPlace)}
      ${
        last
          ? html`${this.#input('bearing', words.addBearing, '°')}
            ${this.#input('distance', words.addDistance, measures.unit('distance'))}`
          : nothing
      }
      <button type="submit">${words.add}</button>
    </form>`;
  }

  #input(field: AddedField, label: string, unit = '') {
    const typed = this.#texts.get(FORM, field);
    const problem = typed?.problem;
    return html`<div class="field ${field === 'place' ? 'long' : ''}">
      <label for=${field}>${label}</label>
      <span class="box">
        <input
          id=${field}
          .value=${live(typed?.text ?? '')}
          inputmode=${field === 'place' ? 'text' : 'decimal'}
          autocomplete="off"
          spellcheck="false"
          maxlength="120"
          aria-invalid=${problem ? 'true' : nothing}
          aria-describedby=${problem ? `${field}-problem` : nothing}
          @input=${(event: Event) => this.#texts.typed(FORM, field, (event.currentTarget as HTMLInputElement).value)}
        />
        ${unit ? html`<span class="unit" aria-hidden="true">${unit}</span>` : nothing}
      </span>
      ${problem ? html`<p id="${field}-problem" class="problem">${problem}</p>` : nothing}
    </div>`;
  }

  #field(field: AddedField): HTMLElement | null {
    return this.renderRoot.querySelector(`#${field}`);
  }

  #sent = async (event: Event): Promise<void> => {
    event.preventDefault();
    const text = (field: AddedField) => this.#texts.get(FORM, field)?.text ?? '';
    const texts = { place: text('place'), bearing: text('bearing'), distance: text('distance') };
    const added = readAddition(texts, this.last, this.measures);
    for (const field of FIELDS) {
      const problem = added.problems[field];
      if (problem) this.#texts.refused(FORM, field, problem);
      else if (added.at) this.#texts.accepted(FORM, field);
      else this.#texts.typed(FORM, field, texts[field]);
    }
    this.requestUpdate();
    const { at } = added;
    if (at) this.dispatchEvent(new CustomEvent('place-added', { detail: { at } }) satisfies PlaceAdded);
    await this.updateComplete;
    const wrong = FIELDS.find((field) => added.problems[field]);
    this.#field(wrong ?? (texts.place ? 'place' : 'bearing'))?.focus();
  };
}

define('homeleg-add-waypoint', AddWaypoint);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-add-waypoint': AddWaypoint;
  }
}
