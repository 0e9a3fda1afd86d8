import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { Fitted } from '../../core/trials/fit.ts';
import type { Trials } from '../../core/trials/shapes.ts';

/** Fits the runs when the hand rests; the method is loaded with the first run. */
export class FitMaker implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  #made: Trials | undefined;
  #visit = 0;
  fit: Fitted | undefined;
  /** The method could not be loaded. */
  failed = false;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  hostDisconnected(): void {
    this.#visit++;
    this.#made = undefined;
  }

  make(trials: Trials): void {
    if (trials === this.#made) return;
    this.#made = trials;
    const visit = ++this.#visit;
    if (trials.runs.length === 0 && trials.refills.length === 0) {
      this.fit = undefined;
      return;
    }
    void this.#soon(trials, visit);
  }

  async #soon(trials: Trials, visit: number): Promise<void> {
    try {
      const { fitTrials } = await import('../../core/trials/fit.ts');
      if (visit !== this.#visit) return;
      this.fit = fitTrials(trials);
      this.failed = false;
    } catch {
      if (visit !== this.#visit) return;
      this.failed = true;
    }
    this.#host.requestUpdate();
  }
}
