import { html, nothing, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import { type Minimum, minimums } from '../../core/trip/minimums.ts';
import { endsAtHome } from '../answer/sentences.ts';
import { levelMark } from '../answer/verdict-mark.ts';
import { define } from '../define.ts';
import { answersStyles } from '../further/answers.styles.ts';
import type { Ask } from '../further/ask.ts';
import { cell, head } from '../further/table-parts.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { commonWords } from '../words/en-forms.ts';
import { furtherWords, minimumsWords as words } from '../words/en-further.ts';
import { minimumsStyles } from './minimums.styles.ts';

/** Rows on the screen before somebody asks for all. The rest are there, for paper. */
const FIRST = 12;

/** @summary For every waypoint the least to go on with, the latest time, and the least to get home with. */
export class Minimums extends SpeakingElement {
  static override styles = [tokens, controls, answersStyles, minimumsStyles];

  @property({ attribute: false }) ask: Ask | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  @state() private all = false;

  #rows: readonly Minimum[] = [];

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('ask')) return;
    const standing = this.ask?.standing;
    this.#rows = standing ? minimums(standing) : [];
  }

  override render() {
    const { ask } = this;
    if (!ask || this.#rows.length === 0) {
      return html`<p class="empty">${ask ? furtherWords.unusable : furtherWords.empty}</p>`;
    }
    const { store } = ask.plan;
    const timed = this.#rows.some(({ latest }) => latest !== undefined);
    const home = endsAtHome(ask.plan);
    const long = this.#rows.length > FIRST + 2;
    return html`<table role="table" class="cards ${long && !this.all ? 'some' : ''}">
      <caption>${home ? words.caption(store) : words.captionOneWay(store)}</caption>
      <thead role="rowgroup">
        <tr role="row">
          ${head(words.point, false)} ${head(words.arrival)} ${head(words.left)} ${head(words.goOn)}
          ${timed ? head(words.latest) : nothing} ${head(words.home)} ${head(words.easy)}
        </tr>
      </thead>
      <tbody role="rowgroup">${this.#rows.map((row, i) => this.#row(row, i, ask, timed))}</tbody>
    </table>
    ${
      long
        ? html`<button type="button" class="quiet" aria-expanded=${this.all} @click=${this.#allToggled}>
            ${this.all ? words.fewer : words.all(this.#rows.length)}
          </button>`
        : nothing
    }`;
  }

  #row(row: Minimum, i: number, { plan, departure }: Ask, timed: boolean) {
    const { measures: m } = this;
    const amount = (value: number) => m.show('amount', Math.max(value, 0), plan.store);
    const end = i === this.#rows.length - 1;
    const latest = row.latest === undefined ? undefined : m.clock(departure, row.latest);
    const short = row.left < row.goOn * (1 - 1e-9);
    const outward = row.part === 'out';
    const late = i >= FIRST && !end;
    return html`<tr role="row" class="${short ? 'marginal' : ''} ${late ? 'late' : ''}">
      <th role="rowheader" scope="row">
        ${this.#name(row, end && endsAtHome(plan))}
        <span class="told ${outward && !end ? 'twice' : ''}">${this.#told(row, end, latest, plan)}</span>
        ${short ? html`<span class="short">${levelMark('marginal')} ${words.short}</span>` : nothing}
      </th>
      ${cell(words.arrival, m.clock(departure, row.arrives))} ${cell(words.left, amount(row.left))}
      ${this.#turn(outward ? amount(row.goOn) : undefined)}
      ${timed ? this.#turn(outward ? latest : undefined) : nothing}
      ${cell(words.home, amount(row.home))} ${cell(words.easy, amount(row.homeEasy))}
    </tr>`;
  }

  /** Said in words where rows are cards. */
  #turn(figure: string | undefined) {
    return html`<td role="cell" class="figure turn"><strong>${figure ?? ''}</strong></td>`;
  }

  #name({ waypoint, name, part }: Minimum, end: boolean) {
    if (end) return name ? `${name}, ${commonWords.within(words.end)}` : words.end;
    const own = name ?? words.waypoint(waypoint + 1);
    return part === 'home' ? `${own}, ${words.parts.home}` : own;
  }

  #told({ goOn, part }: Minimum, end: boolean, latest: string | undefined, plan: Ask['plan']): string {
    const amount = this.measures.show('amount', goOn, plan.store);
    if (end) return words.atEnd(amount);
    if (part === 'home') return words.homeward(amount);
    return endsAtHome(plan) ? words.turn(amount, latest) : words.onward(amount, latest);
  }

  #allToggled(): void {
    this.all = !this.all;
  }
}

define('homeleg-minimums', Minimums);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-minimums': Minimums;
  }
}
