import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** Redraws an element when the page is about to be printed, and again when it is back on the screen. */
export class OnPaper implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  #print: MediaQueryList | undefined;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  get now(): boolean {
    return this.#print?.matches ?? false;
  }

  hostConnected(): void {
    this.#print = matchMedia('print');
    this.#print.addEventListener('change', this.#turned);
  }

  hostDisconnected(): void {
    this.#print?.removeEventListener('change', this.#turned);
    this.#print = undefined;
  }

  readonly #turned = (): void => this.#host.requestUpdate();
}
