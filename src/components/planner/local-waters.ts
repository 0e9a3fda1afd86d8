import type { ReactiveControllerHost } from 'lit';
import type { WatersFile } from '../../core/route/shapes.ts';
import { fetchWaters } from './fetch-waters.ts';

/** The waters under the route: given by the page, or fetched by name or address. */
export class LocalWaters {
  readonly #host: ReactiveControllerHost;
  #visit = 0;
  file: WatersFile | undefined;
  failed = false;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
  }

  async fetch(name: string, given: WatersFile | undefined): Promise<void> {
    const visit = ++this.#visit;
    this.failed = false;
    if (given || name === 'none' || name === '') {
      this.file = given;
      return;
    }
    const file = await fetchWaters(name);
    if (visit !== this.#visit) return;
    this.failed = file === undefined;
    this.file = file;
    this.#host.requestUpdate();
  }
}
