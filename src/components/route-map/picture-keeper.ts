import { nothing, type ReactiveControllerHost } from 'lit';
import { STREET_MAP } from './tiles.ts';

/**
 * Whether pictures of the street map stay on the device once seen: off until the reader ticks it, and offered only where
 * the worker of the site can do it. Loaded when the street map is first shown.
 */
export class PictureKeeper {
  readonly #host: ReactiveControllerHost;
  #part: typeof import('./kept-pictures.ts') | undefined;
  #asked = false;
  #offered = false;
  /** Undefined until it is known; pictures asked for before are not kept. */
  on: boolean | undefined;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
  }

  /** The choice, where these pictures can be kept. */
  choice(url: string | undefined) {
    if (url !== STREET_MAP) return nothing;
    if (!this.#asked) void this.#load();
    if (!this.#part || !this.#offered) return nothing;
    return this.#part.keepChoice(this.on === true, (on) => void this.#keep(on));
  }

  async #load(): Promise<void> {
    this.#asked = true;
    try {
      this.#part = await import('./kept-pictures.ts');
      this.#offered = await this.#part.mayKeep();
      this.on = this.#offered && (await this.#part.picturesKept());
    } catch {
      // Without storage or network the map goes on as it is.
      this.#offered = false;
    }
    this.#host.requestUpdate();
  }

  async #keep(on: boolean): Promise<void> {
    this.on = on;
    try {
      await this.#part?.keepPictures(on);
    } catch {
      this.on = false;
    }
    this.#host.requestUpdate();
  }
}
