import { html, nothing } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { ChartDoubt } from '../../core/route/chart-doubts.ts';
import type { Problem } from '../../core/units/result.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { problemText } from '../words/en-problems.ts';
import { watersWords as words } from '../words/en-waters.ts';
import { featureTitle } from './feature-title.ts';
import { featureAt } from './look-over.ts';
import type { Sheet } from './sheet.ts';
import { watersEditorStyles } from './waters-editor.styles.ts';

/** Something to be shown: an error by its place in the file, or a doubt. */
export type ShowWanted = CustomEvent<{ problem: Problem } | { doubt: ChartDoubt }>;

/** Shown at once; a wrong export repeats one thing for every feature. */
const FIRST = 12;

/**
 * @summary What is wrong in a file of local waters, with its place in the file, and what wants a second look.
 * @fires show-wanted - the reader wants to be taken there
 */
export class CheckList extends SpeakingElement {
  static override styles = [tokens, controls, watersEditorStyles];

  @property({ attribute: false }) sheet: Sheet | undefined;
  @property({ attribute: false }) problems: readonly Problem[] = [];
  /** Undefined while they are being looked for, or cannot be. */
  @property({ attribute: false }) doubts: readonly ChartDoubt[] | undefined;

  @state() private all = false;

  override render() {
    const { problems, doubts } = this;
    return html`
      ${
        problems.length > 0
          ? html`<div class="refused">
              <p role="status">${words.faults(problems.length)}</p>
              <ul class="list">
                ${this.#first(problems).map((problem) => this.#problem(problem))}
              </ul>
            </div>`
          : html`<p class="good" role="status">${words.sound}</p>`
      }
      ${problems.length > 0 ? html`<p class="hint">${words.doubtsLater}</p>` : nothing}
      ${
        doubts && doubts.length > 0
          ? html`<div class="warn">
              <p>${words.doubts(doubts.length)}</p>
              <ul class="list">
                ${this.#first(doubts).map((doubt) => this.#doubt(doubt))}
              </ul>
            </div>`
          : doubts && problems.length === 0
            ? html`<p class="hint">${words.noDoubts}</p>`
            : nothing
      }
      ${
        !this.all && Math.max(problems.length, doubts?.length ?? 0) > FIRST
          ? html`<button type="button" class="quiet" @click=${() => (this.all = true)}>${words.showMore}</button>`
          : nothing
      }
    `;
  }

  #first<T>(entries: readonly T[]): readonly T[] {
    return this.all ? entries : entries.slice(0, FIRST);
  }

  #problem(problem: Problem) {
    const index = featureAt(problem);
    const about = index === undefined ? words.title : featureTitle(this.sheet, index);
    return html`<li>
      <span class="what">${problemText(problem)} <code>${words.place(problem.path)}</code></span>
      ${this.#show(about, { problem })}
    </li>`;
  }

  #doubt(doubt: ChartDoubt) {
    const { code, feature, other, value = 0 } = doubt;
    const about = feature === undefined ? undefined : featureTitle(this.sheet, feature);
    const figure = code === 'overlap' ? words.squareMetres(round(value, this.language)) : String(value);
    const text = words.doubt[code](figure, other === undefined ? '' : featureTitle(this.sheet, other));
    return html`<li>
      <span class="what">${about ? html`<b>${about}</b> ` : nothing}${text}</span>
      ${about ? this.#show(about, { doubt }) : nothing}
    </li>`;
  }

  #show(about: string, detail: ShowWanted['detail']) {
    return html`<button
      type="button"
      aria-label=${words.showNamed(about)}
      @click=${() => this.dispatchEvent(new CustomEvent('show-wanted', { detail }) satisfies ShowWanted)}
    >
      ${words.show}
    </button>`;
  }
}

/** Two figures are enough of an area. */
function round(value: number, lang: string): string {
  return new Intl.NumberFormat(lang, { maximumSignificantDigits: 2 }).format(value);
}

define('homeleg-waters-check', CheckList);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-waters-check': CheckList;
  }
}
