import { html, nothing, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { Fleet, Hire } from '../../core/hire/shapes.ts';
import type { Trip } from '../../core/trip/shapes.ts';
import { verdictMark } from '../answer/verdict-mark.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { tellTrip } from '../planner/planner-events.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { hirerWords, slipWords as words } from '../words/en-desk.ts';
import { clockText, dayOf, dayText, offsetAt } from './desk-time.ts';
import { qrCode, qrDrawing } from './qr-drawing.ts';
import { type SlipCode, slipCode } from './slip-code.ts';
import { shownLines, slipLines, timeLines } from './slip-lines.ts';
import { slipSheetStyles } from './slip-sheet.styles.ts';

/** @summary The slip to hand over: the answer, when to be back and to turn, whom to call, what was shown, and a code. */
export class SlipSheet extends SpeakingElement {
  static override styles = [tokens, slipSheetStyles];

  @property({ attribute: false }) hire!: Hire;
  @property({ attribute: false }) fleet!: Fleet;
  @property({ attribute: false }) measured: (trip: Trip) => Trip = (trip) => trip;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  @state() private code: SlipCode | undefined;
  #visit = 0;
  /** The hire whose code the page was told of. */
  #told = '';

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('hire') || changed.has('fleet') || changed.has('measures')) void this.#makeCode();
  }

  async #makeCode(): Promise<void> {
    const visit = ++this.#visit;
    const { hire, fleet, measures, measured } = this;
    const planner = new URL('../', globalThis.location.href).href;
    const offset = offsetAt(hire.leftAt ?? hire.checkedAt);
    const code = await slipCode({ hire, fleet, measures, measured, planner, offset, onLine: navigator.onLine });
    // Another slip may have come meanwhile.
    if (visit !== this.#visit) return;
    this.code = code;
    if (this.#told === hire.id || !qrCode(code.content)) return;
    this.#told = hire.id;
    tellTrip(this, hire.trip, 'code');
  }

  override render() {
    const { hire, fleet, measures: m } = this;
    const { told } = hire;
    return html`<article class=${told.verdict} aria-label=${words.title}>
      <header>
        <p>${fleet.name}</p>
        <p>${dayText(dayOf(hire.checkedAt), m.lang)}</p>
      </header>
      <div class="head">
        ${verdictMark(told.verdict)}
        <div>
          <p class="boat">${hire.boat}</p>
          <p class="answer">${hirerWords.verdicts[told.verdict]}</p>
        </div>
      </div>
      <dl class="times">
        ${timeLines(hire, m).map(({ name, text }) => html`<div><dt>${name}</dt><dd>${text}</dd></div>`)}
      </dl>
      <div class="middle">
        <dl>
          ${slipLines(hire, fleet, m).map(({ name, text }) => html`<div><dt>${name}</dt><dd>${text}</dd></div>`)}
        </dl>
        <figure>${this.#code()}</figure>
      </div>
      <ul>${told.lines.slice(0, 6).map((line) => html`<li>${line}</li>`)}</ul>
      <p class="late">${words.late}</p>
      <ol class="shown" aria-label=${words.initialled}>
        ${shownLines(hire).map(({ name, text }) => html`<li><span>${name}</span><b>${text}</b></li>`)}
      </ol>
      <p class="sign"><span>${words.signature}</span></p>
      <p class="small">
        ${hire.leftAt === undefined ? html`${words.notValid(clockText(hire.validUntil, hire.checkedAt, m.lang))} ` : nothing}
        ${hirerWords.cautions}
      </p>
    </article>`;
  }

  #code() {
    if (!this.code) return nothing;
    const drawn = qrCode(this.code.content);
    if (!drawn) return html`<figcaption>${words.codeLong}</figcaption>`;
    return html`${qrDrawing(drawn, words.codeName)}
      <figcaption>${this.code.kind === 'link' ? words.codeLink : words.codeText}</figcaption>`;
  }
}

define('homeleg-slip-sheet', SlipSheet);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-slip-sheet': SlipSheet;
  }
}
