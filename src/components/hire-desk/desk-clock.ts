import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** Minutes are shown, so a look every quarter of one is enough between the times asked for; ms. */
const LOOK = 15_000;

/**
 * The time of this computer, s since 1970: drawn anew as it passes and at once when the page is looked at again or the
 * computer wakes. Timers of a page in the background may be late; nothing is counted from them.
 */
export class DeskClock implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  readonly #next: (now: number) => number | undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;
  now = Date.now() / 1000;

  /** `next` says when something changes by the clock alone. */
  constructor(host: ReactiveControllerHost, next: (now: number) => number | undefined) {
    this.#host = host;
    this.#next = next;
    host.addController(this);
  }

  hostConnected(): void {
    for (const type of ['focus', 'pageshow', 'online']) window.addEventListener(type, this.look);
    document.addEventListener('visibilitychange', this.look);
    this.look();
  }

  hostDisconnected(): void {
    for (const type of ['focus', 'pageshow', 'online']) window.removeEventListener(type, this.look);
    document.removeEventListener('visibilitychange', this.look);
    clearTimeout(this.#timer);
  }

  readonly look = (): void => {
    clearTimeout(this.#timer);
    this.now = Date.now() / 1000;
    const next = this.#next(this.now);
    const wait = next === undefined ? LOOK : Math.min(Math.max((next - this.now) * 1000 + 50, 50), LOOK);
    this.#timer = setTimeout(this.look, wait);
    this.#host.requestUpdate();
  };
}
