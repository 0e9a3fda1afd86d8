import { html, nothing } from 'lit';
import { property } from 'lit/decorators.js';
import { DEPTH_WANTED, DRAWN_FACTOR, MANOEUVRING } from '../../core/trip/defaults.ts';
import type { Policy, ReserveRule } from '../../core/trip/shapes.ts';
import { HOUR, MINUTE } from '../../core/units/convert.ts';
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
import { reserveWords } from '../words/en-forms.ts';
import { reserveRuleText } from '../words/en-reserve-rule.ts';
import { ruleOf, withoutRule, withRule } from './rules.ts';

export type PolicyEdited = CustomEvent<{ policy: Policy }>;

/** Starting figures of a rule just ticked (common practice, no source). */
const FIRST = { share: 0.2, minutes: 30 } as const;

/**
 * @summary What is kept in reserve, what is allowed for, and the crew's own limits.
 * @fires policy-edited - the user changed one of them; rules of `tighten` are not part of it
 */
export class ReserveForm extends SpeakingElement {
  static override styles = [tokens, controls, fieldStyles, formStyles];

  @property({ attribute: false }) policy: Policy = { reserve: [] };
  /** A host's own least rules and limits, shown as fixed; who owns the plan adds them to the policy. */
  @property({ attribute: false }) tighten: Partial<Policy> = {};
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  override render() {
    return html`<div class="stack">${this.#host()}${this.#reserve()}${this.#allowances()}${this.#limits()}</div>`;
  }

