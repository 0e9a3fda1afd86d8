import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { turn } from '../turn.ts';

/**
 * Lets the first picture of an element come in pieces, each in a turn of its own: a slow phone answers a touch between
 * two of them. Later pictures are drawn whole.
 */
export class Stages implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  readonly #last: number;
  #reached = 0;
  #going: Promise<void> | undefined;

  constructor(host: ReactiveControllerHost, last: number) {
    this.#host = host;
    this.#last = last;
    host.addController(this);
  }

  /** Whether a piece is drawn by now; the first is piece 0. */
  shows(stage: number): boolean {
    return stage <= this.#reached;
  }

  /** Done once everything is drawn that was to be drawn first. */
  async whole(): Promise<void> {
    while (this.#going) await this.#going;
  }

  hostUpdated(): void {
    if (this.#reached < this.#last) this.#going ??= this.#goOn();
  }

  async #goOn(): Promise<void> {
    await turn();
    this.#reached++;
    this.#going = undefined;
    this.#host.requestUpdate();
  }
}
