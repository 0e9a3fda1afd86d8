import { html, nothing, svg } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { Fit } from '../../core/trials/fit-shapes.ts';
import type { Trials } from '../../core/trials/shapes.ts';
import { OwnWidth } from '../curve-plot/own-width.ts';
import { useUnit } from '../curve-plot/plot-texts.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { numberText } from '../units/number-text.ts';
import { fitWords as words } from '../words/en-trials.ts';
import { unitWords } from '../words/en-units.ts';
import { type BandPicture, bandPicture, type RunMark, runMarks } from './band-picture.ts';
import { type BeforeAfter, halfWidth, nearest, type Shown, tellingSpeeds } from './fit-curves.ts';
import { plotStyles } from './plot.styles.ts';
import { shareText } from './texts.ts';

/**
 * @summary The band of the consumption curve without and with the runs, and the runs on it.
 */
export class BandPlot extends SpeakingElement {
  static override styles = [tokens, controls, plotStyles];

  @property({ attribute: false }) trials: Trials | undefined;
  @property({ attribute: false }) fit: Fit | undefined;
  @property({ attribute: false }) curves: BeforeAfter | undefined;
  @property({ attribute: false }) shown: Shown | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  @state() private tableOpen = false;

  readonly #own = new OwnWidth(this);

  override render() {
    const { curves, trials, shown, measures } = this;
    if (!curves || !trials || !shown) return nothing;
    const marks = runMarks(trials, this.fit, shown);
    const unit = useUnit(curves.before, 'hour', measures);
    const { width, fontSize } = this.#own;
    const speedUnit = measures.toSi('speed', 1);
    const picture =
      width > 0 ? bandPicture(curves, marks, { width, fontSize, speedUnit, flowUnit: unit.si }) : undefined;
    return html`<figure>
        <p class="title">${words.bandTitle(unit.sign)}</p>
        <div class="plot">${picture ? this.#drawing(picture, unit.sign) : nothing}</div>
        <figcaption>${this.#key(marks)}<p class="hint">${words.bandNote}</p></figcaption>
      </figure>
      <details @toggle=${this.#tableToggled}>
        <summary>${words.table}</summary>
        ${this.tableOpen ? this.#table(curves) : nothing}
      </details>`;
  }

