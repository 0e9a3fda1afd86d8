import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { Curve } from '../../core/curve/shapes.ts';
import { define } from '../define.ts';
import { textWidth } from '../fuel-bar/labels.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { regimeText } from '../words/en.ts';
import { curvePlotStyles } from './curve-plot.styles.ts';
import { OwnWidth } from './own-width.ts';
import { type PlotMode, type PlotPicture, plotPicture } from './picture.ts';
import { type Drawn, MARK_ROW, plotDrawing, trimDrawing } from './plot-drawing.ts';
import { marksOf, type SpeedLimit } from './plot-labels.ts';
import { curveFacts, readout, useUnit } from './plot-texts.ts';
import { readAt } from './read-at.ts';
import { words } from './words.ts';

/** Height over width, and between what it stays, px. */
const TALL = { share: 0.58, least: 264, most: 420 };
/** Arrow keys move by this much of the shown unit. */
const STEP = 0.5;

/**
 * @summary What each speed takes: the curve with its band, hump and planing, the planned speed on it.
 */
export class CurvePlot extends LitElement {
  static override styles = [tokens, controls, curvePlotStyles];

  @property({ attribute: false }) curve: Curve | undefined;
  /** Through the water, m/s. */
  @property({ attribute: false }) plannedSpeed: number | undefined;
  @property({ attribute: false }) limits: readonly SpeedLimit[] = [];
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  @state() private mode: PlotMode = 'distance';
  @state() private withTrim = false;
  /** m/s; undefined until somebody points or moves. */
  @state() private reading: number | undefined;

