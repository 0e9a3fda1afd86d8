import { html, nothing } from 'lit';
import { property } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { Fit } from '../../core/trials/fit-shapes.ts';
import type { Refill, Trials } from '../../core/trials/shapes.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { runWords, trialWords, refillWords as words } from '../words/en-trials.ts';
import { rowTableStyles } from './row-table.styles.ts';
import type { RowAct, RowAsked } from './run-table.ts';
import { dayText, loadText, storeKind } from './texts.ts';
import { setupOf } from './work.ts';

/**
 * @summary The refills, with what the fit makes of each.
 * @fires row-asked - a refill is to be changed, left out, taken in or deleted
 */
export class RefillList extends SpeakingElement {
  static override styles = [tokens, controls, rowTableStyles];

  @property({ attribute: false }) trials: Trials | undefined;
  @property({ attribute: false }) fit: Fit | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  override render() {
    const { trials } = this;
    if (!trials || trials.refills.length === 0) return nothing;
    return html`<table role="table">
      <caption class="sr">${trialWords.refills}</caption>
      <tbody role="rowgroup">
        ${repeat(
          trials.refills,
          ({ id }) => id,
          (refill, i) => this.#row(trials, refill, i + 1),
        )}
      </tbody>
    </table>`;
  }

  #row(trials: Trials, refill: Refill, number: number) {
    const { measures } = this;
    const found = this.fit?.runs.find(({ id, kind }) => kind === 'refill' && id === refill.id);
    const aside = refill.leftOut ? 'left-out' : found?.setAside;
    const store = storeKind(setupOf(trials, refill.setup).store);
    const time = refill.spent.reduce((sum, { seconds }) => sum + seconds, 0);
    const act = (what: RowAct, label: string) => html`<button
      type="button"
      class="quiet"
      aria-label=${words.doThis(label, number)}
      @click=${() => this.#ask(what, refill.id)}
    >
      ${label}
    </button>`;
    return html`<tr role="row" class=${aside ? 'aside' : ''}>
      <th role="rowheader" scope="row">
        <span class="number">${number}</span> <span class="day">${dayText(refill.day, measures)}</span>
      </th>
      <td role="cell">
        ${words.line(measures.show('amount', refill.amount, store), measures.time(time))}
        <span class="small">${loadText(trials, refill.setup, refill.load, measures)}</span>
        ${refill.note ? html`<span class="small">${refill.note}</span>` : nothing}
      </td>
      <td role="cell">
        ${aside ? html`<span class="flag ${aside}">${runWords.asides[aside]}</span>` : found ? runWords.counts : nothing}
      </td>
      <td role="cell" class="acts">
        ${act('edit', trialWords.edit)}
        ${refill.leftOut ? act('put-back', trialWords.putBack) : act('leave-out', trialWords.leaveOut)}
        ${act('delete', trialWords.delete)}
      </td>
    </tr>`;
  }

  #ask(what: RowAct, id: string): void {
    this.dispatchEvent(
      new CustomEvent('row-asked', { detail: { what, id, kind: 'refill' }, bubbles: true }) satisfies RowAsked,
    );
  }
}

define('homeleg-refill-list', RefillList);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-refill-list': RefillList;
  }
}
