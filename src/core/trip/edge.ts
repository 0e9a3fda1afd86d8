import { type Halving, lastCell } from './bisect.ts';

/** Whether a condition holds; and, where it can be told, how far it is from turning: above 0 while it holds. */
export interface Answer {
  readonly holds: boolean;
  readonly slack?: number;
}

interface Known {
  readonly at: number;
  readonly slack: number | undefined;
}

/** Probes before plain halving takes over. */
const PROBES = 8;

/**
 * Where a costly condition turns that only fails upwards. What was answered once is not asked again, nor is anything
 * below a value that holds or above one that does not.
 */
export class Edge {
  readonly #ask: (value: number) => Answer;
  #good: Known | undefined;
  #bad: Known | undefined;

  constructor(ask: (value: number) => Answer) {
    this.#ask = ask;
  }

  /** Takes an answer that is known already. */
  learn(at: number, { holds, slack }: Answer): void {
    const known = { at, slack: slack !== undefined && Number.isFinite(slack) ? slack : undefined };
    if (holds) {
      if (!this.#good || at > this.#good.at) this.#good = known;
    } else if (!this.#bad || at < this.#bad.at) this.#bad = known;
  }

  holds(value: number): boolean {
    if (this.#good && value <= this.#good.at) return true;
    if (this.#bad && value >= this.#bad.at) return false;
    const answer = this.#ask(value);
    this.learn(value, answer);
    return answer.holds;
  }

  /**
   * Closes in on the edge between `low` and `high` by secants on the slack, until a halving has nothing left to ask. Only
   * values are probed at which that halving would, so that none is probed for its own sake.
   */
  closeIn(low: number, high: number, { within, guess }: { readonly within: Halving; readonly guess?: number }): void {
    if (!this.#good && !this.holds(low)) return;
    let next = guess ?? high;
    // Of each side the last but one, for secants where all probes fall on the same side.
    let goodBefore: Known | undefined;
    let badBefore: Known | undefined;
    for (let probe = 0; probe < PROBES; probe++) {
      const at = this.#beside(Math.min(Math.max(next, low), high), within);
      if (at === undefined) return;
      const [goodWas, badWas] = [this.#good, this.#bad];
      const held = this.holds(Math.min(Math.max(at, low), high));
      const [good, bad] = [this.#good, this.#bad];
      if (!good || good.at >= high || (bad && bad.at <= low)) return;
      if (good !== goodWas) goodBefore = goodWas;
      if (bad !== badWas) badBefore = badWas;
      if (!bad) {
        const root = rootOf(goodBefore, good) ?? Infinity;
        const far = 4 * (good.at - (goodBefore?.at ?? low)) + 4 * within.step;
        next = good.at + Math.min(Math.max(root - good.at, 0), far);
        continue;
      }
      const straight = rootOf(good, bad);
      if (straight === undefined) return;
      const bent = held ? rootOf(goodBefore, good) : rootOf(bad, badBefore);
      next = bent !== undefined && bent > good.at && bent < bad.at ? bent : straight;
    }
  }

  /** Of the two values of a halving about this one the nearer that is not known; undefined: both are. */
  #beside(value: number, within: Halving): number | undefined {
    const cell = lastCell((middle) => middle <= value, within);
    const unknown = cell.filter((at) => !(this.#good && at <= this.#good.at) && !(this.#bad && at >= this.#bad.at));
    const [a, b] = unknown;
    return a === undefined || b === undefined || value - a <= b - value ? a : b;
  }
}

/** Where the straight line through two known slacks, the first at the lower value, comes to nothing. */
function rootOf(a: Known | undefined, b: Known | undefined): number | undefined {
  if (a?.slack === undefined || b?.slack === undefined || !(a.at < b.at) || !(a.slack > b.slack)) return undefined;
  return a.at + ((b.at - a.at) * a.slack) / (a.slack - b.slack);
}
