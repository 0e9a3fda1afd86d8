import { html, type PropertyValues } from 'lit';
import { property } from 'lit/decorators.js';
import type { DueRule } from '../../core/hire/shapes.ts';
import { define } from '../define.ts';
import '../field/choice-field.ts';
import type { ChoiceMade } from '../field/choice-field.ts';
import { fieldStyles } from '../field/field.styles.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { parseDecimal } from '../units/decimal.ts';
import { checkWords as words } from '../words/en-desk.ts';
import { timeToday } from './desk-time.ts';
import type { DueTyped } from './half-asked.ts';

/** The rule is undefined while what is typed cannot be read. */
export type DueEdited = CustomEvent<{ rule: DueRule | undefined; typed: DueTyped }>;

export const DUE_AT_FIRST: DueTyped = { kind: 'after', hours: '2', time: '' };

/** Longest hire, s. */
const LONGEST = 12 * 3600;

/**
 * @summary When the boat is due: so many hours from leaving, or at a time of today.
 * @fires due-edited - it was changed
 */
export class DueField extends SpeakingElement {
  static override styles = [tokens, controls, fieldStyles];

  /** s since 1970. */
  @property({ type: Number }) now = 0;
  @property({ attribute: false }) typed = DUE_AT_FIRST;

  /** What is asked for now. */
  get rule(): DueRule | undefined {
    const { kind, hours, time: typed } = this.typed;
    if (kind === 'after') {
      const seconds = (parseDecimal(hours, this.language) ?? 0) * 3600;
      return seconds > 0 && seconds <= LONGEST ? { kind: 'after', seconds } : undefined;
    }
    const time = timeToday(typed, this.now);
    return time !== undefined && time > this.now ? { kind: 'at', time } : undefined;
  }

  protected override updated(changed: PropertyValues): void {
    if (!changed.has('typed')) return;
    const { rule, typed } = this;
    this.dispatchEvent(new CustomEvent('due-edited', { detail: { rule, typed }, bubbles: true }) satisfies DueEdited);
  }

  #type(change: Partial<DueTyped>): void {
    this.typed = { ...this.typed, ...change };
  }

  override render() {
    const { kind, hours, time } = this.typed;
    const wrong = this.rule === undefined && (kind === 'after' || time !== '');
    const problem = kind === 'after' ? words.backProblem : words.timeProblem;
    return html`
      <homeleg-choice-field
        label=${words.back}
        .choices=${[{ value: 'after', label: words.backAfter }, { value: 'at', label: words.backAt }]}
        .value=${kind}
        @choice-made=${(event: ChoiceMade) => this.#type({ kind: event.detail.value as DueTyped['kind'] })}
      ></homeleg-choice-field>
      ${
        kind === 'after'
          ? html`<label for="figure">${words.hours}</label>
              <input
                id="figure"
                inputmode="decimal"
                autocomplete="off"
                .value=${hours}
                aria-invalid=${wrong ? 'true' : 'false'}
                aria-describedby="problem"
                @input=${(event: Event) => this.#type({ hours: (event.target as HTMLInputElement).value })}
              />`
          : html`<label for="figure">${words.time}</label>
              <input
                id="figure"
                type="time"
                .value=${time}
                aria-invalid=${wrong ? 'true' : 'false'}
                aria-describedby="problem"
                @input=${(event: Event) => this.#type({ time: (event.target as HTMLInputElement).value })}
              />`
      }
      <p id="problem" class="problem" ?hidden=${!wrong}>${problem}</p>
    `;
  }
}

define('homeleg-due-field', DueField);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-due-field': DueField;
  }
}
