import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { keepSheet } from './kept-waters.ts';
import type { Sheet } from './sheet.ts';

/** How long the hand has to rest, ms. */
const REST = 400;

/** Keeps what is drawn on the device once the hand rests, and at once when the page goes. */
export class SheetKeeper implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  #waiting: Sheet | undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;
  /** The browser kept nothing the last time. */
  failed = false;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  hostConnected(): void {
    window.addEventListener('pagehide', this.#now);
  }

  hostDisconnected(): void {
    window.removeEventListener('pagehide', this.#now);
    this.#now();
  }

  keep(sheet: Sheet): void {
    this.#waiting = sheet;
    clearTimeout(this.#timer);
    this.#timer = setTimeout(this.#now, REST);
  }

  readonly #now = (): void => void this.#write();

  async #write(): Promise<void> {
    const sheet = this.#waiting;
    if (!sheet) return;
    clearTimeout(this.#timer);
    this.#waiting = undefined;
    this.failed = !(await keepSheet(sheet));
    this.#host.requestUpdate();
  }
}
