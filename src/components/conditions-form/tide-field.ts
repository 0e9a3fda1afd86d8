import { html, nothing, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { LatLon } from '../../core/route/shapes.ts';
import { secondsOf } from '../../core/water/clock.ts';
import type { Tide } from '../../core/water/shapes.ts';
import { define } from '../define.ts';
import '../field/choice-field.ts';
import type { ChoiceMade } from '../field/choice-field.ts';
import '../field/quantity-field.ts';
import { fieldStyles } from '../field/field.styles.ts';
import type { QuantityTyped } from '../field/quantity-field.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { formStyles } from '../theme/form.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { tideWords as words } from '../words/en-tide.ts';
import { placeClock } from './place-clock.ts';
import { stationOf } from './stations.ts';
import type { TideEdited } from './tide-edited.ts';

type Mode = 'none' | 'typed' | 'station';

/** What is typed of a tide so far. Reading of the clock of the place; m. */
interface Typed {
  readonly port: string;
  readonly reading: string;
  readonly range: number | undefined;
  readonly spring: number | undefined;
  readonly neap: number | undefined;
  readonly height: number | undefined;
}

const NOTHING: Typed = {
  port: '',
  reading: '',
  range: undefined,
  spring: undefined,
  neap: undefined,
  height: undefined,
};

/**
 * @summary The day's high water at the standard port: typed from the tables, or worked out from a station.
 * @fires tide-edited - another tide, or none while it is half filled in
 */
export class TideField extends SpeakingElement {
  static override styles = [tokens, controls, fieldStyles, formStyles];

  @property({ attribute: false }) tide: Tide | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;
  /** ISO 8601 with offset. */
  @property() departure: string | undefined;
  @property() timezone: string | undefined;
  /** How long the trip takes, s: the high water nearest to its middle is told. */
  @property({ attribute: false }) duration: number | undefined;
  /** Start of the route. */
  @property({ attribute: false }) place: LatLon | undefined;
  /** Streams by the tide wait for it. */
  @property({ type: Boolean }) needed = false;

  @state() private mode: Mode = 'none';
  @state() private typed: Typed = NOTHING;
  @state() private failed = false;
  /** The station that a kept tide is from. */
  @state() private stationId = '';

  #told: Tide | undefined;

  protected override willUpdate(changed: PropertyValues<this>): void {
    const { tide } = this;
    if (!changed.has('tide') || tide === this.#told) return;
    this.#told = tide;
    if (!tide) {
      this.mode = 'none';
      this.typed = NOTHING;
      return;
    }
    this.#write(tide);
    // From a station the words stay those of a station only while its constants still say so.
    if (this.mode === 'none') this.mode = 'typed';
    void this.#recognise(tide);
  }

  override render() {
    return html`<div class="stack close">
      <homeleg-choice-field
        label=${words.title}
        .choices=${[
          { value: 'none', label: words.none },
          { value: 'typed', label: words.typed },
          { value: 'station', label: words.station },
        ]}
        .value=${this.mode}
        hint=${this.mode === 'none' && this.needed ? words.needed : ''}
        @choice-made=${this.#chosen}
      ></homeleg-choice-field>
      ${this.mode === 'typed' ? this.#typing() : nothing}
      ${
        this.mode === 'station'
          ? html`<homeleg-station-field
              .measures=${this.measures}
              .departure=${this.departure}
              .timezone=${this.timezone}
              .duration=${this.duration}
              .place=${this.place}
              .tide=${this.tide}
              .picked=${this.stationId}
              @tide-edited=${this.#worked}
            ></homeleg-station-field>`
          : nothing
      }
      ${this.failed ? html`<p class="problem" role="status">${words.failed}</p>` : nothing}
    </div>`;
  }

  #typing() {
    const { reading, port } = this.typed;
    const badTime = reading !== '' && placeClock(this).instant(reading) === undefined;
    return html`<div class="fields">
        <div class="field">
          <label for="port">${words.port}</label>
          <input id="port" autocomplete="off" maxlength="60" .value=${port} @change=${this.#portTyped} />
        </div>
        <div class="field">
          <label for="high">${words.highWater}</label>
          <input
            id="high"
            type="datetime-local"
            aria-describedby="high-hint"
            aria-invalid=${badTime ? 'true' : nothing}
            .value=${reading}
            @change=${this.#readingTyped}
          />
          <p id="high-hint" class=${badTime ? 'problem' : 'hint'}>${badTime ? words.badTime : words.highWaterHint}</p>
        </div>
        ${this.#figure('height', words.height, words.heightHint, [-5, 20])}
        ${this.#figure('range', words.range, words.rangeHint, [0, 17])}
        ${this.#figure('spring', words.spring, '', [0, 17])} ${this.#figure('neap', words.neap, '', [0, 17])}
      </div>
      <p class="hint" aria-live="polite">
        ${this.tide ? words.indicative : this.#rangesCrossed ? words.bothRanges : words.unfinished}
      </p>`;
  }

  #figure(key: 'height' | 'range' | 'spring' | 'neap', label: string, hint: string, [min, max]: [number, number]) {
    return html`<homeleg-quantity-field
      label=${label}
      measure="length"
      min=${min}
      max=${max}
      hint=${hint}
      .measures=${this.measures}
      .value=${this.typed[key]}
      @quantity-typed=${({ detail: { value } }: QuantityTyped) => this.#type({ [key]: value })}
    ></homeleg-quantity-field>`;
  }

  get #rangesCrossed(): boolean {
    const { spring, neap } = this.typed;
    return spring !== undefined && neap !== undefined && spring <= neap;
  }

  #write(tide: Tide): void {
    this.typed = {
      port: tide.port,
      reading: placeClock(this).reading(tide.highWater),
      range: tide.range,
      spring: tide.meanSpringRange,
      neap: tide.meanNeapRange,
      height: tide.highWaterHeight,
    };
  }

  async #recognise(tide: Tide): Promise<void> {
    const station = await stationOf(tide);
    if (!station || this.tide !== tide) return;
    this.stationId = station.id;
    if (this.mode === 'typed') await this.#toStation();
  }

  #chosen(event: ChoiceMade): void {
    const mode = event.detail.value as Mode;
    if (mode === 'station') {
      void this.#toStation();
      return;
    }
    this.mode = mode;
    this.failed = false;
    this.#tell(mode === 'none' ? undefined : this.#whole());
  }

  async #toStation(): Promise<void> {
    try {
      await import('./station-field.ts');
      this.failed = false;
      this.mode = 'station';
    } catch {
      this.failed = true;
      this.mode = 'typed';
    }
  }

  #portTyped(event: Event): void {
    this.#type({ port: (event.target as HTMLInputElement).value });
  }

  #readingTyped(event: Event): void {
    this.#type({ reading: (event.target as HTMLInputElement).value });
  }

  #type(change: Partial<Typed>): void {
    this.typed = { ...this.typed, ...change };
    this.#tell(this.#whole());
  }

  /** Half filled in counts as not given. */
  #whole(): Tide | undefined {
    const { port, reading, range, spring, neap, height } = this.typed;
    const highWater = placeClock(this).instant(reading);
    if (highWater === undefined || range === undefined || spring === undefined || neap === undefined) return undefined;
    if (spring <= neap) return undefined;
    return {
      port: port.trim() || words.portEmpty,
      highWater,
      range,
      meanSpringRange: spring,
      meanNeapRange: neap,
      ...(height !== undefined && { highWaterHeight: height }),
    };
  }

  #worked(event: TideEdited): void {
    event.stopPropagation();
    const { tide } = event.detail;
    if (tide) this.#write(tide);
    this.#tell(tide);
  }

  #tell(tide: Tide | undefined): void {
    if (tide === this.tide || (tide && this.tide && sameTide(tide, this.tide))) return;
    this.#told = tide;
    this.tide = tide;
    this.dispatchEvent(new CustomEvent('tide-edited', { detail: { tide }, bubbles: true }) satisfies TideEdited);
  }
}

function sameTide(a: Tide, b: Tide): boolean {
  return (
    a.port === b.port &&
    secondsOf(a.highWater) === secondsOf(b.highWater) &&
    a.range === b.range &&
    a.meanSpringRange === b.meanSpringRange &&
    a.meanNeapRange === b.meanNeapRange &&
    a.highWaterHeight === b.highWaterHeight
  );
}

define('homeleg-tide-field', TideField);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-tide-field': TideField;
  }
}
