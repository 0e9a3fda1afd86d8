import { nothing, type ReactiveControllerHost } from 'lit';
import type { LegPlan, Trip } from '../../core/trip/shapes.ts';
import type { FlowArrows } from './flow-arrows.ts';
import type { Layers } from './map-layers.ts';

type Host = ReactiveControllerHost & { readonly renderRoot: HTMLElement | DocumentFragment };
type Drawn = readonly [Layers, readonly LegPlan[] | undefined, Trip | undefined];

/** Arrows of wind and stream beside the route, loaded with the first plan that has any. */
export class WindAndStream {
  #host: Host;
  #part: typeof import('./flow-arrows.ts') | undefined;
  #asked = false;
  #arrows: FlowArrows | undefined;
  #drawn: Drawn | undefined;
  #keyed = '';

  constructor(host: Host) {
    this.#host = host;
  }

  /** Their signs in the key of the map. */
  key() {
    return this.#arrows?.key() ?? nothing;
  }

  /** Without legs, as while the route is being dragged, there are none. */
  draw(...drawn: Drawn): void {
    this.#drawn = drawn;
    const [{ map, leaflet }, legs, trip] = drawn;
    if (!this.#part) {
      const some = typeof trip?.conditions.wind === 'object' || legs?.some(({ stream }) => stream !== undefined);
      if (some && !this.#asked) void this.#load();
      return;
    }
    const { FlowArrows: Arrows, flowsOf } = this.#part;
    if (this.#arrows?.map !== map) this.#arrows = new Arrows(map, leaflet, this.#host.renderRoot as ShadowRoot);
    this.#arrows.draw(legs && trip ? flowsOf(legs, trip) : []);
    const keyed = this.#arrows.kinds.join();
    if (keyed !== this.#keyed) this.#host.requestUpdate();
    this.#keyed = keyed;
  }

  async #load(): Promise<void> {
    this.#asked = true;
    this.#part = await import('./flow-arrows.ts').catch(() => undefined);
    if (this.#part && this.#drawn) this.draw(...this.#drawn);
    else this.#asked = false;
  }
}
