import { html, nothing, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { Curve } from '../../core/curve/shapes.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { curvePlotStyles } from './curve-plot.styles.ts';
import { curveTable } from './curve-table.ts';
import { layOut } from './drawn.ts';
import { OwnWidth } from './own-width.ts';
import type { PlotMode, PlotPicture } from './picture.ts';
import { plotDrawing } from './plot-drawing.ts';
import type { SpeedLimit } from './plot-labels.ts';
import { curveFacts, readout } from './plot-texts.ts';
import { readAt } from './read-at.ts';
import { keyTarget } from './slider-keys.ts';
import { trimDrawing } from './trim-drawing.ts';
import { curveWords as words } from './words.ts';

/** Arrow keys move by this much of the shown unit. */
const STEP = 0.5;

/**
 * @summary What each speed takes: the curve with its band, hump and planing, the planned speed on it.
 */
export class CurvePlot extends SpeakingElement {
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

  /** Rows nobody looks at would slow every change. */
  @state() private tableOpen = false;

  readonly #own = new OwnWidth(this);
  #picture: PlotPicture | undefined;

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has('curve')) this.reading = undefined;
  }

  override render() {
    const { curve } = this;
    if (!curve || curve.points.length < 2) return html`<div class="empty">${words.empty}</div>`;
    const { width, fontSize } = this.#own;
    const drawn = width > 0 ? layOut(curve, this.measures, { ...this.#asked(), width, fontSize }) : undefined;
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
          ${drawn && this.withTrim ? trimDrawing(drawn) : nothing}
          ${drawn ? this.#reader(drawn.picture, at, said) : nothing}
        </div>
        <output for="reader">${said}</output>
        <figcaption>
          <ul class="facts">
            ${curveFacts(curve, this.measures).map((fact) => html`<li>${fact}</li>`)}
          </ul>
        </figcaption>
      </figure>
      <details @toggle=${this.#tableToggled}>
        <summary>${words.table}</summary>
        ${this.tableOpen ? curveTable(curve, this.measures) : nothing}
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

  #asked() {
    const { mode, plannedSpeed, limits, reading } = this;
    return { mode, plannedSpeed, limits, reading };
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

  #tableToggled(event: Event): void {
    this.tableOpen = (event.currentTarget as HTMLDetailsElement).open;
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

define('homeleg-curve-plot', CurvePlot);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-curve-plot': CurvePlot;
  }
}
