import { html, nothing, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import { fuelNote } from '../../core/hire/hire-refill.ts';
import type { Hire, HireBoat, ReturnNote } from '../../core/hire/shapes.ts';
import { planTrip } from '../../core/trip/plan-trip.ts';
import type { Plan } from '../../core/trip/shapes.ts';
import { define } from '../define.ts';
import '../field/choice-field.ts';
import type { ChoiceMade } from '../field/choice-field.ts';
import '../field/quantity-field.ts';
import type { QuantityTyped } from '../field/quantity-field.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { spentInLegs } from '../trials/planned-spent.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { returnWords as words } from '../words/en-desk.ts';
import { deskFormStyles } from './desk-form.styles.ts';
import type { NoteOf } from './desk-place.ts';
import { dayOf, reading, timeToday } from './desk-time.ts';

export type HireReturned = CustomEvent<{ id: string; change: (hire: Hire) => Hire | undefined; note: NoteOf }>;

/** Times the likely consumption, up or down. */
const ODD = 1.6;

type Used = 'as-planned' | 'running' | 'unknown';

/**
 * @summary What is noted when a boat is back: when, what was put back, how it was used, and what went wrong.
 * @fires hire-returned - to be kept
 * @fires return-closed - done, or not back yet
 */
export class ReturnForm extends SpeakingElement {
  static override styles = [tokens, controls, deskFormStyles];

  @property({ attribute: false }) hire!: Hire;
  @property({ attribute: false }) boat: HireBoat | undefined;
  @property({ type: Number }) now = 0;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  @state() private at: string | undefined;
  @state() private amount: number | undefined;
  @state() private used: Used = 'unknown';
  @state() private running: number | undefined;
  @state() private note = '';
  #plan: Plan | undefined;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('hire')) return;
    // Only how long at which speed, and about how much: waters and calibration change little of that.
    const plan = planTrip(this.hire.trip, undefined, { quick: true });
    this.#plan = plan.ok ? plan.value : undefined;
  }

  override render() {
    const { hire, measures: m } = this;
    const { store } = hire.told;
    const counts =
      this.amount !== undefined && (this.used === 'as-planned' || (this.used === 'running' && this.running));
    return html`<form class="card" aria-label=${words.title(hire.boat)} @submit=${this.#save}>
      <h3>${words.title(hire.boat)}</h3>
      <div class="ask">
        <label for="at">${words.at}</label>
        <input
          id="at"
          class="narrow"
          type="time"
          .value=${this.at ?? reading(this.now)}
          @input=${(event: Event) => (this.at = (event.target as HTMLInputElement).value)}
        />
      </div>
      <homeleg-quantity-field
        label=${words.putBack(store)}
        hint=${words.putBackHint}
        measure="amount"
        store=${store}
        min="0"
        max=${hire.told.full}
        .measures=${m}
        .value=${this.amount}
        @quantity-typed=${(event: QuantityTyped) => (this.amount = event.detail.value)}
      ></homeleg-quantity-field>
      <homeleg-choice-field
        label=${words.used}
        .choices=${[
          ...(hire.route ? [{ value: 'as-planned', label: words.asPlanned }] : []),
          { value: 'running', label: words.running },
          { value: 'unknown', label: words.unknown },
        ]}
        .value=${this.used}
        @choice-made=${(event: ChoiceMade) => (this.used = event.detail.value as Used)}
      ></homeleg-choice-field>
      ${
        this.used === 'running'
          ? html`<homeleg-quantity-field
              label=${words.runningTime}
              measure="count"
              unit="h"
              unitSize="3600"
              min="0"
              max="86400"
              .measures=${m}
              .value=${this.running}
              @quantity-typed=${(event: QuantityTyped) => (this.running = event.detail.value)}
            ></homeleg-quantity-field>`
          : nothing
      }
      ${this.amount === undefined ? nothing : html`<p class="hint">${counts ? words.counts : words.countsNot}</p>`}
      ${this.#odd()}
      <div class="ask">
        <label for="note">${words.note}</label>
        <input
          id="note"
          maxlength="500"
          autocomplete="off"
          .value=${this.note}
          @input=${(event: Event) => (this.note = (event.target as HTMLInputElement).value)}
        />
      </div>
      <div class="row">
        <button class="primary">${words.save}</button>
        <button type="button" @click=${this.#close}>${words.cancel}</button>
      </div>
    </form>`;
  }

  /** Far from the plan a figure is a slip of reading, or the boat is not what it was: both are worth a look. */
  #odd() {
    const need = this.#plan?.need.median ?? Number.NaN;
    const { amount, hire, measures: m } = this;
    if (amount === undefined || this.used !== 'as-planned' || !Number.isFinite(need)) return nothing;
    if (amount < need * ODD && amount > need / ODD) return nothing;
    return html`<p class="warn" role="status">${words.odd(m.show('amount', need, hire.told.store))}</p>`;
  }

  #save(event: Event): void {
    event.preventDefault();
    const { amount, used, running, note } = this;
    const returnedAt = Math.floor((this.at !== undefined && timeToday(this.at, this.now)) || this.now);
    const back: ReturnNote = {
      ...(amount !== undefined && { amount }),
      used: used === 'running' ? (running ? { running } : 'unknown') : used,
      ...(note.trim() && { note: note.trim() }),
    };
    const detail = {
      id: this.hire.id,
      // Another tab may have noted it already; then that stands.
      change: (hire: Hire) =>
        hire.returnedAt === undefined && hire.leftAt !== undefined
          ? { ...hire, returnedAt: Math.max(returnedAt, hire.leftAt), back }
          : undefined,
      note: (hire: Hire) => this.#noteOf(hire),
    };
    this.dispatchEvent(
      new CustomEvent('hire-returned', { detail, bubbles: true, composed: true }) satisfies HireReturned,
    );
    this.#close();
  }

  #noteOf(hire: Hire) {
    if (!this.boat) return undefined;
    const legs = this.#plan?.legs ?? [];
    const manoeuvring = (this.#plan?.time ?? 0) - legs.reduce((sum, { time, stop }) => sum + time + stop, 0);
    const planned = Number.isFinite(manoeuvring) ? spentInLegs(legs, manoeuvring) : [];
    return fuelNote(hire, this.boat, { day: dayOf(hire.leftAt ?? hire.checkedAt), planned });
  }

  #close(): void {
    this.dispatchEvent(new CustomEvent('return-closed', { bubbles: true }));
  }
}

define('homeleg-return-form', ReturnForm);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-return-form': ReturnForm;
  }
}
