import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { AlarmSound } from './alarm-sound.ts';

/** Between two rings, s: a late boat is heard about once a minute. */
const RING_EVERY = 55;

/** Overdue boats in the title of the page, where one in the background is seen, and by sound once it was allowed. */
export class OverdueWarning implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  readonly #sound = new AlarmSound();
  #rangAt = 0;
  #title: string | undefined;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  get soundOn(): boolean {
    return this.#sound.on;
  }

  hostDisconnected(): void {
    this.#sound.stop();
    this.#titled(undefined);
  }

  /** `text` says what is late; undefined where nothing is. */
  tell(text: string | undefined, now: number): void {
    this.#titled(text);
    if (text === undefined || now - this.#rangAt < RING_EVERY) return;
    this.#rangAt = now;
    this.#sound.ring();
  }

  readonly pressed = (): void => {
    if (this.#sound.on) this.#sound.stop();
    else this.#sound.start();
    this.#host.requestUpdate();
  };

  #titled(text: string | undefined): void {
    if (text === undefined) {
      if (this.#title !== undefined) document.title = this.#title;
      this.#title = undefined;
      return;
    }
    this.#title ??= document.title;
    document.title = `${text}: ${this.#title}`;
  }
}
