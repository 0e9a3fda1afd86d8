import { html, nothing } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { Plan } from '../../core/trip/shapes.ts';
import { OwnWidth } from '../curve-plot/own-width.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { barDrawing } from './bar-drawing.ts';
import { swatch } from './bar-swatch.ts';
import { type BarTexts, barTexts } from './bar-texts.ts';
import { fuelBarStyles } from './fuel-bar.styles.ts';
import { fuelBarWords as words } from './words.ts';

/** px of scale that one tick and its figure may have to themselves. */
const TICK_ROOM = 64;

/**
 * @summary The fuel or charge as a bar from full to empty: what each leg takes, what is left at home, the reserve.
 * @cssprop --homeleg-out - legs out
 * @cssprop --homeleg-home - legs home
 */
export class FuelBar extends SpeakingElement {
  static override styles = [tokens, controls, fuelBarStyles];

  @property({ attribute: false }) plan: Plan | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;
  /** Part of a full tank or battery that cannot be used, kg or J; undefined: not told. */
  @property({ attribute: false }) unusable: number | undefined;

  /** Hundreds of rows nobody looks at would slow every change. */
  @state() private tableOpen = false;

  readonly #own = new OwnWidth(this);

  override render() {
    const { plan } = this;
    if (!plan) return html`<div class="empty">${words.empty}</div>`;
    const { width, fontSize } = this.#own;
    const texts = barTexts(plan, this.measures, this.unusable, Math.max(3, Math.floor(width / TICK_ROOM)));
    return html`
      <figure>
        <div class="bar">
          ${width > 0 ? barDrawing(plan, texts, { width, fontSize }, this.unusable) : nothing}
        </div>
        <figcaption>${this.#legend(texts)}</figcaption>
      </figure>
      <details @toggle=${this.#tableToggled}>
        <summary>${words.table}</summary>
        ${this.tableOpen ? this.#table(plan) : nothing}
      </details>
    `;
  }

  #tableToggled(event: Event): void {
    this.tableOpen = (event.currentTarget as HTMLDetailsElement).open;
  }

  #legend({ legend }: BarTexts) {
    return html`<dl>
      ${legend.map(
        ({ kind, term, figure, band }) => html`<div class="line-of-${kind}">
          <dt>${swatch(kind)}${term}</dt>
          <dd>${figure}${band ? html`<span class="hint">${band}</span>` : nothing}</dd>
        </div>`,
      )}
    </dl>`;
  }

  #table(plan: Plan) {
    const show = (amount: number) => this.measures.show('amount', amount, plan.store);
    return html`<div class="scroll" tabindex="0" role="group" aria-label=${words.table}>
      <table>
        <thead>
          <tr>
            <th scope="col">${words.leg}</th>
            <th scope="col" class="figure">${words.use}</th>
            <th scope="col" class="figure">${words.leftAfter}</th>
            <th scope="col" class="figure">${words.likelyLeft}</th>
          </tr>
        </thead>
        <tbody>
          ${plan.legs.map(
            (leg) => html`<tr>
              <th scope="row">${leg.leg + 1} ${leg.part === 'home' ? words.partHome : words.partOut}</th>
              <td class="figure">${show(leg.use)}</td>
              <td class="figure">${show(leg.left.median)}</td>
              <td class="figure">${this.measures.band('amount', leg.left, plan.store)}</td>
            </tr>`,
          )}
        </tbody>
      </table>
    </div>`;
  }
}

define('homeleg-fuel-bar', FuelBar);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-fuel-bar': FuelBar;
  }
}
