import { html, nothing } from 'lit';
import { property } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { Fit, RunFound } from '../../core/trials/fit-shapes.ts';
import type { Run, Trials } from '../../core/trials/shapes.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { trialWords, runWords as words } from '../words/en-trials.ts';
import { rowTableStyles } from './row-table.styles.ts';
import { sure } from './still-water-text.ts';
import { balanceOf, consumedText, dayText, rpmText, setupName, storeKind } from './texts.ts';
import { setupOf } from './work.ts';

/** What to do with a run or refill. */
export type RowAsked = CustomEvent<{ what: RowAct; id: string; kind: 'run' | 'refill' }>;
export type RowAct = 'edit' | 'duplicate' | 'leave-out' | 'put-back' | 'delete';

/**
 * @summary The runs, with what the fit makes of each. In a narrow place each row becomes a card.
 * @fires row-asked - a run is to be changed, doubled, left out, taken in or deleted
 */
export class RunTable extends SpeakingElement {
  static override styles = [tokens, controls, rowTableStyles];

  @property({ attribute: false }) trials: Trials | undefined;
  @property({ attribute: false }) fit: Fit | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  /** Puts the focus on a button of a row, or on that of the row now in its place. */
  focusRow(index: number): void {
    const rows = this.renderRoot.querySelectorAll('tbody tr');
    (rows[Math.min(index, rows.length - 1)]?.querySelector('button') as HTMLElement | null | undefined)?.focus();
  }

  override render() {
    const { trials } = this;
    if (!trials) return nothing;
    if (trials.runs.length === 0) return html`<div class="empty">${words.empty}</div>`;
    const several = trials.setups.length > 1;
    // Roles are spelled out: drawn as cards, the rows would lose them.
    return html`<table role="table">
      <caption class="sr">${trialWords.runs}</caption>
      <thead role="rowgroup">
        <tr role="row">
          ${[words.number, words.aboard, words.speed, words.engine, words.consumption, words.state, words.actions].map(
            (name) => html`<th role="columnheader" scope="col">${name}</th>`,
          )}
        </tr>
      </thead>
      <tbody role="rowgroup">
        ${repeat(
          trials.runs,
          ({ id }) => id,
          (run, i) => this.#row(trials, run, i + 1, several),
        )}
      </tbody>
    </table>`;
  }

  #row(trials: Trials, run: Run, number: number, several: boolean) {
    const { measures } = this;
    const setup = setupOf(trials, run.setup);
    const { persons, peopleAndGear, allUpMass } = balanceOf(trials, run.setup, run.load);
    const found = this.fit?.runs.find(({ id, kind }) => kind === 'run' && id === run.id);
    return html`<tr role="row" class=${run.leftOut || found?.setAside ? 'aside' : ''}>
      <th role="rowheader" scope="row">
        <span class="number">${number}</span> <span class="day">${dayText(run.day, measures)}</span>
        ${several ? html`<span class="small">${setupName(setup, measures)}</span>` : nothing}
        ${run.note ? html`<span class="small">${run.note}</span>` : nothing}
      </th>
      ${this.#cell(
        words.aboard,
        html`${words.people(persons)}, ${measures.show('mass', peopleAndGear)}
        <span class="small">${words.allUp(measures.show('mass', allUpMass))}</span>`,
      )}
      ${this.#cell(words.speed, this.#speed(run, found))}
      ${this.#cell(words.engine, this.#engine(run))}
      ${this.#cell(words.consumption, consumedText(run.consumed, storeKind(setup.store), measures))}
      <td role="cell" class=${run.leftOut || found?.setAside ? 'state' : 'state fine'}>
        <span class="label" aria-hidden="true">${words.state}</span><span>${this.#state(run, found)}</span>
      </td>
      <td role="cell" class="acts">${this.#acts(run, number)}</td>
    </tr>`;
  }

  /** A cell with its column's name beside it for the card view. */
  #cell(label: string, value: unknown) {
    return html`<td role="cell"><span class="label" aria-hidden="true">${label}</span><span>${value}</span></td>`;
  }

  #speed({ passes }: Run, found: RunFound | undefined) {
    const { measures } = this;
    const each = passes.map(({ way, over }) => `${words.ways[way]} ${measures.show('speed', over)}`).join(', ');
    return html`${found ? sure(found.speed, found.speedDeviation, measures) : nothing}
      <span class="small">${each}</span>`;
  }

  #engine({ rpm, fullThrottle }: Run) {
    const parts = [rpm === undefined ? '' : rpmText(rpm, this.measures), fullThrottle ? words.full : ''];
    return parts.filter(Boolean).join(', ') || '\u2013';
  }

  #state(run: Run, found: RunFound | undefined) {
    const aside = run.leftOut ? 'left-out' : found?.setAside;
    if (aside) return html`<span class="flag ${aside}">${words.asides[aside]}</span>`;
    return found ? words.counts : '\u2013';
  }

  #acts({ id, leftOut }: Run, number: number) {
    const act = (what: RowAct, label: string) => html`<button
      type="button"
      class="quiet"
      aria-label=${words.doThis(label, number)}
      @click=${() => this.#ask(what, id)}
    >
      ${label}
    </button>`;
    return html`${act('edit', trialWords.edit)} ${act('duplicate', trialWords.duplicate)}
    ${leftOut ? act('put-back', trialWords.putBack) : act('leave-out', trialWords.leaveOut)}
    ${act('delete', trialWords.delete)}`;
  }

  #ask(what: RowAct, id: string): void {
    this.dispatchEvent(
      new CustomEvent('row-asked', { detail: { what, id, kind: 'run' }, bubbles: true }) satisfies RowAsked,
    );
  }
}

define('homeleg-run-table', RunTable);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-run-table': RunTable;
  }
}
