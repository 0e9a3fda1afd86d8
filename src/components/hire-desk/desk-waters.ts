import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { Fleet } from '../../core/hire/shapes.ts';
import { prepareWaters, type Waters } from '../../core/route/waters.ts';
import { fetchWaters } from '../planner/fetch-waters.ts';

/** The waters of a fleet, fetched and made ready when it names others. */
export class DeskWaters implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  #of: string | undefined;
  now: Waters | undefined;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  hostConnected(): void {}

  async look({ waters, localWaters }: Fleet): Promise<void> {
    const key = localWaters ? JSON.stringify(localWaters) : (waters ?? '');
    if (key === this.#of) return;
    this.#of = key;
    const file = localWaters ?? (waters ? await fetchWaters(waters) : undefined);
    if (key !== this.#of) return;
    this.now = file && prepareWaters(file);
    this.#host.requestUpdate();
  }
}
