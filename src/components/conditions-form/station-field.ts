import { css, html, nothing, type PropertyValues } from 'lit';
import { property, query, state } from 'lit/decorators.js';
import { legBetween } from '../../core/route/distance.ts';
import type { LatLon } from '../../core/route/shapes.ts';
import { secondsOf } from '../../core/water/clock.ts';
import type { Tide, TideStation } from '../../core/water/shapes.ts';
import { define } from '../define.ts';
import { fieldStyles } from '../field/field.styles.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { formStyles } from '../theme/form.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { tideWords as words } from '../words/en-tide.ts';
import { dayAndClock, placeClock } from './place-clock.ts';
import { addStation, stationTide, tideStations } from './stations.ts';
import type { TideEdited } from './tide-edited.ts';

/** A station further from the start than this may keep another tide, m (common practice, no source). */
const FAR = 40_000;
/** Nearer than this the distance is not worth telling, m. */
const HERE = 200;

/**
 * @summary The tide of the departure's day from the constants of a station: one of those shipped, or the user's own file.
 * @fires tide-edited - it was worked out anew
 */
export class StationField extends SpeakingElement {
  static override styles = [
    tokens,
    controls,
    fieldStyles,
    formStyles,
    css`
      p {
        margin: 4px 0 0;
      }
    `,
  ];

  @property({ attribute: false }) tide: Tide | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;
  @property() departure: string | undefined;
  @property() timezone: string | undefined;
  @property({ attribute: false }) duration: number | undefined;
  @property({ attribute: false }) place: LatLon | undefined;
  /** Id of the station that the tide is from. */
  @property({ attribute: false }) picked = '';

  @state() private stations: readonly TideStation[] = [];
  @state() private message = '';
  @state() private working = false;

  @query('input[type=file]') private picker!: HTMLInputElement;

  #visit = 0;
  /** What the tide was last worked out for. */
  #workedFor = '';

  override connectedCallback(): void {
    super.connectedCallback();
    void this.#load();
  }

  protected override updated(changed: PropertyValues<this>): void {
    if (changed.has('departure') || changed.has('picked') || changed.has('timezone')) void this.#work();
  }

  override render() {
    const station = this.#station;
    const { place } = this;
    const away = (each: TideStation) => (place ? legBetween(place, each).distance : 0);
    const sorted = place ? [...this.stations].sort((a, b) => away(a) - away(b)) : this.stations;
    return html`<div class="stack close">
      <div class="field">
        <label for="station">${words.pick}</label>
        <select id="station" @change=${this.#stationPicked}>
          <option value="" .selected=${!station}>${words.choose}</option>
          ${sorted.map(
            (each) => html`<option value=${each.id} .selected=${each === station}>
              ${away(each) >= HERE ? words.away(each.name, this.measures.show('distance', away(each))) : each.name}
            </option>`,
          )}
        </select>
      </div>
      ${this.#told(station)}
      <div>
        <button type="button" class="quiet" @click=${() => this.picker.click()}>${words.ownFile}</button>
        <input type="file" hidden accept=".json,application/json" aria-label=${words.ownFile} @change=${this.#filePicked} />
        <p class="hint">${words.ownHint}</p>
      </div>
    </div>`;
  }

  #told(station: TideStation | undefined) {
    const { tide, measures: m, place } = this;
    if (this.message) return html`<p class="problem" role="status">${this.message}</p>`;
    if (!station) return nothing;
    if (this.departure === undefined) return html`<p class="hint" role="status">${words.noDeparture}</p>`;
    if (this.working || !tide) return html`<p class="hint" role="status">${words.working}</p>`;
    const { meanSpringRange: spring, meanNeapRange: neap } = tide;
    const distance = place ? legBetween(place, station).distance : 0;
    return html`<div role="status">
        <p>
          ${words.worked(
            dayAndClock(tide.highWater, placeClock(this), m.lang),
            m.show('length', tide.highWaterHeight ?? 0),
            m.show('length', tide.range),
          )}
          ${spring > neap ? words.ranges(m.show('length', spring), m.show('length', neap)) : words.notTwiceDaily}
        </p>
        ${distance > FAR ? html`<p class="problem">${words.far(m.show('distance', distance))}</p>` : nothing}
      </div>
      <p class="hint">${words.indicative}</p>
      ${this.#credits(station)}`;
  }

  #credits({ attribution, licence, source }: TideStation) {
    const parts = [attribution, licence].filter((part) => part !== undefined && part !== '');
    if (parts.length === 0 && !source) return nothing;
    return html`<p class="hint">
      ${parts.join('; ')}${parts.length > 0 ? '.' : nothing}
      ${source && /^https:\/\//.test(source) ? html`<a href=${source} rel="noreferrer">${words.source}</a>` : nothing}
    </p>`;
  }

  get #station(): TideStation | undefined {
    return this.stations.find(({ id }) => id === this.picked);
  }

  async #load(): Promise<void> {
    try {
      this.stations = await tideStations();
      await this.#work();
    } catch {
      this.message = this.say(() => words.failed);
    }
  }

  #stationPicked(event: Event): void {
    this.picked = (event.target as HTMLSelectElement).value;
    this.message = '';
    if (this.picked === '') this.#tell(undefined);
    else void this.#work();
  }

  /** For the middle of the trip, on the day of its departure. */
  async #work(): Promise<void> {
    const station = this.#station;
    const { departure, duration } = this;
    if (!station || departure === undefined) return;
    const key = `${station.id} ${departure} ${this.timezone}`;
    if (key === this.#workedFor) return;
    this.#workedFor = key;
    const visit = ++this.#visit;
    const start = secondsOf(departure);
    const middle = start + (duration !== undefined && Number.isFinite(duration) ? duration / 2 : 0);
    this.working = true;
    try {
      const found = await stationTide(station, middle, middle);
      if (visit !== this.#visit) return;
      this.working = false;
      const tide = found.ok ? found.value.tideAt(middle, placeClock(this).offsetAt(middle)) : undefined;
      this.message = found.ok
        ? tide
          ? ''
          : this.say(() => words.noHighWater)
        : found.problems.map(({ message }) => `${message}.`).join(' ');
      this.#tell(tide);
    } catch {
      if (visit !== this.#visit) return;
      this.working = false;
      this.#workedFor = '';
      this.message = this.say(() => words.failed);
    }
  }

  async #filePicked(): Promise<void> {
    const file = this.picker.files?.[0];
    this.picker.value = '';
    if (!file) return;
    try {
      const { readTideStation } = await import('../../core/files/tide-station-file.ts');
      const read = readTideStation(await file.text());
      if (!read.ok) {
        this.message = `${this.say(() => words.fileFailed)} ${read.problems
          .slice(0, 3)
          .map(({ message }) => `${message}.`)
          .join(' ')}`;
        return;
      }
      addStation(read.value);
      this.stations = await tideStations();
      this.message = '';
      this.#workedFor = '';
      this.picked = read.value.id;
    } catch {
      this.message = this.say(() => words.fileFailed);
    }
  }

  #tell(tide: Tide | undefined): void {
    this.tide = tide;
    this.dispatchEvent(new CustomEvent('tide-edited', { detail: { tide }, bubbles: true }) satisfies TideEdited);
  }
}

define('homeleg-station-field', StationField);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-station-field': StationField;
  }
}
