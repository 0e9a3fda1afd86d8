import { html, nothing, type ReactiveControllerHost } from 'lit';
import type { Waters } from '../../core/route/waters.ts';
import type { Trip } from '../../core/trip/shapes.ts';
import type { Measures } from '../units/measures.ts';
import type { Layers } from './map-layers.ts';
import { mapWords as words } from './words.ts';

/** What the outline of ranges is drawn for. */
export interface HowFarOf {
  readonly trip: Trip | undefined;
  readonly chart: Waters | undefined;
  readonly measures: Measures;
}

/** The switch for the outline of ranges; what it shows is loaded with the first press. */
export class HowFar {
  #host: ReactiveControllerHost;
  #state: 'no' | 'loading' | 'shown' = 'no';

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
  }

  get shown(): boolean {
    return this.#state === 'shown';
  }

  button() {
    return html`<button type="button" aria-pressed=${this.#state !== 'no'} @click=${this.#pressed}>
      ${words.howFar}
    </button>`;
  }

  panel({ trip, chart, measures }: HowFarOf, layers: Layers | undefined) {
    if (!this.shown) return nothing;
    return html`<homeleg-outline-panel
      .trip=${trip}
      .waters=${chart}
      .measures=${measures}
      .map=${layers?.map}
      .leaflet=${layers?.leaflet}
      ?live=${layers?.editor.busy ?? false}
    ></homeleg-outline-panel>`;
  }

  #pressed = async (): Promise<void> => {
    const wanted = this.#state === 'no';
    this.#become(wanted ? 'loading' : 'no');
    if (!wanted) return;
    const loaded = await import('./outline-panel.ts').then(
      () => true,
      () => false,
    );
    // Pressed again while it was loading: not wanted any more.
    if (this.#loading()) this.#become(loaded ? 'shown' : 'no');
  };

  #loading(): boolean {
    return this.#state === 'loading';
  }

  #become(state: 'no' | 'loading' | 'shown'): void {
    this.#state = state;
    this.#host.requestUpdate();
  }
}
