import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { OnPaper } from './on-paper.ts';

/** Drawings are made no wider than this for paper, px, so that their letters stay readable there. */
const PAPER = 680;

/** Tells an element how wide it is and how large its letters are, px, and redraws it when either changes. */
export class OwnWidth implements ReactiveController {
  fontSize = 16;
  readonly #host: ReactiveControllerHost & HTMLElement;
  readonly #paper: OnPaper;
  #measured = 0;
  #observer: ResizeObserver | undefined;

  constructor(host: ReactiveControllerHost & HTMLElement) {
    this.#host = host;
    this.#paper = new OnPaper(host);
    host.addController(this);
  }

  /** 0 until the element has been laid out. */
  get width(): number {
    return this.#paper.now ? Math.min(this.#measured, PAPER) : this.#measured;
  }

  hostConnected(): void {
    this.#observer = new ResizeObserver(([entry]) => this.#sized(entry?.contentRect.width ?? 0));
    this.#observer.observe(this.#host);
  }

  hostDisconnected(): void {
    this.#observer?.disconnect();
    this.#observer = undefined;
  }

  #sized(px: number): void {
    const width = Math.floor(px);
    const fontSize = Number.parseFloat(getComputedStyle(this.#host).fontSize) || 16;
    if (width === 0 || (width === this.#measured && fontSize === this.fontSize)) return;
    this.#measured = width;
    this.fontSize = fontSize;
    this.#host.requestUpdate();
  }
}