  /** What the picture tells, in words. */
  #said(curves: BeforeAfter): string {
    return tellingSpeeds(curves, this.fit?.tried)
      .map((speed) => {
        const { store } = curves.before;
        const flow = (band: { low: number; high: number }) =>
          unitWords.fromTo(this.measures.flow(band.low, store), this.measures.flow(band.high, store));
        const before = nearest(curves.before, speed);
        const after = curves.after && nearest(curves.after, speed);
        return words.bandAt(
          this.measures.show('speed', before.speed),
          flow(before.flow),
          after ? flow(after.flow) : '\u2013',
        );
      })
      .join(' ');
  }

  #drawing(picture: BandPicture, flowUnit: string) {
    const { width, height, font, box } = picture;
    const number = (value: number) => numberText(this.measures.lang, value);
    const last = picture.xTicks.at(-1);
    return html`<svg viewBox="0 0 ${width} ${height}" height=${height} role="img" aria-labelledby="title desc">
      <title id="title">${words.bandTitle(flowUnit)}</title>
      <desc id="desc">${this.curves ? this.#said(this.curves) : ''}</desc>
      <g aria-hidden="true">
        ${picture.yTicks.map(
          ({ at, value }) => svg`<path class="grid" d="M${box.left} ${at}H${box.right}" /><text
            class="scale end" font-size=${font} x=${box.left - 6} y=${at + font * 0.35}>${number(value)}</text>`,
        )}
        <text class="scale start" font-size=${font} x="0" y=${font * 0.9}>${flowUnit}</text>
        <path class="band before" d=${picture.before.band} />
        ${picture.after ? svg`<path class="band after" d=${picture.after.band} />` : nothing}
        <path class="line before" d=${picture.before.line} />
        ${picture.after ? svg`<path class="line after" d=${picture.after.line} />` : nothing}
        <path class="axis" d="M${box.left} ${box.bottom}H${box.right}" />
        ${picture.xTicks.map(
          (tick) => svg`<path class="axis" d="M${tick.at} ${box.bottom}v5" /><text class="scale" font-size=${font}
            x=${Math.min(tick.at, box.right - (tick === last ? font : 0))} y=${box.bottom + 8 + font}>${number(
              tick.value,
            )}${tick === last ? `\u00a0${this.measures.unit('speed')}` : ''}</text>`,
        )}
        ${picture.marks.map((mark) => runMarkDrawing(mark, mark.x, mark.y, font))}
      </g>
    </svg>`;
  }

  #key(marks: readonly RunMark[]) {
    const has = (kind: RunMark['kind']) => marks.some((mark) => mark.kind === kind);
    const swatch = (name: string) =>
      html`<svg class="swatch" viewBox="0 0 28 16" width="28" height="16" aria-hidden="true">
        <rect class="band ${name}" x="0" y="2" width="28" height="12" /><path class="line ${name}" d="M0 8H28" />
      </svg>`;
    const dot = (kind: RunMark['kind']) =>
      html`<svg class="swatch" viewBox="0 0 28 16" width="28" height="16" aria-hidden="true">
        ${runMarkShape(kind, 14, 8)}
      </svg>`;
    return html`<ul class="key">
      <li>${swatch('before')} ${words.before}</li>
      ${this.curves?.after ? html`<li>${swatch('after')} ${words.after}</li>` : nothing}
      ${has('near') ? html`<li>${dot('near')} ${words.pointsNear}</li>` : nothing}
      ${has('far') ? html`<li>${dot('far')} ${words.pointsFar}</li>` : nothing}
      ${has('aside') ? html`<li>${dot('aside')} ${words.pointsAside}</li>` : nothing}
    </ul>`;
  }

  #table({ before, after }: BeforeAfter) {
    const { measures } = this;
    const { store } = before;
    const band = ({ low, high }: { low: number; high: number }) =>
      unitWords.fromTo(measures.flow(low, store), measures.flow(high, store));
    return html`<div class="scroll" tabindex="0" role="group" aria-label=${words.table}>
      <table>
        <thead>
          <tr>
            <th scope="col">${words.speed}</th>
            <th scope="col" class="figure">${words.unmeasured}</th>
            ${after ? html`<th scope="col" class="figure">${words.measured}</th>` : nothing}
          </tr>
        </thead>
        <tbody>
          ${before.points
            .filter((_, i) => i % 2 === 1)
            .map((point) => {
              const now = after && nearest(after, point.speed);
              return html`<tr>
                <th scope="row">${measures.show('speed', point.speed)}</th>
                <td class="figure">${band(point.flow)}, \u00b1${shareText(halfWidth(point.flow), measures)}</td>
                ${now ? html`<td class="figure">${band(now.flow)}, \u00b1${shareText(halfWidth(now.flow), measures)}</td>` : nothing}
              </tr>`;
            })}
        </tbody>
      </table>
    </div>`;
  }

  #tableToggled(event: Event): void {
    this.tableOpen = (event.currentTarget as HTMLDetailsElement).open;
  }
}

/** Filled at the load shown, hollow at another, crossed where it does not count. */
function runMarkShape(kind: RunMark['kind'], x: number, y: number) {
  return kind === 'aside'
    ? svg`<path class="mark aside" d="M${x - 5} ${y - 5}L${x + 5} ${y + 5}M${x + 5} ${y - 5}L${x - 5} ${y + 5}" />`
    : svg`<circle class="mark ${kind}" cx=${x} cy=${y} r="5.5" />`;
}

function runMarkDrawing({ kind, number }: RunMark, x: number, y: number, font: number) {
  return svg`${runMarkShape(kind, x, y)}
    <text class="mark-name start" font-size=${font} x=${x + 8} y=${y - 5}>${number}</text>`;
}

define('homeleg-band-plot', BandPlot);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-band-plot': BandPlot;
  }
}