  #host() {
    const lines = fixedLines(this.tighten, this.measures);
    if (lines.length === 0) return nothing;
    return html`<section aria-labelledby="fixed">
      <p id="fixed" class="label">${reserveWords.fixed}</p>
      <ul class="fixed">${lines.map((line) => html`<li>${line}</li>`)}</ul>
    </section>`;
  }

  #reserve() {
    const { policy } = this;
    return html`<fieldset aria-describedby="strictest">
      <legend>${reserveWords.title}</legend>
      ${this.#rule({ kind: 'thirds' }, reserveWords.thirds)}
      ${this.#rule({ kind: 'share', share: FIRST.share }, reserveWords.share)}
      ${this.#share()}
      ${this.#rule({ kind: 'minutes', minutes: FIRST.minutes }, reserveWords.minutes)}
      ${this.#minutes()}
      <p id="strictest" class="hint">${policy.reserve.length === 0 ? reserveWords.noneChosen : reserveWords.strictest}</p>
    </fieldset>`;
  }

  #rule(first: ReserveRule, label: string) {
    const ticked = ruleOf(this.policy, first.kind) !== undefined;
    return html`<label class="check">
      <input
        type="checkbox"
        name=${first.kind}
        .checked=${ticked}
        @change=${(event: Event) => {
          const { checked } = event.target as HTMLInputElement;
          this.#change(checked ? withRule(this.policy, first) : withoutRule(this.policy, first.kind));
        }}
      />
      <span>${label}</span>
    </label>`;
  }

  #share() {
    const rule = ruleOf(this.policy, 'share');
    if (!rule) return nothing;
    return html`<homeleg-quantity-field
      class="nested"
      label=${reserveWords.shareValue}
      measure="share"
      min="0.01"
      max="0.95"
      step="0.05"
      required
      .measures=${this.measures}
      .value=${rule.share}
      @quantity-typed=${({ detail: { value: share } }: QuantityTyped) =>
        share !== undefined && this.#change(withRule(this.policy, { kind: 'share', share }))}
    ></homeleg-quantity-field>`;
  }

  #minutes() {
    const rule = ruleOf(this.policy, 'minutes');
    if (!rule) return nothing;
    return html`<homeleg-quantity-field
      class="nested"
      label=${reserveWords.minutesValue}
      measure="time"
      min=${MINUTE}
      max=${24 * HOUR}
      step=${5 * MINUTE}
      required
      .measures=${this.measures}
      .value=${rule.minutes * MINUTE}
      @quantity-typed=${({ detail: { value } }: QuantityTyped) =>
        value !== undefined && this.#change(withRule(this.policy, { kind: 'minutes', minutes: value / MINUTE }))}
    ></homeleg-quantity-field>`;
  }

  #allowances() {
    const { measures, policy } = this;
    return html`<fieldset>
      <legend>${reserveWords.allowances}</legend>
      <div class="fields wide">
        <homeleg-quantity-field
          label=${reserveWords.manoeuvring}
          measure="time"
          min="0"
          max=${3 * HOUR}
          hint=${reserveWords.ifEmpty(`${measures.figure('time', MANOEUVRING)}\u00a0min`)}
          .measures=${measures}
          .value=${policy.manoeuvring}
          @quantity-typed=${({ detail }: QuantityTyped) => this.#change({ ...policy, manoeuvring: detail.value })}
        ></homeleg-quantity-field>
        <homeleg-quantity-field
          label=${reserveWords.drawnFactor}
          measure="share"
          min="0"
          max="1"
          hint=${reserveWords.ifEmpty(measures.show('share', DRAWN_FACTOR - 1))}
          .measures=${measures}
          .value=${policy.drawnFactor === undefined ? undefined : policy.drawnFactor - 1}
          @quantity-typed=${({ detail: { value } }: QuantityTyped) =>
            this.#change({ ...policy, drawnFactor: value === undefined ? undefined : 1 + value })}
        ></homeleg-quantity-field>
      </div>
    </fieldset>`;
  }

  #limits() {
    const { measures, policy } = this;
    const { timeAllowed } = policy;
    return html`<fieldset>
      <legend>${reserveWords.limits}</legend>
      <div class="fields">
        <homeleg-quantity-field
          label=${reserveWords.maxWind}
          measure="speed"
          min="0.5"
          max="32"
          .measures=${measures}
          .value=${policy.maxWind}
          @quantity-typed=${({ detail }: QuantityTyped) => this.#change({ ...policy, maxWind: detail.value })}
        ></homeleg-quantity-field>
        <homeleg-quantity-field
          label=${reserveWords.maxWave}
          measure="length"
          min="0.05"
          max="10"
          .measures=${measures}
          .value=${policy.maxWave}
          @quantity-typed=${({ detail }: QuantityTyped) => this.#change({ ...policy, maxWave: detail.value })}
        ></homeleg-quantity-field>
        <homeleg-quantity-field
          label=${reserveWords.depth}
          measure="length"
          min="0.1"
          max="10"
          hint=${reserveWords.ifEmpty(measures.show('length', DEPTH_WANTED))}
          .measures=${measures}
          .value=${policy.depth}
          @quantity-typed=${({ detail }: QuantityTyped) => this.#change({ ...policy, depth: detail.value })}
        ></homeleg-quantity-field>
        <homeleg-quantity-field
          label=${reserveWords.timeAllowed}
          measure="time"
          unit="h"
          unitSize=${HOUR}
          min=${5 * MINUTE}
          max=${72 * HOUR}
          hint=${timeAllowed === undefined ? '' : measures.time(timeAllowed)}
          .measures=${measures}
          .value=${timeAllowed}
          @quantity-typed=${({ detail }: QuantityTyped) => this.#change({ ...policy, timeAllowed: detail.value })}
        ></homeleg-quantity-field>
      </div>
    </fieldset>`;
  }

  #change(policy: Policy): void {
    this.policy = policy;
    this.dispatchEvent(new CustomEvent('policy-edited', { detail: { policy }, bubbles: true }) satisfies PolicyEdited);
  }
}

/** The host's rules and limits, one line each. */
function fixedLines(tighten: Partial<Policy>, m: Measures): readonly string[] {
  const lines = (tighten.reserve ?? []).map((rule) => capital(reserveRuleText(rule, m)));
  const { manoeuvring, drawnFactor, maxWind, maxWave, depth, timeAllowed } = tighten;
  if (manoeuvring !== undefined) lines.push(`${reserveWords.manoeuvring}: ${m.time(manoeuvring)}`);
  if (drawnFactor !== undefined) lines.push(`${reserveWords.drawnFactor} ${m.show('share', drawnFactor - 1)}`);
  if (maxWind !== undefined) lines.push(`${reserveWords.maxWind}: ${m.show('speed', maxWind)}`);
  if (maxWave !== undefined) lines.push(`${reserveWords.maxWave}: ${m.show('length', maxWave)}`);
  if (depth !== undefined) lines.push(`${reserveWords.depth}: ${m.show('length', depth)}`);
  if (timeAllowed !== undefined) lines.push(`${reserveWords.timeAllowed}: ${m.time(timeAllowed)}`);
  return lines;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

define('homeleg-reserve-form', ReserveForm);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-reserve-form': ReserveForm;
  }
}