  readonly #own = new OwnWidth(this);
  #picture: PlotPicture | undefined;

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has('curve')) this.reading = undefined;
  }

  override render() {
    const { curve } = this;
    if (!curve || curve.points.length < 2) return html`<div class="empty">${words.empty}</div>`;
    const { width } = this.#own;
    const drawn = width > 0 ? this.#layOut(curve, width) : undefined;
    this.#picture = drawn?.picture;
    const at = this.reading ?? this.plannedSpeed ?? curve.bestDisplacement.speed;
    const point = readAt(curve, at);
    const said = point ? readout(point, curve, this.measures) : '';
    return html`
      <figure>
        <div class="head">
          <p>${words.title(this.mode, words.store[curve.store])}</p>
          ${this.#choices()}
        </div>
        <div class="plot">
          ${drawn ? plotDrawing(drawn) : nothing}
          ${drawn && this.withTrim ? trimDrawing(drawn, this.#trimTitle(curve), 5.5 * drawn.font) : nothing}
          ${drawn ? this.#reader(drawn.picture, at, said) : nothing}
        </div>
        <output for="reader">${said}</output>
        <figcaption>
          <ul class="facts">
            ${curveFacts(curve, this.measures).map((fact) => html`<li>${fact}</li>`)}
          </ul>
        </figcaption>
      </figure>
      <details>
        <summary>${words.table}</summary>
        ${this.#table(curve)}
      </details>
    `;
  }

  #choices() {
    const choice = (mode: PlotMode, label: string) =>
      html`<button type="button" aria-pressed=${this.mode === mode} @click=${() => this.#modeChosen(mode)}>${label}</button>`;
    return html`<div class="choices" role="group" aria-label=${words.shown}>
      ${choice('distance', words.perDistance)} ${choice('hour', words.perHour)}
      <button type="button" aria-pressed=${this.withTrim} @click=${this.#trimToggled}>${words.trim}</button>
    </div>`;
  }

  #layOut(curve: Curve, width: number): Drawn {
    const { measures, mode, plannedSpeed } = this;
    const font = Math.min(Math.max(this.#own.fontSize * 0.8, 11.5), 22);
    const unit = useUnit(curve, mode, measures);
    const height = Math.min(Math.max(width * TALL.share, TALL.least), TALL.most);
    const format = new Intl.NumberFormat(measures.lang, { maximumFractionDigits: 3 });
    const marks = marksOf(curve, this.limits, measures);
    const rows = width < 36 * font || marks.length > 4 ? 2 : 1;
    const left = textWidth('0.00', font) + 10;
    const size = { width, height, left, bottom: font * 2, top: font * 2, foot: rows * font * MARK_ROW + 4 };
    const marked = [plannedSpeed ?? 0, ...this.limits.map((limit) => limit.speed)];
    const units = { speed: measures.toSi('speed', 1), use: unit.si };
    const planned = plannedSpeed === undefined ? undefined : readAt(curve, plannedSpeed);
    const use =
      planned &&
      (mode === 'distance'
        ? measures.perDistance(planned.perMetre.median, curve.store)
        : measures.flow(planned.flow.median, curve.store));
    return {
      curve,
      mode,
      picture: plotPicture(curve, mode, size, units, marked),
      width,
      height,
      font,
      speedUnit: measures.unit('speed'),
      useUnit: unit.sign,
      marks,
      planned: planned && { speed: planned.speed, text: `${measures.show('speed', planned.speed)}, ${use}` },
      reading: this.reading,
      title: words.title(mode, words.store[curve.store]),
      description: curveFacts(curve, measures).join(' '),
      number: (value) => format.format(value),
    };
  }

  #trimTitle({ points }: Curve): string {
    const show = (deg: number) => this.measures.show('angle', deg);
    const trims = points.map((point) => point.trimDeg);
    return words.trimTitle(show(Math.min(...trims)), show(Math.max(...trims)));
  }

  #reader(picture: PlotPicture, at: number, said: string) {
    const shown = (si: number) => Math.round(this.measures.fromSi('speed', si) * 10) / 10;
    return html`<div
      id="reader"
      class="reader"
      role="slider"
      tabindex="0"
      title=${words.readerHelp}
      aria-label=${words.reader}
      aria-valuemin="0"
      aria-valuemax=${shown(picture.fastest)}
      aria-valuenow=${shown(at)}
      aria-valuetext=${said}
      @pointermove=${this.#pointed}
      @pointerdown=${this.#pointed}
      @keydown=${this.#keyed}
    ></div>`;
  }

  #table(curve: Curve) {
    const { measures } = this;
    const { store } = curve;
    const per = (si: number) => measures.perDistance(si, store);
    const number = new Intl.NumberFormat(measures.lang, { maximumFractionDigits: 0 });
    return html`<div class="scroll" tabindex="0" role="group" aria-label=${words.table}>
      <table>
        <thead>
          <tr>
            <th scope="col">${words.speed}</th>
            <th scope="col" class="figure">${words.use}</th>
            <th scope="col" class="figure">${words.likely}</th>
            <th scope="col" class="figure">${words.flow}</th>
            <th scope="col" class="figure">${words.rpm}</th>
            <th scope="col" class="figure">${words.trim}</th>
            <th scope="col">${words.regime}</th>
          </tr>
        </thead>
        <tbody>
          ${curve.points.map(
            (point) => html`<tr>
              <th scope="row">${measures.show('speed', point.speed)}</th>
              <td class="figure">${per(point.perMetre.median)}</td>
              <td class="figure">${per(point.perMetre.low)} to ${per(point.perMetre.high)}</td>
              <td class="figure">${measures.flow(point.flow.median, store)}</td>
              <td class="figure">${number.format(point.rpm)}</td>
              <td class="figure">${measures.show('angle', point.trimDeg)}</td>
              <td>${point.held ? regimeText(point.regime) : words.notHeld}</td>
            </tr>`,
          )}
        </tbody>
      </table>
    </div>`;
  }

  #modeChosen(mode: PlotMode): void {
    this.mode = mode;
  }

  #trimToggled(): void {
    this.withTrim = !this.withTrim;
  }

  #pointed(event: PointerEvent): void {
    const target = event.currentTarget as HTMLElement;
    this.reading = this.#picture?.speedAt(event.clientX - target.getBoundingClientRect().left);
  }

  #keyed(event: KeyboardEvent): void {
    const picture = this.#picture;
    const { curve } = this;
    if (!picture || !curve) return;
    const unit = this.measures.toSi('speed', STEP);
    const now = this.reading ?? this.plannedSpeed ?? curve.bestDisplacement.speed;
    const to = keyTarget(event.key, Math.round(now / unit), Math.floor(picture.fastest / unit));
    if (to === undefined) return;
    event.preventDefault();
    const slowest = curve.points[0]?.speed ?? 0;
    this.reading = Math.min(Math.max(to * unit, slowest), picture.fastest);
  }
}

/** Steps from the slow end after a key of a slider; undefined for keys that are none. */
function keyTarget(key: string, now: number, last: number): number | undefined {
  switch (key) {
    case 'ArrowRight':
    case 'ArrowUp':
      return now + 1;
    case 'ArrowLeft':
    case 'ArrowDown':
      return now - 1;
    case 'PageUp':
      return now + 5;
    case 'PageDown':
      return now - 5;
    case 'Home':
      return 0;
    case 'End':
      return last;
    default:
      return undefined;
  }
}

define('homeleg-curve-plot', CurvePlot);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-curve-plot': CurvePlot;
  }
}
