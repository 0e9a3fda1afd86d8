import { html, nothing } from 'lit';
import { property, state } from 'lit/decorators.js';
import { type Fleet, HANDOVER, type HandoverPoint, type Hire } from '../../core/hire/shapes.ts';
import type { Trip } from '../../core/trip/shapes.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { tellTrip } from '../planner/planner-events.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { handoverWords as words } from '../words/en-desk.ts';
import { deskFormStyles } from './desk-form.styles.ts';
import { clockText } from './desk-time.ts';
import { handOverStyles } from './hand-over.styles.ts';
import { PAPERS, type Paper, printOn } from './paper.ts';
import './slip-sheet.ts';

/** A change to one hire, made on what is kept at that moment. */
export type HireChanged = CustomEvent<{ id: string; change: (hire: Hire) => Hire | undefined }>;
export type HirePressed = CustomEvent<{ id: string }>;

/**
 * @summary The handover: points shown with initials, the slip to print, and the departure.
 * @fires hire-changed - something of the hire is to be kept
 * @fires hire-leaves - they leave now
 * @fires hire-struck - the slip is to go
 * @fires handover-closed - back to the check
 */
export class HandOver extends SpeakingElement {
  static override styles = [tokens, controls, deskFormStyles, handOverStyles];

  @property({ attribute: false }) hire!: Hire;
  @property({ attribute: false }) fleet!: Fleet;
  @property({ type: Number }) now = 0;
  @property({ attribute: false }) measured: (trip: Trip) => Trip = (trip) => trip;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  @state() private initials = '';
  @state() private initialsAsked = false;
  @state() private paper: Paper = 'A5';

  override render() {
    const { hire, now, measures: m } = this;
    const left = hire.leftAt !== undefined;
    const stale = !left && now > hire.validUntil;
    return html`
      <div class="halves">
        <section class="card">
          <h2 tabindex="-1">${words.title(hire.boat)}</h2>
          ${
            stale
              ? html`<p class="refused" role="alert">
                  ${words.refused(clockText(hire.validUntil, now, m.lang))}
                </p>`
              : nothing
          }
          ${left ? html`<p class="warn calm" role="status">${this.#leftLine()}</p>` : nothing}
          ${this.#points()} ${this.#contact()}
          <div class="row">
            ${
              left
                ? nothing
                : stale
                  ? html`<button type="button" class="primary" @click=${() => this.#tell('handover-closed')}>
                      ${words.again}
                    </button>`
                  : html`<button type="button" class="primary" @click=${() => this.#tell('hire-leaves')}>
                      ${words.leave}
                    </button>`
            }
            ${left ? nothing : html`<button type="button" @click=${() => this.#tell('hire-struck')}>${words.away}</button>`}
            <button type="button" @click=${() => this.#tell('handover-closed')}>${words.done}</button>
          </div>
        </section>
        <section class="paper">
          <div class="row off-paper">
            <label class="of-paper">
              ${words.paper}
              <select @change=${(event: Event) => (this.paper = (event.target as HTMLSelectElement).value as Paper)}>
                ${PAPERS.map((paper) => html`<option value=${paper} .selected=${paper === this.paper}>${paper}</option>`)}
              </select>
            </label>
            <button type="button" @click=${this.#printPressed}>${words.print}</button>
          </div>
          <homeleg-slip-sheet
            .hire=${hire}
            .fleet=${this.fleet}
            .measured=${this.measured}
            .measures=${m}
          ></homeleg-slip-sheet>
        </section>
      </div>
    `;
  }

  #printPressed(): void {
    tellTrip(this, this.hire.trip, 'print');
    printOn(this.paper);
  }

  #leftLine(): string {
    const { hire, now, measures: m } = this;
    return words.left(clockText(hire.leftAt!, now, m.lang), clockText(hire.due!, now, m.lang));
  }

  #points() {
    const { shown } = this.hire;
    const missing = HANDOVER.filter((point) => !shown[point]).length;
    return html`
      <div class="ask">
        <label for="initials">${words.initials}</label>
        <input
          id="initials"
          class="narrow"
          maxlength="6"
          autocomplete="off"
          autocapitalize="characters"
          .value=${this.initials}
          aria-describedby="initials-hint"
          aria-invalid=${this.initialsAsked && this.initials.trim() === '' ? 'true' : 'false'}
          @input=${(event: Event) => (this.initials = (event.target as HTMLInputElement).value)}
        />
        <p id="initials-hint" class=${this.initialsAsked && !this.initials.trim() ? 'problem' : 'hint'}>
          ${this.initialsAsked && !this.initials.trim() ? words.initialsFirst : words.initialsHint}
        </p>
      </div>
      <fieldset>
        <legend>${words.shown}</legend>
        ${HANDOVER.map(
          (point) => html`<label class="check point">
            <input
              type="checkbox"
              .checked=${Boolean(shown[point])}
              @click=${(event: Event) => this.#ticked(event, point)}
            />
            <span>${words.points[point]}</span>
            <b>${shown[point] ?? ''}</b>
          </label>`,
        )}
        <p class=${missing > 0 ? 'hint' : 'sr'}>${missing > 0 ? words.missing(missing) : ''}</p>
      </fieldset>
    `;
  }

  #contact() {
    return html`<div class="ask">
      <label for="contact">${words.contact}</label>
      <input
        id="contact"
        autocomplete="off"
        maxlength="200"
        .value=${this.hire.contact ?? ''}
        aria-describedby="contact-hint"
        @change=${(event: Event) => {
          const contact = (event.target as HTMLInputElement).value.trim();
          this.#change(({ contact: _, ...hire }) => (contact ? { ...hire, contact } : hire));
        }}
      />
      <p id="contact-hint" class="hint">${words.contactHint}</p>
    </div>`;
  }

  #ticked(event: Event, point: HandoverPoint): void {
    const initials = this.initials.trim();
    const on = (event.target as HTMLInputElement).checked;
    if (on && initials === '') {
      event.preventDefault();
      this.initialsAsked = true;
      this.renderRoot.querySelector<HTMLInputElement>('#initials')?.focus();
      return;
    }
    this.#change((hire) => {
      const { [point]: _, ...others } = hire.shown;
      return { ...hire, shown: on ? { ...others, [point]: initials } : others };
    });
  }

  #change(change: (hire: Hire) => Hire | undefined): void {
    const detail = { id: this.hire.id, change };
    this.dispatchEvent(
      new CustomEvent('hire-changed', { detail, bubbles: true, composed: true }) satisfies HireChanged,
    );
  }

  #tell(name: 'hire-leaves' | 'hire-struck' | 'handover-closed'): void {
    const detail = { id: this.hire.id };
    this.dispatchEvent(new CustomEvent(name, { detail, bubbles: true, composed: true }) satisfies HirePressed);
  }
}

define('homeleg-hand-over', HandOver);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-hand-over': HandOver;
  }
}
