import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** How long the page may be kept from answering, ms. */
const SLICE = 12;

/** Tells a piece of work whether to go on: pauses where it has kept the page too long, false where a newer one waits. */
export type GoOn = () => Promise<boolean>;

/** Starts work once the hand rests, the first at once; newer work takes the place of older. */
export class AfterRest implements ReactiveController {
  readonly #rest: number;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #newest = 0;
  #unfinished: ((goOn: GoOn) => Promise<void>) | undefined;

  /** `rest` in ms. */
  constructor(host: ReactiveControllerHost, rest: number) {
    this.#rest = rest;
    host.addController(this);
  }

  /** An element that was only moved in the page takes up what it was at. */
  hostConnected(): void {
    if (this.#unfinished) this.start(this.#unfinished);
  }

  hostDisconnected(): void {
    clearTimeout(this.#timer);
    this.#newest++;
  }

  start(work: (goOn: GoOn) => Promise<void>): void {
    const mine = ++this.#newest;
    this.#unfinished = work;
    let since = 0;
    const goOn: GoOn = async () => {
      if (mine !== this.#newest) return false;
      if (performance.now() - since < SLICE) return true;
      await new Promise((resolve) => setTimeout(resolve));
      since = performance.now();
      return mine === this.#newest;
    };
    clearTimeout(this.#timer);
    this.#timer = setTimeout(
      () => {
        since = performance.now();
        void work(goOn).then(() => {
          if (mine === this.#newest) this.#unfinished = undefined;
        });
      },
      mine === 1 ? 0 : this.#rest,
    );
  }
}
