import { html, nothing, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { LatLon, Waypoint } from '../../core/route/shapes.ts';
import type { Conditions, StreamPlace, WindAt } from '../../core/water/shapes.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import '../field/choice-field.ts';
import type { ChoiceMade } from '../field/choice-field.ts';
import { fieldStyles } from '../field/field.styles.ts';
import '../field/quantity-field.ts';
import type { QuantityTyped } from '../field/quantity-field.ts';
import { controls } from '../theme/controls.styles.ts';
import { formStyles } from '../theme/form.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { conditionWords } from '../words/en-forms.ts';
import './departure-field.ts';
import type { DepartureEdited } from './departure-field.ts';
import './flow-field.ts';
import type { FlowEdited, FlowTold } from './flow-field.ts';
import './sea-field.ts';
import type { SeaEdited } from './sea-field.ts';
import type { StreamPlacesEdited } from './stream-places.ts';
import type { TideEdited } from './tide-edited.ts';
import type { ForecastEdited } from './wind-table.ts';

const NO_PLACES: readonly StreamPlace[] = [];

export type ConditionsEdited = CustomEvent<{ conditions: Conditions }>;

/**
 * @summary Departure, wind, stream, sea and water. What is not given stays unknown.
 * @fires conditions-edited - the user changed one of them
 */
export class ConditionsForm extends SpeakingElement {
  static override styles = [tokens, controls, fieldStyles, formStyles];

  @property({ attribute: false }) conditions: Conditions = { water: 'sea' };
  /** Asks for the battery's temperature. */
  @property({ type: Boolean }) electric = false;
  /** Leaves out the departure, where its time is not asked for. */
  @property({ type: Boolean, attribute: 'no-departure' }) noDeparture = false;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  /** How long the trip takes at its slowest, s; undefined while there is no plan. */
  @property({ attribute: false }) duration: number | undefined;
  /** Start of the route. */
  @property({ attribute: false }) place: LatLon | undefined;
  /** There are local waters: the sea can be worked out over them. */
  @property({ type: Boolean, attribute: 'waters-told' }) watersTold = false;
  /** These waters have streams or depths that go by the tide. */
  @property({ type: Boolean }) tidal = false;
  /** Places with streams of the local waters, where there are any waters. */
  @property({ attribute: false }) streamsOfWaters: readonly StreamPlace[] | undefined;
  /** Points of the route, any of which may be such a place. */
  @property({ attribute: false }) waypoints: readonly Waypoint[] = [];
  /** Address of a forecast with {lat} and {lon}, set by the host. */
  @property() forecastSource = '';

  @state() private partFailed = false;

  /** By time is chosen, whether or not a row is filled in. */
  #byTime = false;
  /** Told before another kind of wind was chosen: it is there again when somebody comes back to it. */
  #forecast: readonly WindAt[] = [];
  #toldWind: Conditions['wind'];

  protected override willUpdate(changed: PropertyValues<this>): void {
    const { wind } = this.conditions;
    if (!changed.has('conditions') || (this.hasUpdated && wind === this.#toldWind)) return;
    this.#toldWind = wind;
    this.#byTime = typeof wind === 'object' && 'forecast' in wind;
    if (typeof wind === 'object' && 'forecast' in wind) this.#forecast = wind.forecast;
    if (this.#byTime) void this.#load(() => import('./wind-table.ts'));
  }

  protected override updated(): void {
    if (this.#asksTide) void this.#load(() => import('./tide-field.ts'));
    if (this.conditions.stream === 'by-tide') void this.#load(() => import('./stream-places.ts'));
  }

  override render() {
    const { conditions, measures } = this;
    const { stream } = conditions;
    return html`
      <div class="stack">
        ${
          this.noDeparture
            ? nothing
            : html`<homeleg-departure-field
                .departure=${conditions.departure}
                .timezone=${conditions.timezone}
                @departure-edited=${({ detail }: DepartureEdited) => this.#change(detail)}
              ></homeleg-departure-field>`
        }
        <div class="stack close">
          <homeleg-flow-field
            kind="wind"
            .measures=${measures}
            .value=${this.#windValue()}
            @flow-edited=${this.#windEdited}
          ></homeleg-flow-field>
          ${this.#byTime ? this.#windTable() : nothing}
        </div>
        <homeleg-flow-field
          kind="stream"
          .measures=${measures}
          .value=${streamValue(stream)}
          @flow-edited=${(event: FlowEdited) => this.#change({ stream: asStream(event.detail.value) })}
        ></homeleg-flow-field>
        ${
          this.#asksTide
            ? html`<homeleg-tide-field
                .tide=${conditions.tide}
                .measures=${measures}
                .departure=${conditions.departure}
                .timezone=${conditions.timezone}
                .duration=${this.duration}
                .place=${this.place}
                ?needed=${stream === 'by-tide'}
                @tide-edited=${({ detail }: TideEdited) => this.#change({ tide: detail.tide })}
              ></homeleg-tide-field>`
            : nothing
        }
        ${stream === 'by-tide' ? this.#streamPlaces() : nothing}
        <homeleg-sea-field
          .sea=${conditions.sea}
          .measures=${measures}
          ?wind-told=${conditions.wind !== undefined}
          ?waters-told=${this.watersTold}
          @sea-edited=${({ detail }: SeaEdited) => this.#change({ sea: detail.sea })}
        ></homeleg-sea-field>
        ${this.partFailed ? html`<p class="problem" role="status">${conditionWords.partFailed}</p>` : nothing}
        <homeleg-choice-field
          label=${conditionWords.water}
          .choices=${[{ value: 'sea', label: conditionWords.salt }, { value: 'fresh', label: conditionWords.fresh }]}
          .value=${conditions.water}
          @choice-made=${(event: ChoiceMade) => this.#change({ water: event.detail.value as 'sea' | 'fresh' })}
        ></homeleg-choice-field>
        ${this.electric ? this.#temperature() : nothing}
        ${this.#waterTemperature()}
      </div>
    `;
  }

  get #asksTide(): boolean {
    const { tide, stream } = this.conditions;
    return this.tidal || tide !== undefined || stream === 'by-tide';
  }

  #windValue(): FlowTold {
    const { wind } = this.conditions;
    if (this.#byTime) return 'changing';
    if (typeof wind !== 'object') return wind && 'none';
    return 'speed' in wind ? { deg: wind.fromDeg, speed: wind.speed } : 'changing';
  }

  #streamPlaces() {
    return html`<homeleg-stream-places
      .places=${this.conditions.streamPlaces ?? NO_PLACES}
      .ofWaters=${this.streamsOfWaters}
      .waypoints=${this.waypoints}
      .measures=${this.measures}
      @stream-places-edited=${({ detail }: StreamPlacesEdited) => this.#change({ streamPlaces: detail.streamPlaces })}
    ></homeleg-stream-places>`;
  }

  #windTable() {
    const { departure, timezone } = this.conditions;
    return html`<homeleg-wind-table
      .forecast=${this.#forecast}
      .measures=${this.measures}
      .departure=${departure}
      .timezone=${timezone}
      .duration=${this.duration}
      .place=${this.place}
      source=${this.forecastSource}
      @forecast-edited=${this.#forecastEdited}
    ></homeleg-wind-table>`;
  }

  async #load(part: () => Promise<unknown>): Promise<void> {
    try {
      await part();
      this.partFailed = false;
    } catch {
      this.partFailed = true;
    }
  }

  #windEdited({ detail: { value } }: FlowEdited): void {
    this.#byTime = value === 'changing';
    if (this.#byTime) void this.#load(() => import('./wind-table.ts'));
    this.requestUpdate();
    // By time without a row is not known, never calm.
    this.#changeWind(this.#byTime ? asForecast(this.#forecast) : asWind(value));
  }

  #forecastEdited({ detail }: ForecastEdited): void {
    this.#forecast = detail.forecast;
    this.#changeWind(asForecast(detail.forecast));
  }

  #changeWind(wind: Conditions['wind']): void {
    this.#toldWind = wind;
    if (wind !== this.conditions.wind) this.#change({ wind });
  }

  #temperature() {
    const fahrenheit = this.measures.system === 'imperial';
    const shown = (celsius: number) => (fahrenheit ? celsius * 1.8 + 32 : celsius);
    const { batteryTemperatureC: now } = this.conditions;
    return html`<homeleg-quantity-field
      label=${conditionWords.batteryTemperature}
      hint=${conditionWords.batteryHint}
      measure="count"
      unit=${fahrenheit ? '°F' : '°C'}
      unitSize="1"
      min=${shown(-20)}
      max=${shown(60)}
      .measures=${this.measures}
      .value=${now === undefined ? undefined : shown(now)}
      @quantity-typed=${({ detail: { value } }: QuantityTyped) =>
        this.#change({
          batteryTemperatureC: value === undefined ? undefined : fahrenheit ? (value - 32) / 1.8 : value,
        })}
    ></homeleg-quantity-field>`;
  }

  #waterTemperature() {
    const fahrenheit = this.measures.system === 'imperial';
    const { waterTemperatureC: now } = this.conditions;
    return html`<homeleg-quantity-field
      label=${conditionWords.waterTemperature}
      hint=${conditionWords.waterTemperatureHint}
      measure="count"
      unit=${fahrenheit ? '°F' : '°C'}
      unitSize="1"
      min=${fahrenheit ? 28 : -2}
      max=${fahrenheit ? 104 : 40}
      .measures=${this.measures}
      .value=${now === undefined ? undefined : fahrenheit ? now * 1.8 + 32 : now}
      @quantity-typed=${({ detail: { value } }: QuantityTyped) =>
        this.#change({ waterTemperatureC: value === undefined ? undefined : fahrenheit ? (value - 32) / 1.8 : value })}
    ></homeleg-quantity-field>`;
  }

  #change(change: Partial<Conditions>): void {
    const conditions = { ...this.conditions, ...change };
    this.conditions = conditions;
    this.dispatchEvent(
      new CustomEvent('conditions-edited', { detail: { conditions }, bubbles: true }) satisfies ConditionsEdited,
    );
  }
}

function asForecast(forecast: readonly WindAt[]): Conditions['wind'] {
  return forecast.length > 0 ? { forecast } : undefined;
}

function asWind(value: FlowTold): Conditions['wind'] {
  if (typeof value === 'object') return { fromDeg: value.deg, speed: value.speed };
  return value === 'none' ? 'calm' : undefined;
}

function streamValue(stream: Conditions['stream']): FlowTold {
  if (typeof stream === 'object') return { deg: stream.setDeg, speed: stream.rate };
  return stream === undefined ? undefined : stream === 'slack' ? 'none' : 'changing';
}

function asStream(value: FlowTold): Conditions['stream'] {
  if (typeof value === 'object') return { setDeg: value.deg, rate: value.speed };
  return value === undefined ? undefined : value === 'none' ? 'slack' : 'by-tide';
}

define('homeleg-conditions-form', ConditionsForm);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-conditions-form': ConditionsForm;
  }
}
