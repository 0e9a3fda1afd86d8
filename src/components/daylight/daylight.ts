import { html, nothing } from 'lit';
import { property } from 'lit/decorators.js';
import type { Plan } from '../../core/trip/shapes.ts';
import { secondsOf } from '../../core/water/clock.ts';
import { type LightOfTrip, lightOfTrip } from '../../core/water/daylight.ts';
import { endsAtHome } from '../answer/sentences.ts';
import { levelMark } from '../answer/verdict-mark.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { daylightWords as words } from '../words/en-further.ts';
import { daylightStyles } from './daylight.styles.ts';

const LEVEL = { kept: 'note', 'polar-day': 'note', short: 'marginal', dark: 'no-go', 'polar-night': 'no-go' } as const;

/** @summary Whether the planned return is in daylight, by what margin, and when the last light goes. */
export class DaylightLine extends SpeakingElement {
  static override styles = [tokens, daylightStyles];

  @property({ attribute: false }) plan: Plan | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;
  /** ISO 8601 with offset. */
  @property() departure: string | undefined;

  override render() {
    const { plan, departure } = this;
    const place = plan?.legs[0]?.from;
    if (!plan || !place || !Number.isFinite(plan.time)) return nothing;
    if (!departure) return html`<h3>${words.title}</h3><p>${words.none}</p>`;
    const start = secondsOf(departure);
    const light = lightOfTrip(place, { departure: start, home: start + plan.time });
    const level = LEVEL[light.answer];
    const clock = (seconds: number) => this.measures.clock(departure, seconds - start);
    return html`
      <h3>${words.title}</h3>
      <div class="line ${level}">
        ${levelMark(level)}
        <div>
          <p class="told">${this.#told(light, endsAtHome(plan), clock)}</p>
          ${
            light.sunset === undefined
              ? nothing
              : html`<p>${words.times(clock(light.sunset), light.lastLight === undefined ? undefined : clock(light.lastLight))}</p>`
          }
          <p class="rule">${words.rule}</p>
        </div>
      </div>
    `;
  }

  #told({ answer, margin, sunrise }: LightOfTrip, home: boolean, clock: (seconds: number) => string): string {
    const time = this.measures.time(Math.abs(margin ?? 0));
    switch (answer) {
      case 'kept':
        return words.kept(time, home);
      case 'short':
        return words.short(time, home);
      case 'dark':
        if (margin !== undefined) return words.dark(time, home);
        return words.startsDark(sunrise === undefined ? undefined : clock(sunrise));
      case 'polar-day':
        return words.polarDay;
      case 'polar-night':
        return words.polarNight;
      default:
        return answer satisfies never;
    }
  }
}

define('homeleg-daylight', DaylightLine);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-daylight': DaylightLine;
  }
}
