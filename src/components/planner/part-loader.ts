import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { loadPart, type Part } from './parts.ts';

/** How near to the window a part is loaded, px. */
const NEAR = '600px';

/** Loads the parts of the planner as they come near the window; parts that failed are tried again when shown again. */
export class PartLoader implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  readonly #loaded: (part: Part) => void;
  readonly #asked = new Set<Part>();
  readonly failed = new Set<Part>();
  #watch: IntersectionObserver | undefined;

  /** `loaded` hears of each part that came. */
  constructor(host: ReactiveControllerHost, loaded: (part: Part) => void) {
    this.#host = host;
    this.#loaded = loaded;
    host.addController(this);
  }

  hostDisconnected(): void {
    this.#watch?.disconnect();
    this.#watch = undefined;
  }

  /** Loads a part once `place` comes near; places already watched or loaded stay as they are. */
  near(place: Element, part: Part): void {
    if (this.#asked.has(part)) return;
    if (typeof IntersectionObserver === 'undefined') {
      void this.load(part);
      return;
    }
    this.#watch ??= new IntersectionObserver(
      (seen) => {
        for (const { isIntersecting, target } of seen) {
          if (!isIntersecting) continue;
          this.#watch?.unobserve(target);
          void this.load((target as HTMLElement).dataset.part as Part);
        }
      },
      { rootMargin: NEAR },
    );
    this.#watch.observe(place);
  }

  async load(part: Part): Promise<void> {
    if (this.#asked.has(part)) return;
    this.#asked.add(part);
    const loaded = await loadPart(part);
    if (loaded) this.#loaded(part);
    if (!loaded) {
      this.#asked.delete(part);
      this.failed.add(part);
      this.#host.requestUpdate();
    } else if (this.failed.delete(part)) {
      this.#host.requestUpdate();
    }
  }
}
