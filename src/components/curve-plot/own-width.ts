import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** Tells an element how wide it is and how large its letters are, px, and redraws it when either changes. */
export class OwnWidth implements ReactiveController {
  /** 0 until the element has been laid out. */
  width = 0;
  fontSize = 16;
  readonly #host: ReactiveControllerHost & HTMLElement;
  #observer: ResizeObserver | undefined;

  constructor(host: ReactiveControllerHost & HTMLElement) {
    this.#host = host;
    host.addController(this);
  }

  hostConnected(): void {
    this.#observer = new ResizeObserver(([entry]) => {
      const width = Math.floor(entry?.contentRect.width ?? 0);
      const fontSize = Number.parseFloat(getComputedStyle(this.#host).fontSize) || 16;
      if (width === 0 || (width === this.width && fontSize === this.fontSize)) return;
      this.width = width;
      this.fontSize = fontSize;
      this.#host.requestUpdate();
    });
    this.#observer.observe(this.#host);
  }

  hostDisconnected(): void {
    this.#observer?.disconnect();
    this.#observer = undefined;
  }
}
