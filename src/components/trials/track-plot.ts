import { html, nothing, type PropertyValues, svg } from 'lit';
import { property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { OwnWidth } from '../curve-plot/own-width.ts';
import type { Span } from '../curve-plot/scale.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { trackWords as words } from '../words/en-trials.ts';
import { plotStyles } from './plot.styles.ts';
import { spanOf, type TrackPicture, trackPicture } from './track-picture.ts';
import { trackPlotStyles } from './track-plot.styles.ts';
import { clockOf, type Found, type OpenTrack } from './track-work.ts';

type End = 'start' | 'end';
/** An end of a stretch moved; `live` while it is still under the finger. */
export type EndMoved = CustomEvent<{ id: string; start: number; end: number; live: boolean }>;
export type StretchWanted = CustomEvent<{ start: number; end: number }>;

/** s by which keys move an end; with Shift, and page keys. */
const STEP = 1;
const STRIDE = 10;
/** No stretch is shorter, s. */
const SHORTEST = 15;
/** Nor is less shown at once, s. */
const CLOSEST = 60;

/**
 * @summary Speed over ground against time with the stretches on it; their ends are dragged or moved by keys.
 * @fires end-moved - an end of a stretch was moved
 * @fires stretch-wanted - the part in view is to be a stretch
 */
export class TrackPlot extends SpeakingElement {
  static override styles = [tokens, controls, plotStyles, trackPlotStyles];

  @property({ attribute: false }) open: OpenTrack | undefined;
  @property({ attribute: false }) found: readonly Found[] = [];
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  /** s since 1970; absent: all of it. */
  @state() private view: Span | undefined;

  readonly #own = new OwnWidth(this);
  #picture: TrackPicture | undefined;
  #held: { id: string; end: End } | undefined;

  /** Shows a stretch with some time before and after it. */
  show(start: number, end: number): void {
    const spare = Math.max(end - start, CLOSEST) / 2;
    this.#look([start - spare, end + spare]);
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('open')) this.view = undefined;
  }

  override render() {
    const { open, measures } = this;
    if (!open) return nothing;
    const { width, fontSize } = this.#own;
    const font = Math.min(Math.max(fontSize * 0.8, 11.5), 26);
    const height = Math.max(Math.min(width * 0.36, 300), 13 * font);
    const view = this.view ?? spanOf(open);
    const speedUnit = measures.toSi('speed', 1);
    this.#picture = width > 0 ? trackPicture(open, view, { width, height, font, speedUnit }) : undefined;
    return html`<figure>
      <p class="title">${words.plotTitle(open.track.name)}</p>
      <div class="plot">${this.#picture ? this.#drawing(this.#picture, { width, height, font }) : nothing}</div>
      <figcaption>
        <div class="tools" role="group" aria-label=${words.view}>
          ${this.#tool(words.closer, '+', () => this.#zoom(0.5))}
          ${this.#tool(words.wider, '\u2212', () => this.#zoom(2))}
          ${this.#tool(words.earlier, '\u2190', () => this.#shift(-0.5))}
          ${this.#tool(words.later, '\u2192', () => this.#shift(0.5))}
          <button type="button" ?disabled=${!this.view} @click=${() => this.#look(undefined)}>${words.whole}</button>
          <button type="button" @click=${this.#stretchWanted}>${words.addStretch}</button>
        </div>
        <p class="hint" id="handles">${words.handlesHint}</p>
      </figcaption>
    </figure>`;
  }

  #tool(label: string, sign: string, pressed: () => void) {
    return html`<button type="button" class="icon" aria-label=${label} title=${label} @click=${pressed}>${sign}</button>`;
  }

  #drawing(picture: TrackPicture, { width, height, font }: { width: number; height: number; font: number }) {
    const { box } = picture;
    const number = new Intl.NumberFormat(this.measures.lang, { maximumFractionDigits: 1 });
    const inner = { width: Math.max(box.right - box.left, 1), height: Math.max(box.bottom - box.top, 1) };
    return html`<svg viewBox="0 0 ${width} ${height}" height=${height} role="group" aria-label=${words.plot}>
      <g aria-hidden="true">
        ${picture.yTicks.map(
          ({ at, value }) => svg`<path class="grid" d="M${box.left} ${at}H${box.right}" /><text
            class="scale end" font-size=${font} x=${box.left - 6} y=${at + font * 0.35}>${number.format(value)}</text>`,
        )}
        <text class="scale start" font-size=${font} x="0" y=${font * 0.9}>${this.measures.unit('speed')}</text>
        <path class="axis" d="M${box.left} ${box.bottom}H${box.right}" />
        ${picture.xTicks.map(
          ({ at, text }) => svg`<path class="axis" d="M${at} ${box.bottom}v5" /><text class="scale" font-size=${font}
            x=${at} y=${box.bottom + 8 + font}>${text}</text>`,
        )}
      </g>
      <svg class="inner" x=${box.left} y="0" width=${inner.width} height=${box.bottom}
        viewBox="${box.left} 0 ${inner.width} ${box.bottom}">
        <g aria-hidden="true">
          ${this.found.map(({ stretch, run }, i) => this.#shade(picture, stretch, run, i, font))}
          ${picture.lines.map((line) => svg`<path class="speed" d=${line} />`)}
        </g>
      </svg>
      ${repeat(
        this.found,
        ({ id }) => id,
        (one, i) => svg`${this.#handle(picture, one, i, 'start')}${this.#handle(picture, one, i, 'end')}`,
      )}
    </svg>`;
  }

  #shade(picture: TrackPicture, { start, end, speed }: Found['stretch'], run: string, i: number, font: number) {
    const { x, y, box } = picture;
    const width = Math.max(x(end) - x(start), 1);
    return svg`<rect class="stretch ${run ? '' : 'alone'}" x=${x(start)} y=${box.top} width=${width} height=${box.bottom - box.top} />
      <path class="mean" d="M${x(start)} ${y(speed)}H${x(end)}" />
      ${
        width > font * 1.6
          ? svg`<text class="stretch-name" font-size=${font} x=${x(start) + width / 2} y=${box.top + font * 1.1}>${i + 1}${run}</text>`
          : nothing
      }`;
  }

  #handle(picture: TrackPicture, { id, stretch }: Found, i: number, end: End) {
    const { x, box } = picture;
    const at = x(stretch[end]);
    if (at < box.left - 1 || at > box.right + 1) return nothing;
    const side = end === 'start' ? -1 : 1;
    const speed = this.measures.show('speed', stretch.speed);
    return svg`<g class="handle" role="slider" tabindex="0" transform="translate(${at} 0)"
      aria-label=${words.end(i + 1, end)} aria-describedby="handles" aria-orientation="horizontal"
      aria-valuemin=${Math.round(spanOf(this.open!)[0])} aria-valuemax=${Math.round(spanOf(this.open!)[1])}
      aria-valuenow=${Math.round(stretch[end])} aria-valuetext=${words.endSaid(clockOf(stretch[end]), speed)}
      @keydown=${(event: KeyboardEvent) => this.#keyed(event, id, end)}
      @pointerdown=${(event: PointerEvent) => this.#taken(event, id, end)}
      @pointermove=${this.#dragged} @pointerup=${this.#dropped} @pointercancel=${this.#dropped}>
      <rect class="grip" x=${side < 0 ? -22 : -6} y=${box.top} width="28" height=${box.bottom - box.top} />
      <path class="edge" d="M0 ${box.top}V${box.bottom}" />
      <path class="knob" d="M0 ${box.bottom - 26}h${side * 9}v22h${-side * 9}z" />
    </g>`;
  }

  #taken(event: PointerEvent, id: string, end: End): void {
    if (event.button !== 0) return;
    event.preventDefault();
    const handle = event.currentTarget as SVGElement;
    handle.setPointerCapture(event.pointerId);
    handle.focus({ preventScroll: true });
    this.#held = { id, end };
  }

  #dragged(event: PointerEvent): void {
    if (!this.#held || !this.#picture) return;
    const drawing = this.renderRoot.querySelector('.plot > svg')!.getBoundingClientRect();
    this.#move(this.#held.id, this.#held.end, this.#picture.timeAt(event.clientX - drawing.left), true);
  }

  #dropped(): void {
    const held = this.#held;
    this.#held = undefined;
    const one = held && this.found.find(({ id }) => id === held.id);
    if (one && held) this.#move(one.id, held.end, one.stretch[held.end], false);
  }

  #keyed(event: KeyboardEvent, id: string, end: End): void {
    const one = this.found.find((found) => found.id === id);
    const by: Record<string, number> = {
      ArrowLeft: -STEP,
      ArrowDown: -STEP,
      ArrowRight: STEP,
      ArrowUp: STEP,
      PageDown: -STRIDE,
      PageUp: STRIDE,
    };
    const step = by[event.key];
    if (!one || step === undefined) return;
    event.preventDefault();
    this.#move(id, end, one.stretch[end] + step * (event.shiftKey ? STRIDE : 1), false);
  }

  #move(id: string, end: End, time: number, live: boolean): void {
    const one = this.found.find((found) => found.id === id);
    if (!one || !this.open) return;
    const [first, last] = spanOf(this.open);
    const { stretch } = one;
    const start = end === 'start' ? Math.max(Math.min(time, stretch.end - SHORTEST), first) : stretch.start;
    const finish = end === 'end' ? Math.min(Math.max(time, stretch.start + SHORTEST), last) : stretch.end;
    const detail = { id, start, end: finish, live };
    this.dispatchEvent(new CustomEvent('end-moved', { detail, bubbles: true }) satisfies EndMoved);
  }

  /** The middle third of what is in view. */
  #stretchWanted(): void {
    if (!this.open) return;
    const [from, to] = this.view ?? spanOf(this.open);
    const third = (to - from) / 3;
    const detail = { start: from + third, end: to - third };
    this.dispatchEvent(new CustomEvent('stretch-wanted', { detail, bubbles: true }) satisfies StretchWanted);
  }

  #zoom(by: number): void {
    if (!this.open) return;
    const [from, to] = this.view ?? spanOf(this.open);
    const half = Math.max(((to - from) / 2) * by, CLOSEST / 2);
    this.#look([(from + to) / 2 - half, (from + to) / 2 + half]);
  }

  #shift(by: number): void {
    if (!this.open) return;
    const [from, to] = this.view ?? spanOf(this.open);
    this.#look([from + by * (to - from), to + by * (to - from)]);
  }

  /** Kept inside the track; all of it is no view of its own. */
  #look(view: Span | undefined): void {
    if (!this.open || !view) {
      this.view = undefined;
      return;
    }
    const [first, last] = spanOf(this.open);
    const wide = Math.min(view[1] - view[0], last - first);
    const from = Math.min(Math.max(view[0], first), last - wide);
    this.view = wide >= last - first ? undefined : [from, from + wide];
  }
}

define('homeleg-track-plot', TrackPlot);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-track-plot': TrackPlot;
  }
}
