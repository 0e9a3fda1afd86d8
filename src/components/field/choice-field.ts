import { html, nothing } from 'lit';
import { property } from 'lit/decorators.js';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { choiceStyles } from './choice-field.styles.ts';
import { fieldStyles } from './field.styles.ts';

export interface Choice {
  readonly value: string;
  readonly label: string;
}

export type ChoiceMade = CustomEvent<{ value: string }>;

/**
 * @summary One of a few, as native radio buttons drawn side by side.
 * @fires choice-made - the user picked another one
 */
export class ChoiceField extends SpeakingElement {
  static override styles = [tokens, controls, fieldStyles, choiceStyles];

  @property() label = '';
  @property({ attribute: false }) choices: readonly Choice[] = [];
  @property() value = '';
  @property() hint = '';

  override focus(options?: FocusOptions): void {
    this.renderRoot.querySelector<HTMLInputElement>('input:checked, input')?.focus(options);
  }

  override render() {
    return html`
      <fieldset aria-describedby=${this.hint ? 'hint' : nothing}>
        <legend>${this.label}</legend>
        <div class="choices">
          ${this.choices.map(
            ({ value, label }) => html`<label class="choice">
              <input
                type="radio"
                name="choice"
                .value=${value}
                .checked=${value === this.value}
                @change=${() => this.#made(value)}
              />
              <span>${label}</span>
            </label>`,
          )}
        </div>
      </fieldset>
      ${this.hint ? html`<p id="hint" class="hint">${this.hint}</p>` : nothing}
    `;
  }

  #made(value: string): void {
    this.value = value;
    this.dispatchEvent(new CustomEvent('choice-made', { detail: { value }, bubbles: true }) satisfies ChoiceMade);
  }
}

define('homeleg-choice-field', ChoiceField);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-choice-field': ChoiceField;
  }
}
