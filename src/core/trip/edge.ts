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

  /** Closes in on the edge between `low` and `high` by secants on the slack, until it is known to a third of `step`. */
  closeIn(low: number, high: number, { step, guess }: { readonly step: number; readonly guess?: number }): void {
    if (!this.#good && !this.holds(low)) return;
    let next = guess ?? high;
    // Of each side the last but one, for secants where all probes fall on the same side.
    let goodBefore: Known | undefined;
    let badBefore: Known | undefined;
    for (let probe = 0; probe < PROBES; probe++) {
      const [goodWas, badWas] = [this.#good, this.#bad];
      const held = this.holds(Math.min(Math.max(next, low), high));
      const [good, bad] = [this.#good, this.#bad];
      if (!good || good.at >= high || (bad && bad.at <= low)) return;
      if (good !== goodWas) goodBefore = goodWas;
      if (bad !== badWas) badBefore = badWas;
      if (!bad) {
        const root = rootOf(goodBefore, good) ?? Infinity;
        const far = 4 * (good.at - (goodBefore?.at ?? low)) + 4 * step;
        next = good.at + Math.min(Math.max(1.1 * (root - good.at), step), far);
        continue;
      }
      if (bad.at - good.at <= step / 3) return;
      const straight = rootOf(good, bad);
      if (straight === undefined) return;
      const bent = held ? rootOf(goodBefore, good) : rootOf(bad, badBefore);
      const root = bent !== undefined && bent > good.at && bent < bad.at ? bent : straight;
      // A little to the other side, so that both sides come near.
      const rim = Math.min(step / 16, (bad.at - good.at) / 4);
      next = Math.min(Math.max(root + (held ? step / 8 : -step / 8), good.at + rim), bad.at - rim);
    }
  }
}

/** Where the straight line through two known slacks, the first at the lower value, comes to nothing. */
function rootOf(a: Known | undefined, b: Known | undefined): number | undefined {
  if (a?.slack === undefined || b?.slack === undefined || !(a.at < b.at) || !(a.slack > b.slack)) return undefined;
  return a.at + ((b.at - a.at) * a.slack) / (a.slack - b.slack);
}
