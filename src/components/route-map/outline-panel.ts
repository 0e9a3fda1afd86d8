import type { Map as LeafletMap } from 'leaflet';
import { html, nothing, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import { legBetween } from '../../core/route/distance.ts';
import type { Waters } from '../../core/route/waters.ts';
import { openWaypoint } from '../../core/trip/open-waypoint.ts';
import { type RangeOutline, rangeOutline } from '../../core/trip/range-outline.ts';
import type { OutlinePoint, Reach } from '../../core/trip/range-ray.ts';
import type { Trip } from '../../core/trip/shapes.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { commonWords } from '../words/en-common.ts';
import type { Leaflet } from './map-life.ts';
import { OutlineLayer } from './outline-layer.ts';
import { outlineStyles } from './outline-panel.styles.ts';
import { outlineWords as words } from './outline-words.ts';

/** Directions while a waypoint is being dragged, and when it rests. */
const QUICK = 24;
const FULL = 72;

/** @summary How far the boat gets in every direction: drawn on the map, and told in a table of eight directions. */
export class OutlinePanel extends SpeakingElement {
  static override styles = [tokens, controls, outlineStyles];

  @property({ attribute: false }) trip: Trip | undefined;
  @property({ attribute: false }) waters: Waters | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;
  @property({ attribute: false }) map: LeafletMap | undefined;
  @property({ attribute: false }) leaflet: Leaflet | undefined;
  /** A waypoint is being dragged: fewer directions will do. */
  @property({ type: Boolean }) live = false;

  /** Waypoint the user looks round from; until then the first with open water about it. */
  @state() private chosen: number | undefined;

  #from = 0;
  #outline: RangeOutline | undefined;
  #layer: OutlineLayer | undefined;

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#layer?.remove();
    this.#layer = undefined;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.requestUpdate('map');
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (!['trip', 'waters', 'chosen', 'live'].some((name) => changed.has(name))) return;
    const { trip, waters } = this;
    this.#outline = undefined;
    if (!trip) return;
    const count = trip.route.waypoints.length;
    if (this.chosen !== undefined && this.chosen >= count) this.chosen = undefined;
    if (this.chosen !== undefined) this.#from = this.chosen;
    else if (!this.live || this.#from >= count) this.#from = openWaypoint(trip, waters);
    const found = rangeOutline(trip, waters, { from: this.#from, directions: this.live ? QUICK : FULL });
    if (found.ok) this.#outline = found.value;
  }

  protected override updated(): void {
    const { map, leaflet } = this;
    if (!map || !leaflet) return;
    if (this.#layer?.map !== map) this.#layer = new OutlineLayer(map, leaflet);
    this.#layer.draw(this.#outline);
  }

  override render() {
    const outline = this.#outline;
    return html`<section aria-label=${words.name}>
      ${this.#choice()}
      ${outline ? this.#told(outline) : html`<p class="hint">${words.none}</p>`}
    </section>`;
  }

  #choice() {
    const waypoints = this.trip?.route.waypoints ?? [];
    const outline = this.#outline;
    return html`<div class="choice">
      ${
        waypoints.length > 1
          ? html`<div>
              <label for="from">${words.from}</label>
              <select
                id="from"
                @change=${(event: Event) => {
                  this.chosen = Number((event.currentTarget as HTMLSelectElement).value);
                }}
              >
                ${waypoints.map(
                  ({ name }, index) =>
                    html`<option value=${index} ?selected=${index === this.#from}>
                      ${index === 0 ? words.start : words.waypoint(index + 1, name)}
                    </option>`,
                )}
              </select>
            </div>`
          : nothing
      }
      ${
        outline && this.map
          ? html`<button type="button" @click=${() => this.#layer?.show(outline)}>${words.all}</button>`
          : nothing
      }
    </div>`;
  }

  #told(outline: RangeOutline) {
    const { points, spare, spareOneWay, beyondWaters } = outline;
    const factor = factorOf(outline);
    const place = this.#from === 0 ? commonWords.within(words.start) : words.placeOf(this.#from + 1);
    return html`
      <p class="hint">
        ${words.basis} ${this.#from > 0 ? words.takenOff(this.#from + 1) : nothing} ${words.straight}
        ${factor > 1 ? words.drawn(Math.round((factor - 1) * 100)) : nothing} ${beyondWaters ? words.beyond : nothing}
      </p>
      ${spare > 0 || spareOneWay > 0 ? nothing : html`<p class="nothing">${words.nothing}</p>`}
      <table>
        <caption class="sr">${words.caption(place)}</caption>
        <thead>
          <tr>
            <th scope="col">${words.direction}</th>
            <th scope="col"><span class="sample out-and-home"></span>${words.outAndHome}</th>
            <th scope="col"><span class="sample one-way"></span>${words.oneWay}</th>
            <th scope="col">${words.ends}</th>
          </tr>
        </thead>
        <tbody>
          ${points
            .filter((_, i) => i % (points.length / 8) === 0)
            .map((point, index) => this.#row(point, index, outline))}
        </tbody>
      </table>
    `;
  }

  #row({ outAndHome, oneWay }: OutlinePoint, index: number, { from }: RangeOutline) {
    const store = this.trip?.craft.store.kind === 'tank' ? 'fuel' : 'charge';
    const far = ({ at }: Reach) => this.measures.show('distance', legBetween(from, at).distance);
    const [first, second] = [words.why(outAndHome, store), words.why(oneWay, store)];
    const [short, said] = words.toward(index);
    return html`<tr>
      <th scope="row"><span aria-hidden="true">${short}</span><span class="sr">${said}</span></th>
      <td>${far(outAndHome)}</td>
      <td>${far(oneWay)}</td>
      <td>${first === second ? first : `${first}; ${second}`}</td>
    </tr>`;
  }
}

/** Way sailed over way drawn. */
function factorOf({ from, points }: RangeOutline): number {
  const { at, distance } = points.reduce((a, b) => (b.oneWay.distance > a.oneWay.distance ? b : a)).oneWay;
  const drawn = legBetween(from, at).distance;
  return drawn > 0 ? distance / drawn : 1;
}

define('homeleg-outline-panel', OutlinePanel);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-outline-panel': OutlinePanel;
  }
}
