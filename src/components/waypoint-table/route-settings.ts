import { html, nothing } from 'lit';
import { property } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import type { PlannedSpeed, Route } from '../../core/route/shapes.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { choiceOf, speedOf, speedOptions } from './planned-speeds.ts';
import { tableFieldStyles } from './table-field.styles.ts';
import { readSpeed } from './typed-fields.ts';
import type { Typed } from './typed-texts.ts';
import { waypointWords as words } from './words.ts';
import '../field/choice-field.ts';

export type RouteSettingsEdited = CustomEvent<{ shape?: Route['shape']; speed?: PlannedSpeed }>;

/**
 * @summary Shape of the trip, and its planned speed.
 * @fires route-settings-edited - another shape or speed
 */
export class RouteSettings extends SpeakingElement {
  static override styles = [tokens, controls, tableFieldStyles];

  @property() shape: Route['shape'] = 'out-and-home';
  @property({ attribute: false }) speed: PlannedSpeed = 'best';
  /** m/s, to start from when the user wants a speed of their own. */
  @property({ type: Number }) known: number | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  #typed: Typed | undefined;

  override render() {
    const choice = choiceOf(this.speed);
    return html`
      <homeleg-choice-field
        .label=${words.shape}
        .choices=${Object.entries(words.shapes).map(([value, label]) => ({ value, label }))}
        .value=${this.shape}
        @choice-made=${(event: CustomEvent<{ value: Route['shape'] }>) => this.#tell({ shape: event.detail.value })}
      ></homeleg-choice-field>
      <div class="fields">
        <div class="field">
          <label for="choice">${words.routeSpeed}</label>
          <select id="choice" .value=${live(choice)} @change=${this.#chosen}>
            ${speedOptions(choice, false)}
          </select>
        </div>
        ${typeof this.speed === 'number' ? this.#ownSpeed(this.speed) : nothing}
      </div>
    `;
  }

  #ownSpeed(speed: number) {
    const { measures } = this;
    const problem = this.#typed?.problem;
    return html`<div class="field">
      <label for="speed">${words.ownSpeed}</label>
      <span class="box">
        <input
          id="speed"
          .value=${live(this.#typed?.text ?? measures.figure('speed', speed))}
          inputmode="decimal"
          autocomplete="off"
          maxlength="20"
          aria-invalid=${problem ? 'true' : nothing}
          aria-describedby=${problem ? 'problem' : nothing}
          @input=${(event: Event) => {
            this.#typed = { text: (event.currentTarget as HTMLInputElement).value };
          }}
          @change=${this.#entered}
        />
        <span class="unit" aria-hidden="true">${measures.unit('speed')}</span>
      </span>
      ${problem ? html`<p id="problem" class="problem">${problem}</p>` : nothing}
    </div>`;
  }

  #chosen = (event: Event): void => {
    this.#typed = undefined;
    const { value } = event.currentTarget as HTMLSelectElement;
    const speed = speedOf(value, this.known, this.measures);
    if (speed !== undefined) this.#tell({ speed });
  };

  #entered = (event: Event): void => {
    const text = (event.currentTarget as HTMLInputElement).value;
    const read = readSpeed(text, this.measures);
    this.#typed = read.ok ? undefined : { text, problem: read.problem };
    this.requestUpdate();
    if (read.ok) this.#tell({ speed: read.value });
  };

  #tell(detail: RouteSettingsEdited['detail']): void {
    const told = new CustomEvent('route-settings-edited', { detail, bubbles: true, composed: true });
    this.dispatchEvent(told satisfies RouteSettingsEdited);
  }
}

define('homeleg-route-settings', RouteSettings);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-route-settings': RouteSettings;
  }
  interface HTMLElementEventMap {
    'route-settings-edited': RouteSettingsEdited;
  }
}
