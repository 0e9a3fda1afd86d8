import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** Minutes are shown, so a look every quarter of one is enough between the times asked for; ms. */
const LOOK = 15_000;
/** A computer that sets its clock by the network moves it by less, s. */
export const SLIGHT = 60;

/**
 * The time of this computer, s since 1970: drawn anew as it passes and at once when the page is looked at again or the
 * computer wakes. Timers of a page in the background may be late; nothing is counted from them.
 */
export class DeskClock implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  readonly #next: (now: number) => number | undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;
  now = Date.now() / 1000;
  /** How far the clock was put back while the page was open, s; a clock that goes on while nothing runs only slept. */
  putBack = 0;
  #steady = performance.now() / 1000;

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

  /** Whoever is at the desk has looked at the times. */
  accept(): void {
    this.putBack = 0;
    this.#host.requestUpdate();
  }

  readonly look = (): void => {
    clearTimeout(this.#timer);
    const [wall, steady] = [Date.now() / 1000, performance.now() / 1000];
    const behind = this.now + (steady - this.#steady) - wall;
    if (behind > SLIGHT) this.putBack += behind;
    this.now = wall;
    this.#steady = steady;
    const next = this.#next(this.now);
    const wait = next === undefined ? LOOK : Math.min(Math.max((next - this.now) * 1000 + 50, 50), LOOK);
    this.#timer = setTimeout(this.look, wait);
    this.#host.requestUpdate();
  };
}
