import { html, nothing } from 'lit';
import { property } from 'lit/decorators.js';
import { verdictMark } from '../answer/verdict-mark.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import type { PassageSheet } from './passage-sheet.ts';
import { sheetPaperStyles } from './sheet-paper.styles.ts';

/** Points in one column at most. */
const ONE_COLUMN = 10;

/** @summary A passage plan as it goes on paper: one page where the points allow it. */
export class SheetPaper extends SpeakingElement {
  static override styles = [tokens, controls, sheetPaperStyles];

  @property({ attribute: false }) sheet: PassageSheet | undefined;
  /** The points stand elsewhere on the same paper. */
  @property({ type: Boolean, attribute: 'without-points' }) withoutPoints = false;

  override render() {
    const { sheet } = this;
    if (!sheet) return nothing;
    const [answer, ...rows] = sheet.rows;
    return html`<article>
      <h4>${sheet.title}</h4>
      <p class="answer ${sheet.verdict}">${verdictMark(sheet.verdict)} <strong>${answer?.text}</strong></p>
      <dl>
        ${rows.map(({ label, text }) => html`<div><dt>${label}</dt><dd>${text}</dd></div>`)}
      </dl>
      ${this.withoutPoints ? nothing : this.#points(sheet.points)}
      <section class="overdue">
        <h5>${sheet.overdue}</h5>
        <ol>${sheet.steps.map((step) => html`<li>${step}</li>`)}</ol>
      </section>
      <p class="cautions">${sheet.cautions.join(' ')}</p>
    </article>`;
  }

  #points({ caption, heads, rows }: PassageSheet['points']) {
    if (rows.length === 0) return nothing;
    // Side by side, so that a day's points fit on one page.
    const half = rows.length > ONE_COLUMN ? Math.ceil(rows.length / 2) : rows.length;
    return html`<section>
      <p class="hint">${caption}</p>
      <div class="halves scroll" tabindex="0" role="group" aria-label=${caption}>${[rows.slice(0, half), rows.slice(half)].map((some) => this.#table(heads, some))}</div>
    </section>`;
  }

  #table(heads: readonly string[], rows: readonly (readonly string[])[]) {
    if (rows.length === 0) return nothing;
    return html`<table>
      <thead>
        <tr>${heads.map((head, i) => html`<th scope="col" class=${i > 0 ? 'figure' : ''}>${head}</th>`)}</tr>
      </thead>
      <tbody>
        ${rows.map(
          ([name, ...figures]) => html`<tr>
            <th scope="row">${name}</th>
            ${figures.map((figure) => html`<td class="figure">${figure}</td>`)}
          </tr>`,
        )}
      </tbody>
    </table>`;
  }
}

define('homeleg-sheet-paper', SheetPaper);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-sheet-paper': SheetPaper;
  }
}
