import { html } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { LatLon } from '../../core/route/shapes.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import type { NamedText } from '../open-text/text-source.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { windWords as words } from '../words/en-wind.ts';
import { fetchForecast, forecastHost } from './fetch-forecast.ts';

/** The service answered; nothing of it counts yet. */
export type ForecastFetched = CustomEvent<NamedText>;

/**
 * @summary Asks the forecast service that the host names, at a press and for the start of the route.
 * @fires forecast-fetched - its answer is there
 */
export class ForecastFetch extends SpeakingElement {
  static override styles = [tokens, controls];

  /** Address of a forecast with {lat} and {lon}. */
  @property() source = '';
  @property({ attribute: false }) place: LatLon | undefined;
  /** ISO 8601 with offset. */
  @property() departure: string | undefined;
  /** How long the trip takes at its slowest, s. */
  @property({ attribute: false }) duration: number | undefined;

  @state() private fetching: AbortController | undefined;
  @state() private message = '';

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#stopped();
  }

  override render() {
    const busy = this.fetching !== undefined;
    return html`
      <button type="button" ?disabled=${!this.place && !busy} @click=${busy ? this.#stopped : this.#wanted}>
        ${busy ? words.fetchCancel : words.fetch}
      </button>
      <p class="hint" role="status">
        ${busy ? words.fetching : this.place ? words.fetchNote(forecastHost(this.source)) : words.fetchNoPlace}
      </p>
      <p role="status" class="problem" ?hidden=${!this.message}>${this.message}</p>
    `;
  }

  async #wanted(): Promise<void> {
    const { place, source, departure, duration } = this;
    if (!place) return;
    this.message = '';
    const stop = new AbortController();
    this.fetching = stop;
    const found = await fetchForecast(source, place, { departure, duration }, stop.signal);
    if (this.fetching !== stop) return;
    this.fetching = undefined;
    if (!found.ok) {
      this.message = found.problems.map(({ message }) => `${message}.`).join(' ');
      return;
    }
    const detail = { text: found.value, name: forecastHost(source) };
    this.dispatchEvent(new CustomEvent('forecast-fetched', { detail }) satisfies ForecastFetched);
  }

  #stopped(): void {
    this.fetching?.abort();
    this.fetching = undefined;
  }
}

define('homeleg-forecast-fetch', ForecastFetch);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-forecast-fetch': ForecastFetch;
  }
}
