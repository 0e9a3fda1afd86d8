import { html, nothing, type PropertyValues } from 'lit';
import { property } from 'lit/decorators.js';
import type { Conditions } from '../../core/water/shapes.ts';
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
import { commonWords, conditionWords } from '../words/en-forms.ts';
import { departureAt, localReading, offsetOf } from './departure.ts';
import './flow-field.ts';
import type { Flow, FlowEdited } from './flow-field.ts';

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

  #sea: 'unknown' | 'calm' | 'known' = 'unknown';
  #toldSea: Conditions['sea'];

  protected override willUpdate(changed: PropertyValues<this>): void {
    const { sea } = this.conditions;
    if (!changed.has('conditions') || (this.hasUpdated && sea === this.#toldSea)) return;
    this.#toldSea = sea;
    this.#sea = sea === undefined ? 'unknown' : sea === 'calm' ? 'calm' : 'known';
  }

  override render() {
    const { conditions, measures } = this;
    const { wind, stream } = conditions;
    return html`
      <div class="stack">
        ${this.noDeparture ? nothing : this.#departure()}
        <homeleg-flow-field
          kind="wind"
          .measures=${measures}
          .value=${typeof wind === 'object' ? ('speed' in wind ? { deg: wind.fromDeg, speed: wind.speed } : undefined) : wind && 'none'}
          @flow-edited=${(event: FlowEdited) => this.#change({ wind: asWind(event.detail.value) })}
        ></homeleg-flow-field>
        <homeleg-flow-field
          kind="stream"
          .measures=${measures}
          .value=${typeof stream === 'object' ? { deg: stream.setDeg, speed: stream.rate } : stream && 'none'}
          @flow-edited=${(event: FlowEdited) => this.#change({ stream: asStream(event.detail.value) })}
        ></homeleg-flow-field>
        ${this.#seaState()}
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

  #departure() {
    const { departure } = this.conditions;
    const offset = offsetOf(departure);
    return html`<div class="field">
      <label for="departure">${conditionWords.departure}</label>
      <input
        id="departure"
        type="datetime-local"
        aria-describedby="departure-hint"
        .value=${localReading(departure)}
        @change=${(event: Event) => this.#change({ departure: departureAt((event.target as HTMLInputElement).value) })}
      />
      <p id="departure-hint" class="hint">${conditionWords.departureHint}${offset && `, ${offset}`}</p>
    </div>`;
  }

  #seaState() {
    const { sea } = this.conditions;
    const height = typeof sea === 'object' && 'height' in sea ? sea.height : undefined;
    return html`<div class="stack close">
      <homeleg-choice-field
        label=${conditionWords.sea}
        .choices=${[
          { value: 'unknown', label: commonWords.notKnown },
          { value: 'calm', label: conditionWords.flat },
          { value: 'known', label: conditionWords.known },
        ]}
        .value=${this.#sea}
        @choice-made=${this.#seaChosen}
      ></homeleg-choice-field>
      ${
        this.#sea === 'known'
          ? html`<homeleg-quantity-field
              label=${conditionWords.waveHeight}
              measure="length"
              min="0"
              max="10"
              hint=${height === undefined ? conditionWords.heightNeeded : conditionWords.waveHint}
              .measures=${this.measures}
              .value=${height}
              @quantity-typed=${this.#heightTyped}
            ></homeleg-quantity-field>`
          : nothing
      }
    </div>`;
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

  #seaChosen(event: ChoiceMade): void {
    this.#sea = event.detail.value as 'unknown' | 'calm' | 'known';
    this.requestUpdate();
    // Known but without a height is still unknown, never calm.
    const sea = this.#sea === 'calm' ? 'calm' : undefined;
    if (sea !== this.conditions.sea) this.#change({ sea });
  }

  #heightTyped({ detail: { value } }: QuantityTyped): void {
    this.#change({ sea: value === undefined ? undefined : { height: value } });
  }

  #change(change: Partial<Conditions>): void {
    const conditions = { ...this.conditions, ...change };
    if ('sea' in change) this.#toldSea = change.sea;
    this.conditions = conditions;
    this.dispatchEvent(
      new CustomEvent('conditions-edited', { detail: { conditions }, bubbles: true }) satisfies ConditionsEdited,
    );
  }
}

function asWind(value: 'none' | Flow | undefined): Conditions['wind'] {
  return typeof value === 'object' ? { fromDeg: value.deg, speed: value.speed } : value && 'calm';
}

function asStream(value: 'none' | Flow | undefined): Conditions['stream'] {
  return typeof value === 'object' ? { setDeg: value.deg, rate: value.speed } : value && 'slack';
}

define('homeleg-conditions-form', ConditionsForm);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-conditions-form': ConditionsForm;
  }
}
