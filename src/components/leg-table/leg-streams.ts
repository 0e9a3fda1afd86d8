import { html, nothing } from 'lit';
import { property } from 'lit/decorators.js';
import type { Route } from '../../core/route/shapes.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { labelledChoice } from '../open-text/column-choice.ts';
import { controls } from '../theme/controls.styles.ts';
import { formStyles } from '../theme/form.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { legWords as words } from './words.ts';

/** Whose stream the leg that starts at a waypoint takes; undefined: the nearest. */
export type StreamPicked = CustomEvent<{ waypoint: number; name: string | undefined }>;

/**
 * @summary For each drawn leg the place whose stream by tide it takes. It needs no plan: a place that is gone leaves none.
 * @fires stream-picked - another place for a leg
 */
export class LegStreams extends SpeakingElement {
  static override styles = [tokens, controls, formStyles];

  @property({ attribute: false }) route: Route | undefined;
  /** Names of the places there are. */
  @property({ attribute: false }) places: readonly string[] = [];

  override render() {
    const { route, places } = this;
    const waypoints = route?.waypoints ?? [];
    const count = route?.shape === 'loop' ? waypoints.length : waypoints.length - 1;
    const picked = waypoints.slice(0, count).filter(({ streamPlace }) => streamPlace !== undefined).length;
    if (!route || waypoints.length < 2 || (places.length === 0 && picked === 0)) return nothing;
    return html`<details>
      <summary>${words.streams(picked)}</summary>
      <p class="hint">${words.streamsHint}${route.shape === 'out-and-home' ? ` ${words.streamsHome}` : nothing}</p>
      <div class="fields wide">
        ${waypoints.slice(0, count).map(({ streamPlace }, i) => {
          const next = waypoints[i + 1]?.name;
          return this.#choice(
            i,
            next ? words.streamTo(String(i + 1), next) : words.streamOf(String(i + 1)),
            streamPlace,
          );
        })}
      </div>
    </details>`;
  }

  #choice(waypoint: number, label: string, now: string | undefined) {
    const gone = now !== undefined && !this.places.includes(now);
    return html`<div class="field">
      ${labelledChoice({
        id: `leg-${waypoint}`,
        label,
        options: [
          ['', words.streamNearest],
          ...this.places.map((name) => [`=${name}`, name] as const),
          ...(gone ? [[`=${now}`, words.streamGone(now)] as const] : []),
        ],
        now: now === undefined ? '' : `=${now}`,
        chosen: (value) => this.#tell(waypoint, value === '' ? undefined : value.slice(1)),
      })}
    </div>`;
  }

  #tell(waypoint: number, name: string | undefined): void {
    const detail = { waypoint, name };
    this.dispatchEvent(
      new CustomEvent('stream-picked', { detail, bubbles: true, composed: true }) satisfies StreamPicked,
    );
  }
}

define('homeleg-leg-streams', LegStreams);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-leg-streams': LegStreams;
  }
}
