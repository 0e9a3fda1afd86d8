import { html, nothing } from 'lit';
import { property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { type HireState, hireState, type OverdueStep, outFirst } from '../../core/hire/hire-state.ts';
import type { Hire, HireBoat } from '../../core/hire/shapes.ts';
import { levelMark } from '../answer/verdict-mark.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { outWords as words } from '../words/en-desk.ts';
import { deskFormStyles } from './desk-form.styles.ts';
import { clockText } from './desk-time.ts';
import type { HirePressed } from './hand-over.ts';
import { outListStyles } from './out-list.styles.ts';
import './return-form.ts';

const STEPS: readonly OverdueStep[] = ['call', 'ask-round', 'raise-alarm'];

/**
 * @summary Who is out, when they are due, who is late and what to do then.
 * @fires hire-opened - the slip of a hire is wanted
 */
export class OutList extends SpeakingElement {
  static override styles = [tokens, controls, deskFormStyles, outListStyles];

  @property({ attribute: false }) hires: readonly Hire[] = [];
  @property({ attribute: false }) boats: readonly HireBoat[] = [];
  @property({ type: Number }) now = 0;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  @state() private returning: string | undefined;

  override render() {
    const out = outFirst(this.hires);
    const waiting = this.hires.filter(({ leftAt, returnedAt }) => leftAt === undefined && returnedAt === undefined);
    return html`<section class="card" aria-label=${words.title}>
      <h2>${words.title}</h2>
      ${out.length === 0 ? html`<p class="muted">${words.none}</p>` : nothing}
      <ul>
        ${repeat(
          out,
          ({ id }) => id,
          (hire) => this.#row(hire, hireState(hire, this.now)),
        )}
      </ul>
      ${
        waiting.length > 0
          ? html`<h3>${words.waiting}</h3>
              <ul>
                ${waiting.map((hire) => this.#waiting(hire))}
              </ul>`
          : nothing
      }
      <p class="hint">${words.closed}</p>
    </section>`;
  }

  #row(hire: Hire, state: HireState) {
    const { measures: m, now } = this;
    const late = state.is === 'overdue';
    const clock = (seconds: number) => clockText(seconds, now, m.lang);
    return html`<li class="hire ${state.is}">
      <div class="line">
        <div class="who">
          <strong>${hire.boat}</strong>
          <span class="muted">${hire.route ?? ''}</span>
        </div>
        <div class="when">
          <span>${words.left(clock(hire.leftAt!))}, ${words.due(clock(hire.due!))}</span>
          <strong class="count">
            ${late ? levelMark('no-go') : nothing}
            ${'seconds' in state ? (late ? words.late(m.time(state.seconds)) : words.in(m.time(state.seconds))) : nothing}
          </strong>
        </div>
        <div class="row">
          <button type="button" @click=${() => this.#open(hire.id)}>${words.open}</button>
          ${
            this.returning === hire.id
              ? nothing
              : html`<button type="button" class="primary" @click=${() => (this.returning = hire.id)}>
                  ${words.returned}
                </button>`
          }
        </div>
      </div>
      ${late ? this.#steps(state.step, hire) : nothing}
      ${
        this.returning === hire.id
          ? html`<homeleg-return-form
              .hire=${hire}
              .boat=${this.boats.find(({ id }) => id === hire.boatId)}
              .now=${now}
              .measures=${m}
              @return-closed=${() => (this.returning = undefined)}
            ></homeleg-return-form>`
          : nothing
      }
    </li>`;
  }

  #steps(step: OverdueStep, hire: Hire) {
    const reached = STEPS.slice(0, STEPS.indexOf(step) + 1);
    return html`<div class="steps">
      <ol>
        ${reached.flatMap((each) => words.steps[each].map((line) => html`<li>${line}</li>`))}
      </ol>
      ${hire.contact ? html`<p>${words.contact(hire.contact)}</p>` : nothing}
      <p>${words.sooner} ${words.rules}</p>
    </div>`;
  }

  #waiting(hire: Hire) {
    const { now, measures: m } = this;
    const until = clockText(hire.validUntil, now, m.lang);
    const stale = hireState(hire, now).is === 'stale';
    return html`<li class="hire">
      <div class="line">
        <div class="who"><strong>${hire.boat}</strong><span class="muted">${hire.route ?? ''}</span></div>
        <span class="when ${stale ? 'problem' : ''}">
          ${stale ? words.waitingStale(until) : words.waitingUntil(until)}
        </span>
        <div class="row"><button type="button" @click=${() => this.#open(hire.id)}>${words.open}</button></div>
      </div>
    </li>`;
  }

  #open(id: string): void {
    this.dispatchEvent(
      new CustomEvent('hire-opened', { detail: { id }, bubbles: true, composed: true }) satisfies HirePressed,
    );
  }
}

define('homeleg-out-list', OutList);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-out-list': OutList;
  }
}
