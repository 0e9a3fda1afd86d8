import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** Rest after the last change before work begins, and longest stretch of work before the page gets its turn, ms. */
const REST = 350;
const STRETCH = 8;

/**
 * Slow work in short stretches: begins when the hand rests, is broken off when asked anew or when the element goes, and
 * has the last result until the next is there.
 */
export class Unhurried<T> implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #visit = 0;
  result: T | undefined;
  working = false;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  hostDisconnected(): void {
    this.drop();
  }

  /** Breaks off what is going on; `result` stays. */
  drop(): void {
    clearTimeout(this.#timer);
    this.#visit++;
    this.working = false;
  }

  /** Each step of `work` is a piece; the last value it yields or returns is the result. */
  start(work: () => Generator<unknown, T, void>, rest = REST): void {
    this.drop();
    const visit = this.#visit;
    this.working = true;
    this.#timer = setTimeout(() => this.#go(work(), visit), rest);
  }

  #go(steps: Generator<unknown, T, void>, visit: number): void {
    if (visit !== this.#visit) return;
    const until = performance.now() + STRETCH;
    for (;;) {
      const step = steps.next();
      if (step.done) {
        this.result = step.value;
        this.working = false;
        this.#host.requestUpdate();
        return;
      }
      if (performance.now() >= until) break;
    }
    this.#timer = setTimeout(() => this.#go(steps, visit), 0);
  }
}
