import { html, nothing, type PropertyValues } from 'lit';
import { property } from 'lit/decorators.js';
import { secondsOf, timeAt } from '../../core/water/clock.ts';
import { type LocalTime, localTime, zoneOffset } from '../../core/water/local-time.ts';
import { define } from '../define.ts';
import { fieldStyles } from '../field/field.styles.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { formStyles } from '../theme/form.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { departureWords as words } from '../words/en-departure.ts';
import { conditionWords } from '../words/en-forms.ts';
import { deviceZone, offsetText, placeClock } from './place-clock.ts';

export type DepartureEdited = CustomEvent<{ departure: string | undefined; timezone: string | undefined }>;

/**
 * @summary Date, clock time and the zone whose clock it is. A time that the clock skips or shows twice is told beside it.
 * @fires departure-edited - another departure, or none while the time typed does not exist
 */
export class DepartureField extends SpeakingElement {
  static override styles = [tokens, controls, fieldStyles, formStyles];

  /** ISO 8601 with offset. */
  @property() departure: string | undefined;
  @property() timezone: string | undefined;

  #reading = '';
  /** '' stands for the offset that the trip came with. */
  #zone = '';
  #told: string | undefined;
  #toldZone: string | undefined;
  #found: LocalTime | undefined;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('departure') && !changed.has('timezone') && this.hasUpdated) return;
    if (this.hasUpdated && this.departure === this.#told && this.timezone === this.#toldZone) return;
    const { departure, timezone } = this;
    this.#told = departure;
    this.#toldZone = timezone;
    this.#zone = timezone ?? (departure === undefined ? deviceZone() : '');
    this.#reading = departure === undefined ? '' : placeClock({ departure, timezone }).reading(departure);
    this.#found = this.#look();
  }

  override render() {
    const { departure } = this;
    const offset = departure === undefined ? '' : offsetText(placeClock(this).offsetAt(secondsOf(departure)));
    const faulty = this.#found?.kind === 'skipped';
    return html`<div class="fields wide">
      <div class="field">
        <label for="departure">${conditionWords.departure}</label>
        <input
          id="departure"
          type="datetime-local"
          aria-describedby="departure-hint departure-problem"
          aria-invalid=${faulty ? 'true' : nothing}
          .value=${this.#reading}
          @change=${this.#typed}
        />
        <p id="departure-hint" class="hint">${words.hint(offset)}</p>
        <div id="departure-problem" aria-live="polite">${this.#said()}</div>
      </div>
      <div class="field">
        <label for="zone">${words.zone}</label>
        <select id="zone" @change=${this.#zonePicked}>
          ${
            this.timezone === undefined && departure !== undefined
              ? html`<option value="" .selected=${this.#zone === ''}>${words.asWritten(offset)}</option>`
              : nothing
          }
          ${zones(this.#zone).map(
            (zone) => html`<option value=${zone} .selected=${zone === this.#zone}>
              ${zone === deviceZone() ? words.thisDevice(zone) : zone}
            </option>`,
          )}
        </select>
      </div>
    </div>`;
  }

  #said() {
    const found = this.#found;
    switch (found?.kind) {
      case 'skipped': {
        const shown = found.shown.slice(11, 16);
        return html`<p class="problem">${words.skipped(this.#reading.slice(11, 16), shown)}</p>
          <button type="button" @click=${() => this.#take(found.shown)}>${words.takeShown(shown)}</button>`;
      }
      case 'twice': {
        const second = this.departure !== undefined && secondsOf(this.departure) === found.second.seconds;
        return html`<fieldset>
          <legend class="hint">${words.twice}</legend>
          ${[false, true].map((late) => {
            const each = late ? found.second : found.first;
            return html`<label class="check">
              <input
                type="radio"
                name="which"
                .checked=${late === second}
                @change=${() => this.#tell(timeAt(each.seconds, each.offset))}
              />
              <span>${(late ? words.second : words.first)(offsetText(each.offset))}</span>
            </label>`;
          })}
        </fieldset>`;
      }
      case 'no-such-zone':
        return html`<p class="problem">${words.noZone}</p>`;
      default:
        return nothing;
    }
  }

  #typed(event: Event): void {
    this.#reading = (event.target as HTMLInputElement).value;
    this.#work();
  }

  #zonePicked(event: Event): void {
    this.#zone = (event.target as HTMLSelectElement).value;
    this.#work();
  }

  #take(iso: string): void {
    this.#reading = iso.slice(0, 16);
    this.#work();
  }

  #work(): void {
    this.#found = this.#look();
    const found = this.#found;
    if (found?.kind === 'once') this.#tell(timeAt(found.seconds, found.offset));
    else if (found?.kind === 'twice') this.#tell(timeAt(found.first.seconds, found.first.offset));
    else this.#tell(undefined);
  }

  #look(): LocalTime | undefined {
    const [day = '', clock = ''] = this.#reading.slice(0, 16).split('T');
    if (day === '' || clock === '') return undefined;
    if (this.#zone !== '') return localTime(day, clock, this.#zone);
    const { departure } = this;
    if (departure === undefined) return localTime(day, clock, deviceZone());
    // One offset all year, as the trip was written.
    const offset = placeClock({ departure }).offsetAt(0);
    const shown = Date.parse(`${day}T${clock}Z`) / 1000;
    return Number.isNaN(shown) ? { kind: 'no-such-time' } : { kind: 'once', seconds: shown - offset, offset };
  }

  #tell(departure: string | undefined): void {
    const timezone = this.#zone === '' ? undefined : this.#zone;
    this.requestUpdate();
    if (departure === this.departure && timezone === this.timezone) return;
    this.#told = departure;
    this.#toldZone = timezone;
    this.departure = departure;
    this.timezone = timezone;
    const detail = { departure, timezone };
    this.dispatchEvent(new CustomEvent('departure-edited', { detail, bubbles: true }) satisfies DepartureEdited);
  }
}

/** All zones that this browser knows, that of the device and UTC first; one that a trip brings is among them. */
function zones(own: string): readonly string[] {
  const all = Intl.supportedValuesOf('timeZone');
  const brought = own !== '' && zoneOffset(0, own) !== undefined ? [own] : [];
  return [...new Set([deviceZone(), 'UTC', ...brought, ...all])];
}

define('homeleg-departure-field', DepartureField);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-departure-field': DepartureField;
  }
}
