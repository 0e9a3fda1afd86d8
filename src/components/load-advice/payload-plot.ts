import { html, nothing, type PropertyValues, svg } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { Waters } from '../../core/route/waters.ts';
import {
  type PayloadPoint,
  payloadOverLength,
  payloadOverSpeed,
  payloadStretches,
  tripLength,
} from '../../core/trip/payload-curve.ts';
import type { Payload, Trip } from '../../core/trip/shapes.ts';
import { tripCurve } from '../../core/trip/trip-curve.ts';
import { OwnWidth } from '../curve-plot/own-width.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import '../field/choice-field.ts';
import type { ChoiceMade } from '../field/choice-field.ts';
import { textWidth } from '../fuel-bar/labels.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { payloadWords as words } from '../words/en-load.ts';
import { payloadText } from '../words/en-payload.ts';
import { payloadPlotStyles } from './payload-plot.styles.ts';
import { type PayloadPicture, payloadPicture } from './payload-shape.ts';
import { Unhurried } from './unhurried.ts';

type Mode = 'length' | 'speed';

interface Worked {
  readonly mode: Mode;
  readonly points: readonly PayloadPoint[];
  /** Where this trip stands, m or m/s. */
  readonly here: number;
}

/** Points of each curve, and how far past the trip's own length it goes. */
const POINTS = 18;
const LENGTHS = { from: 0.2, to: 2.4 };
const SPEEDS = { from: 1, past: 1.04 };
const HEIGHT = 300;
const USUAL_SPEED = 5;

/** @summary Safe payload over the length of the trip or over speed, with what sets the limit on each stretch. */
export class PayloadPlot extends SpeakingElement {
  static override styles = [tokens, controls, payloadPlotStyles];

  @property({ attribute: false }) trip: Trip | undefined;
  @property({ attribute: false }) waters: Waters | undefined;
  /** The figure for this trip, as planned. */
  @property({ attribute: false }) payload: Payload | undefined;
  /** Planned, m/s. */
  @property({ attribute: false }) speed: number | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  @state() private mode: Mode = 'length';

  readonly #work = new Unhurried<Worked>(this);
  readonly #own = new OwnWidth(this);

  protected override willUpdate(changed: PropertyValues<this>): void {
    const keys = changed as Map<PropertyKey, unknown>;
    if (changed.has('trip') || changed.has('waters') || keys.has('mode')) this.#renew();
  }

