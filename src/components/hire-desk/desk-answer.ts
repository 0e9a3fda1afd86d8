import { html, nothing } from 'lit';
import { property } from 'lit/decorators.js';
import type { HireChecked } from '../../core/hire/check-hire.ts';
import { levelMark, verdictMark } from '../answer/verdict-mark.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { checkWords, hirerWords as words } from '../words/en-desk.ts';
import { answerLines, type DueAsked, dueLine, leftLine } from './answer-lines.ts';
import { deskAnswerStyles } from './desk-answer.styles.ts';
import { clockText } from './desk-time.ts';

/** @summary One large answer for the one who hires, with its reasons in plain words and how long it stands. */
export class DeskAnswer extends SpeakingElement {
  static override styles = [tokens, controls, deskAnswerStyles];

  @property({ attribute: false }) checked: HireChecked | undefined;
  /** Why there is none. */
  @property({ attribute: false }) problems: readonly string[] = [];
  @property() boat = '';
  @property({ attribute: false }) due: DueAsked | undefined;
  @property() area = '';
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  override render() {
    const { checked, measures: m } = this;
    const verdict = checked?.verdict ?? 'none';
    return html`
      <div class="head ${verdict}">
        ${verdictMark(verdict)}
        <div role="status">
          ${this.boat ? html`<p class="boat">${this.boat}</p>` : nothing}
          <h2 part="verdict">${checked ? words.verdicts[checked.verdict] : checkWords.nothingYet}</h2>
          ${
            checked
              ? html`<p>${words.why[checked.verdict](checked.plan.store)}</p>`
              : this.problems.map((problem) => html`<p>${problem}</p>`)
          }
        </div>
      </div>
      <div class="body">
        ${checked ? this.#body(checked, m) : nothing}
        <p class="cautions">${words.cautions}</p>
      </div>
    `;
  }

  #body(checked: HireChecked, m: Measures) {
    const { plan, verdict } = checked;
    const lines = answerLines(checked, m);
    return html`
      ${this.due && verdict !== 'no-go' ? html`<p class="back">${dueLine(this.due, m)}</p>` : nothing}
      ${
        lines.length > 0
          ? html`<ul aria-label=${words.shownFor}>
              ${lines.map(({ level, text }) => html`<li class=${level}>${levelMark(level)}<span>${text}</span></li>`)}
            </ul>`
          : nothing
      }
      ${Number.isFinite(plan.left.median) ? html`<p>${leftLine(plan, m)}</p>` : nothing}
      ${
        Number.isFinite(plan.time) && !this.area
          ? html`<p>${words.takes(m.time(plan.time), m.show('distance', plan.distance))}</p>`
          : nothing
      }
      ${this.area ? html`<p>${words.area(this.area)}</p>` : nothing}
      ${
        this.due && verdict !== 'no-go'
          ? html`<p class="good">${words.good(clockText(checked.validUntil, this.due.now, m.lang))}</p>`
          : nothing
      }
    `;
  }
}

define('homeleg-desk-answer', DeskAnswer);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-desk-answer': DeskAnswer;
  }
}
