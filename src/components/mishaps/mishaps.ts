import { html, nothing, type PropertyValues } from 'lit';
import { property } from 'lit/decorators.js';
import { type Contingency, contingencies } from '../../core/trip/contingencies.ts';
import type { Plan } from '../../core/trip/shapes.ts';
import { verdictMark } from '../answer/verdict-mark.ts';
import { define } from '../define.ts';
import { answersStyles } from '../further/answers.styles.ts';
import type { Ask } from '../further/ask.ts';
import { cell, head } from '../further/table-parts.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { furtherWords, mishapNames, mishapWords as words } from '../words/en-further.ts';

/** @summary What usually goes wrong, each with its answer in words and sign, what is left, and how long the trip takes. */
export class Mishaps extends SpeakingElement {
  static override styles = [tokens, controls, answersStyles];

  @property({ attribute: false }) ask: Ask | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  #rows: readonly Contingency[] = [];

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('ask')) return;
    const standing = this.ask?.standing;
    this.#rows = standing ? contingencies(standing) : [];
  }

  override render() {
    const { ask } = this;
    if (!ask || this.#rows.length === 0) {
      return html`<p class="empty">${ask ? furtherWords.unusable : furtherWords.empty}</p>`;
    }
    return html`<table role="table" class="cards">
      <caption>${words.caption}</caption>
      <thead role="rowgroup">
        <tr role="row">
          ${head(words.mishap, false)} ${head(words.answer, false)} ${head(words.left)} ${head(words.time)}
        </tr>
      </thead>
      <tbody role="rowgroup">${this.#rows.map((row) => this.#row(row, ask.plan))}</tbody>
    </table>`;
  }

  #row(row: Contingency, plan: Plan) {
    const { measures: m } = this;
    const { mishap, verdict, speed, time, left } = row;
    const name = mishapNames[mishap](speed === undefined ? '' : m.show('speed', speed), plan.store);
    return html`<tr role="row" class=${verdict}>
      <th role="rowheader" scope="row">${name}</th>
      ${cell(
        words.answer,
        html`<span class="verdict">${verdictMark(verdict)} ${answerWords(row, plan.reserve)}</span>`,
        'text',
      )}
      ${cell(words.left, left === -Infinity ? words.noWay : html`${this.#left(left, plan)}${this.#worst(row, plan)}`)}
      ${cell(words.time, m.time(time))}
    </tr>`;
  }

  #left(left: number, { store }: Plan): string {
    const figure = this.measures.show('amount', Math.abs(left), store);
    return left < 0 ? words.short(figure) : figure;
  }

  #worst({ leftAtWorst }: Contingency, plan: Plan) {
    if (!Number.isFinite(leftAtWorst)) return nothing;
    return html`<span class="sub">${words.worst(this.#left(leftAtWorst, plan))}</span>`;
  }
}

function answerWords({ verdict, left }: Contingency, reserve: number): string {
  if (verdict !== 'marginal') return words[verdict];
  return left < reserve ? words.touched : words.unsure;
}

define('homeleg-mishaps', Mishaps);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-mishaps': Mishaps;
  }
}