  #renew(): void {
    const { trip, waters, mode, speed = USUAL_SPEED } = this;
    if (!trip || trip.route.waypoints.length < 2) {
      this.#work.drop();
      this.#work.result = undefined;
      return;
    }
    this.#work.start(function* () {
      const here = mode === 'length' ? tripLength(trip, waters) : speed;
      yield;
      if (mode === 'length' && here < 1) return { mode, points: [], here };
      const places = mode === 'length' ? lengthsAbout(here) : speedsOf(trip);
      const points: PayloadPoint[] = [];
      const all = mode === 'length' ? payloadOverLength(trip, waters, places) : payloadOverSpeed(trip, waters, places);
      for (const point of all) {
        points.push(point);
        yield;
      }
      return { mode, points, here };
    });
  }

  override render() {
    const { trip } = this;
    if (!trip) return nothing;
    if (trip.route.waypoints.length < 2) return html`<p>${words.none}</p>`;
    const m = this.measures;
    const store = trip.craft.store.kind === 'tank' ? 'fuel' : 'charge';
    return html`
      ${this.payload ? html`<p class="one"><b>${words.one}</b>: ${payloadText(this.payload, m, store)}</p>` : nothing}
      <homeleg-choice-field
        .label=${words.over}
        .choices=${(['length', 'speed'] as const).map((value) => ({ value, label: words.modes[value] }))}
        .value=${this.mode}
        @choice-made=${({ detail }: ChoiceMade) => {
          this.mode = detail.value as Mode;
        }}
      ></homeleg-choice-field>
      <div class="plot ${this.#work.working ? 'unsettled' : ''}" aria-busy=${this.#work.working}>${this.#plot()}</div>
    `;
  }

  #plot() {
    const { result } = this.#work;
    if (!result) return html`<p class="hint">${words.working}</p>`;
    const known = result.points.filter(({ payload }) => payload.extra !== undefined);
    if (known.length === 0) return html`<p>${words.unknown}</p>`;
    const { width, fontSize } = this.#own;
    const m = this.measures;
    const { mode } = result;
    const stretches = payloadStretches(known);
    const show = (at: number) => (mode === 'length' ? m.show('distance', at) : m.show('speed', at));
    const said = stretches.map(
      ({ from, to, binds, dropsOff }) =>
        words.stretch(show(from), show(to), words.binds[binds]) + (dropsOff ? `; ${words.drops}` : ''),
    );
    return html`
      ${width > 0 ? this.#drawing(result, known, width, fontSize * 0.85) : nothing}
      <ul>
        ${said.map((text) => html`<li>${text}</li>`)}
      </ul>
      <p class="hint">${mode === 'length' ? words.heldLength : words.held}</p>
      <details>
        <summary>${words.table}</summary>
        <div class="scroll" tabindex="0" role="group" aria-label=${words.table}><table>
          <thead>
            <tr>
              <th scope="col">${words.columns[mode]}</th>
              <th scope="col" class="figure">${words.columns.extra}</th>
              <th scope="col">${words.columns.binds}</th>
            </tr>
          </thead>
          <tbody>
            ${known.map(
              ({ at, payload, dropsOff }) => html`<tr>
                <th scope="row">${show(at)}</th>
                <td class="figure">${m.show('mass', payload.extra!)}</td>
                <td>${words.binds[payload.binds]}${dropsOff ? `; ${words.drops}` : ''}</td>
              </tr>`,
            )}
          </tbody>
        </table></div>
      </details>
    `;
  }

  #drawing({ mode, here }: Worked, known: readonly PayloadPoint[], width: number, font: number) {
    const m = this.measures;
    const measure = mode === 'length' ? ('distance' as const) : ('speed' as const);
    const picture = payloadPicture(
      known,
      payloadStretches(known),
      { left: 48, right: width - 10, top: 46, bottom: HEIGHT - 34 },
      { at: m.toSi(measure, 1), mass: m.toSi('mass', 1) },
    );
    const { box, zero } = picture;
    const inside = here >= known[0]!.at && here <= known.at(-1)!.at;
    const x = picture.x(here);
    return html`<svg viewBox="0 0 ${width} ${HEIGHT}" width=${width} height=${HEIGHT} role="img" aria-label=${words.title}>
      <g aria-hidden="true">
        <text class="scale" font-size=${font} x="0" y=${font}>${m.unit('mass')}</text>
        ${picture.yTicks.map(
          ({ at, value }) => svg`<path class="grid" d=${`M${box.left} ${at}H${box.right}`} />
            <text class="scale end" font-size=${font} x=${box.left - 6} y=${at + font * 0.35}>${String(value).replace('-', '\u2212')}</text>`,
        )}
        ${picture.areas.map(
          ({ stretch, path }) =>
            svg`<path class="area ${stretch.binds} ${stretch.dropsOff ? 'drops' : ''}" d=${path} />`,
        )}
        ${picture.areas.slice(1).map(({ from }) => svg`<path class="edge" d=${`M${from} ${box.top}V${box.bottom}`} />`)}
        <path class="zero" d=${`M${box.left} ${zero}H${box.right}`} />
        <path class="line" d=${picture.line} />
        ${stretchNames(picture, font)}
        ${picture.xTicks.map(
          (
            { at, value },
            i,
          ) => svg`<path class="axis" d=${`M${at} ${box.bottom}v5`} /><text class="scale ${i === picture.xTicks.length - 1 ? 'end' : ''}" font-size=${font}
            x=${i === picture.xTicks.length - 1 ? Math.min(at + 3 * font, box.right + 8) : at} y=${box.bottom + 8 + font}>${value}${i === picture.xTicks.length - 1 ? `\u00a0${m.unit(measure)}` : ''}</text>`,
        )}
        <path class="axis" d=${`M${box.left} ${box.bottom}H${box.right}`} />
        ${
          inside
            ? svg`<path class="here" d=${`M${x} ${box.top}V${box.bottom}`} />
              <text class="here" font-size=${font} x=${Math.min(Math.max(x, box.left + 28), box.right - 28)} y=${font + 2}>${words.one}</text>`
            : nothing
        }
      </g>
    </svg>`;
  }
}

/** The limit's name over its stretch, where it fits. */
function stretchNames({ areas, box }: PayloadPicture, font: number) {
  return areas.map(({ stretch, from, to }) => {
    const name = words.binds[stretch.binds];
    return textWidth(name, font) + 8 <= to - from
      ? svg`<text class="name" font-size=${font} x=${(from + to) / 2} y=${box.top - 6}>${name}</text>`
      : nothing;
  });
}

function lengthsAbout(length: number): number[] {
  const step = (LENGTHS.to - LENGTHS.from) / (POINTS - 1);
  const grid = Array.from({ length: POINTS }, (_, i) => length * (LENGTHS.from + step * i));
  return [...grid, length].sort((a, b) => a - b);
}

function speedsOf(trip: Trip): number[] {
  const { topSpeed } = tripCurve(trip);
  const last = Math.max(topSpeed.median * SPEEDS.past, 2 * SPEEDS.from);
  return Array.from({ length: POINTS }, (_, i) => SPEEDS.from + ((last - SPEEDS.from) * i) / (POINTS - 1));
}

define('homeleg-payload-plot', PayloadPlot);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-payload-plot': PayloadPlot;
  }
}
