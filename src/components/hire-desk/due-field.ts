import { html, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
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

/** Undefined while it cannot be read. */
export type DueEdited = CustomEvent<{ rule: DueRule | undefined }>;

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
  @state() private kind: DueRule['kind'] = 'after';
  @state() private hours = '2';
  @state() private time = '';

  /** What is asked for now. */
  get rule(): DueRule | undefined {
    if (this.kind === 'after') {
      const seconds = (parseDecimal(this.hours, this.language) ?? 0) * 3600;
      return seconds > 0 && seconds <= LONGEST ? { kind: 'after', seconds } : undefined;
    }
    const time = timeToday(this.time, this.now);
    return time !== undefined && time > this.now ? { kind: 'at', time } : undefined;
  }

  protected override updated(changed: PropertyValues): void {
    if (!changed.has('kind') && !changed.has('hours') && !changed.has('time')) return;
    this.dispatchEvent(
      new CustomEvent('due-edited', { detail: { rule: this.rule }, bubbles: true }) satisfies DueEdited,
    );
  }

  override render() {
    const wrong = this.rule === undefined && (this.kind === 'after' || this.time !== '');
    const problem = this.kind === 'after' ? words.backProblem : words.timeProblem;
    return html`
      <homeleg-choice-field
        label=${words.back}
        .choices=${[{ value: 'after', label: words.backAfter }, { value: 'at', label: words.backAt }]}
        .value=${this.kind}
        @choice-made=${(event: ChoiceMade) => (this.kind = event.detail.value as DueRule['kind'])}
      ></homeleg-choice-field>
      ${
        this.kind === 'after'
          ? html`<label for="figure">${words.hours}</label>
              <input
                id="figure"
                inputmode="decimal"
                autocomplete="off"
                .value=${this.hours}
                aria-invalid=${wrong ? 'true' : 'false'}
                aria-describedby="problem"
                @input=${(event: Event) => (this.hours = (event.target as HTMLInputElement).value)}
              />`
          : html`<label for="figure">${words.time}</label>
              <input
                id="figure"
                type="time"
                .value=${this.time}
                aria-invalid=${wrong ? 'true' : 'false'}
                aria-describedby="problem"
                @input=${(event: Event) => (this.time = (event.target as HTMLInputElement).value)}
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
