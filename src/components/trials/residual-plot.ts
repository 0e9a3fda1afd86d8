import { html, nothing, svg } from 'lit';
import { property } from 'lit/decorators.js';
import type { Fit, RunFound } from '../../core/trials/fit-shapes.ts';
import type { Trials } from '../../core/trials/shapes.ts';
import { OwnWidth } from '../curve-plot/own-width.ts';
import { linear } from '../curve-plot/scale.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { runWords, fitWords as words } from '../words/en-trials.ts';
import { plotStyles } from './plot.styles.ts';
import { rowName, shareText } from './texts.ts';

type ReadingName = 'consumed' | 'rpm' | 'power';
const READINGS: readonly ReadingName[] = ['consumed', 'rpm', 'power'];
/** Drawn that far from the middle, in expected errors; further out stands at the edge. */
const WIDEST = 4;
/** 8 of 10 lie inside, normal law. */
const USUAL = 1.2816;

/**
 * @summary How far every reading lies from the fitted curve, as a picture and as a table.
 */
export class ResidualPlot extends SpeakingElement {
  static override styles = [tokens, controls, plotStyles];

  @property({ attribute: false }) trials: Trials | undefined;
  @property({ attribute: false }) fit: Fit | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  readonly #own = new OwnWidth(this);

  override render() {
    const { fit, trials } = this;
    if (!fit || !trials) return nothing;
    const rows = fit.runs.filter((run) => READINGS.some((name) => run[name]));
    if (rows.length === 0) return nothing;
    return html`<figure>
        <p class="title">${words.residuals}</p>
        <div class="plot rows">${this.#own.width > 0 ? this.#drawing(trials, rows) : nothing}</div>
        <figcaption>
          <ul class="key">
            ${READINGS.filter((name) => rows.some((run) => run[name])).map(
              (name) => html`<li>
                <svg class="swatch" viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">${shape(name, 8, 8, '')}</svg>
                ${words.readings[name]}
              </li>`,
            )}
          </ul>
          <p class="hint">${words.residualsNote}</p>
        </figcaption>
      </figure>
      <details>
        <summary>${words.table}</summary>
        <div class="scroll" tabindex="0" role="group" aria-label=${words.table}>
          <table>
            <thead>
              <tr>
                <th scope="col">${runWords.number}</th>
                ${READINGS.map((name) => html`<th scope="col">${words.readings[name]}</th>`)}
              </tr>
            </thead>
            <tbody>
              ${rows.map(
                (run) => html`<tr>
                  <th scope="row">${rowName(trials, run)}</th>
                  ${READINGS.map((name) => html`<td>${this.#apart(run, name)}</td>`)}
                </tr>`,
              )}
            </tbody>
          </table>
        </div>
      </details>`;
  }

  /** "4 % more than the curve, 0.8 times the expected error". */
  #apart(run: RunFound, name: ReadingName) {
    const held = run[name];
    if (!held) return '\u2013';
    const { lang } = this.measures;
    const share = held.measured / held.fitted - 1;
    const by = shareText(share, this.measures);
    const text = Math.abs(share) < 0.0005 ? words.same : share > 0 ? words.more(by) : words.less(by);
    const times = new Intl.NumberFormat(lang, { maximumFractionDigits: 1 }).format(Math.abs(held.standard));
    return html`${text}<br /><span class="hint">${words.expectedErrors(times)}</span>`;
  }

  #drawing(trials: Trials, rows: readonly RunFound[]) {
    const { width, fontSize } = this.#own;
    const font = Math.min(Math.max(fontSize * 0.8, 11.5), 26);
    const step = font * 1.9;
    const top = font * 0.5;
    const bottom = top + rows.length * step;
    const left = font * 6;
    const x = linear([-WIDEST, WIDEST], [left, width - 10]);
    const at = (standard: number) => x(Math.min(Math.max(standard, -WIDEST), WIDEST));
    return html`<svg viewBox="0 0 ${width} ${bottom + font * 1.8}" role="img" aria-labelledby="residuals">
      <title id="residuals">${words.residuals}</title>
      <g aria-hidden="true">
        <rect class="usual" x=${x(-USUAL)} y=${top} width=${x(USUAL) - x(-USUAL)} height=${bottom - top} />
        <path class="zero" d="M${x(0)} ${top}V${bottom}" />
        ${rows.map((run, i) => {
          const y = top + (i + 0.5) * step;
          return svg`<path class="grid" d="M${left} ${y}H${width - 10}" />
            <text class="start" font-size=${font} x="0" y=${y + font * 0.35}>${rowName(trials, run)}</text>
            ${READINGS.map((name) => {
              const held = run[name];
              return held ? shape(name, at(held.standard), y, run.setAside ? 'aside' : '') : nothing;
            })}`;
        })}
        ${[-4, -2, 0, 2, 4].map(
          (value) =>
            svg`<text class="scale" font-size=${font} x=${x(value)} y=${bottom + font * 1.3}>${
              value < 0 ? `\u2212${-value}` : value
            }</text>`,
        )}
      </g>
    </svg>`;
  }
}

/** A disc, a triangle and a square, so that colour alone tells nothing. */
function shape(name: ReadingName, x: number, y: number, kind: string) {
  if (name === 'consumed') return svg`<circle class="mark ${kind || 'near'}" cx=${x} cy=${y} r="5.5" />`;
  if (name === 'rpm') return svg`<path class="mark ${kind || 'far'}" d="M${x} ${y - 6}L${x + 6} ${y + 5}H${x - 6}Z" />`;
  return svg`<rect class="mark ${kind || 'far'}" x=${x - 5} y=${y - 5} width="10" height="10" />`;
}

define('homeleg-residual-plot', ResidualPlot);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-residual-plot': ResidualPlot;
  }
}
