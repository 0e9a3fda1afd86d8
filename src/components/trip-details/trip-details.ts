import { html, nothing } from 'lit';
import { property } from 'lit/decorators.js';
import type { Assumption, Plan, TippingValue } from '../../core/trip/shapes.ts';
import type { Conditions } from '../../core/water/shapes.ts';
import { conditionsLines } from '../conditions-form/conditions-lines.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { assumptionText } from '../words/en-assumptions.ts';
import { dayWords } from '../words/en-day.ts';
import { tippingText } from '../words/en-tipping.ts';
import { balanceFigures, type KeyFigure, keyFigures, unsettled } from './key-figures.ts';
import { tripDetailsStyles } from './trip-details.styles.ts';
import { detailWords as words } from './words.ts';

/** Somebody wants to give what was taken for granted. */
export type AssumptionWanted = CustomEvent<{ code: Assumption['code'] }>;

/**
 * @summary How far, how much more, where to turn, what would change the answer, and what was taken for granted.
 * @fires assumption-wanted - somebody wants to give what was taken for granted
 */
export class TripDetails extends SpeakingElement {
  static override styles = [tokens, controls, tripDetailsStyles];

  @property({ attribute: false }) plan: Plan | undefined;
  /** How far the departure may shift, which is known later than the plan. */
  @property({ attribute: false }) shifts: readonly TippingValue[] = [];
  @property({ attribute: false }) measures: Measures = NAUTICAL;
  /** ISO 8601 with offset; without it times since departure. */
  @property() departure: string | undefined;
  /** What was given about the day; told on paper, where the form is not. */
  @property({ attribute: false }) conditions: Conditions | undefined;

  override render() {
    const { plan, measures } = this;
    if (!plan) return html`<div class="empty">${words.empty}</div>`;
    return html`
      <dl class="keys">${keyFigures(plan, this.departure, measures).map((key) => this.#key(key))}</dl>
      <div class="columns">
        <section>
          <h3>${words.tipping}</h3>
          ${this.#tipping(plan)}
        </section>
        <section>
          <h3>${words.balance}</h3>
          <dl class="figures">
            ${balanceFigures(plan, measures).map(([name, figure]) => html`<div><dt>${name}</dt><dd>${figure}</dd></div>`)}
          </dl>
        </section>
      </div>
      ${this.conditions ? this.#day(this.conditions) : nothing}
      <section>
        <h3>${words.assumptions}</h3>
        ${this.#assumptions(plan)}
      </section>
    `;
  }

  #key({ title, figure, notes, tone }: KeyFigure) {
    return html`<div class="key ${tone ?? ''}">
      <dt>${title}</dt>
      <dd class="figure">${figure}</dd>
      ${notes.map((note) => html`<dd>${note}</dd>`)}
    </div>`;
  }

  #day(conditions: Conditions) {
    return html`<section class="on-paper">
      <h3>${dayWords.title}</h3>
      <ul>
        ${conditionsLines(conditions, this.measures).map((line) => html`<li>${line}</li>`)}
      </ul>
    </section>`;
  }

  #tipping(plan: Plan) {
    if (unsettled(plan)) return html`<p class="waiting">${words.unsettled}</p>`;
    const values = [...plan.tipping, ...this.shifts];
    if (values.length === 0) return html`<p>${words.tippingNone}</p>`;
    return html`<ul>
      ${values.map((tipping) => html`<li>${tippingText(tipping, this.measures, plan.store)}.</li>`)}
    </ul>`;
  }

  #assumptions(plan: Plan) {
    if (plan.assumptions.length === 0) return html`<p>${words.assumptionsNone}</p>`;
    return html`<ul class="assumptions">
      ${plan.assumptions.map((assumption) => {
        const text = assumptionText(assumption, this.measures, plan.store);
        return html`<li>
          <span>${text}</span>
          <button
            type="button"
            class="quiet"
            aria-label=${words.changeThis(text)}
            @click=${() => this.#changePressed(assumption)}
          >
            ${words.change}
          </button>
        </li>`;
      })}
    </ul>`;
  }

  #changePressed({ code }: Assumption): void {
    this.dispatchEvent(
      new CustomEvent('assumption-wanted', { detail: { code }, bubbles: true }) satisfies AssumptionWanted,
    );
  }
}

define('homeleg-trip-details', TripDetails);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-trip-details': TripDetails;
  }
}
