import { html, nothing } from 'lit';
import { property } from 'lit/decorators.js';
import type { Fix, Plan, Reason } from '../../core/trip/shapes.ts';
import type { Problem } from '../../core/units/result.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { answerWords as words } from '../words/en-answer.ts';
import { cautions } from '../words/en-cautions.ts';
import { fixText } from '../words/en-fixes.ts';
import { problemText } from '../words/en-problems.ts';
import { reasonText } from '../words/en-reasons.ts';
import { verdictWhy, verdictWords } from '../words/en-verdict.ts';
import { answerStyles } from './answer.styles.ts';
import { orderedReasons, type ReasonGroup } from './ordered-reasons.ts';
import { badCaseSentence, chanceSentence, leftInShort, leftSentence, timeSentence } from './sentences.ts';
import { levelMark, verdictMark } from './verdict-mark.ts';

/** A fix somebody pressed, and the reason it would mend. */
export type FixWanted = CustomEvent<{ fix: Fix; reason: Reason }>;

/**
 * @summary The answer in words, sign and colour: what is left at home, why, and what would mend it.
 * @fires fix-wanted - a fix was pressed
 * @csspart verdict - the words of the answer
 */
export class Answer extends SpeakingElement {
  static override styles = [tokens, controls, answerStyles];

  @property({ attribute: false }) plan: Plan | undefined;
  /** Why there is no plan. */
  @property({ attribute: false }) problems: readonly Problem[] = [];
  @property({ attribute: false }) measures: Measures = NAUTICAL;
  @property({ attribute: 'trip-name' }) tripName = '';
  /** ISO 8601 with offset; without it only how long the trip takes. */
  @property() departure: string | undefined;
  /** One line only: sign, words and what is left. */
  @property({ type: Boolean }) compact = false;
  /** Read out politely whenever it changes; the host sets it once per committed change, never while dragging. */
  @property() announce = '';

  override render() {
    return html`${this.compact ? this.#strip() : this.#whole()}
      <p class="sr" role="status">${this.announce}</p>`;
  }

  #strip() {
    const { plan } = this;
    return html`<div class="strip ${plan?.verdict ?? 'none'}">
      ${verdictMark(plan?.verdict ?? 'none')}
      <strong>${plan ? verdictWords[plan.verdict] : words.none}</strong>
      ${plan ? html`<span class="short">${leftInShort(plan, this.measures)}</span>` : nothing}
    </div>`;
  }

  #whole() {
    const { plan, measures } = this;
    if (!plan) return this.#nothingYet();
    return html`
      <div class="head ${plan.verdict}">
        ${verdictMark(plan.verdict)}
        <div>
          ${this.tripName ? html`<p class="trip">${this.tripName}</p>` : nothing}
          <h2 part="verdict">${verdictWords[plan.verdict]}</h2>
          <p class="left">${leftSentence(plan, measures)}</p>
        </div>
      </div>
      <div class="body">
        <p class="why">${verdictWhy(plan.verdict, plan.store)}</p>
        <ul class="facts">
          <li>${timeSentence(plan, this.departure, measures)}</li>
          <li>${chanceSentence(plan.probability)}</li>
          <li>${badCaseSentence(plan, measures)}</li>
        </ul>
        ${orderedReasons(plan.reasons).map((group) => this.#group(group, plan))}
        <p class="cautions">${cautions().join(' ')}</p>
      </div>
    `;
  }

  #nothingYet() {
    return html`
      <div class="head none">
        ${verdictMark('none')}
        <div>
          ${this.tripName ? html`<p class="trip">${this.tripName}</p>` : nothing}
          <h2 part="verdict">${words.none}</h2>
          ${
            this.problems.length === 0
              ? html`<p class="left">${words.noneHint}</p>`
              : this.problems.length === 1
                ? html`<p class="left">${problemText(this.problems[0]!)}</p>`
                : html`<ul class="missing">
                    ${this.problems.map((problem) => html`<li>${problemText(problem)}</li>`)}
                  </ul>`
          }
        </div>
      </div>
      <div class="body"><p class="cautions">${cautions().join(' ')}</p></div>
    `;
  }

  #group({ level, title, first, more }: ReasonGroup, plan: Plan) {
    const list = (reasons: readonly Reason[]) => html`<ul class="reasons">
      ${reasons.map((reason) => this.#reason(reason, plan))}
    </ul>`;
    return html`<section class=${level}>
      <h3>${title}</h3>
      ${list(first)}
      ${
        more.length > 0
          ? html`<details>
              <summary>${words.more(new Intl.NumberFormat(this.measures.lang).format(more.length))}</summary>
              ${list(more)}
            </details>`
          : nothing
      }
    </section>`;
  }

  #reason(reason: Reason, { store }: Plan) {
    const { measures } = this;
    return html`<li>
      ${levelMark(reason.level)}
      <div>
        <p>${reasonText(reason, measures, store)}</p>
        ${
          reason.fixes && reason.fixes.length > 0
            ? html`<div class="fixes">
                ${reason.fixes.map(
                  (fix) =>
                    html`<button type="button" @click=${() => this.#fixPressed(fix, reason)}>
                      ${fixText(fix, measures, store)}
                    </button>`,
                )}
              </div>`
            : nothing
        }
      </div>
    </li>`;
  }

  #fixPressed(fix: Fix, reason: Reason): void {
    this.dispatchEvent(new CustomEvent('fix-wanted', { detail: { fix, reason }, bubbles: true }) satisfies FixWanted);
  }
}

define('homeleg-answer', Answer);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-answer': Answer;
  }
}
