import { nothing, type ReactiveController, type ReactiveControllerHost } from 'lit';
import { turn } from './turn.ts';

/**
 * Brings the parts of a long element to the screen one after the other, each in a turn of its own: all of them at once
 * would keep a slow phone from answering. The first comes with the element; what has come changes at once.
 */
export class InTurns implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  readonly #parts: () => number;
  #there = 1;
  #coming: Promise<void> | undefined;

  constructor(host: ReactiveControllerHost, parts: () => number) {
    this.#host = host;
    this.#parts = parts;
    host.addController(this);
  }

  hostUpdated(): void {
    if (this.#there < this.#parts()) this.#coming ??= this.#next();
  }

  /** What part `at`, counted from 0, shows once its turn has come. */
  part<T>(at: number, show: () => T): T | typeof nothing {
    return at < this.#there ? show() : nothing;
  }

  /** Done once all parts have come. */
  async whole(): Promise<void> {
    while (this.#coming) await this.#coming;
  }

  async #next(): Promise<void> {
    await turn();
    this.#there++;
    this.#coming = undefined;
    this.#host.requestUpdate();
  }
}
