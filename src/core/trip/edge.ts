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
    let next = guess ?? high;
    let before = this.#good;
    for (let probe = 0; probe < PROBES; probe++) {
      const at = Math.min(Math.max(next, low), high);
      const held = this.holds(at);
      const good = this.#good;
      const bad = this.#bad;
      if (good && good.at >= high) return;
      if (bad && bad.at <= low) return;
      if (good && bad) {
        if (bad.at - good.at <= step / 3) return;
        if (good.slack === undefined || bad.slack === undefined || !(good.slack > bad.slack)) return;
        const root = good.at + ((bad.at - good.at) * good.slack) / (good.slack - bad.slack);
        // A little to the other side, so that both sides come near.
        const aim = root + (held ? step / 8 : -step / 8);
        const rim = Math.min(step / 16, (bad.at - good.at) / 4);
        next = Math.min(Math.max(aim, good.at + rim), bad.at - rim);
      } else if (good) {
        const fall = before && before.at < good.at ? slope(before, good) : undefined;
        const reach =
          fall !== undefined && fall < 0 && good.slack !== undefined ? (-1.1 * good.slack) / fall : Infinity;
        next = good.at + Math.min(Math.max(reach, step), 4 * (good.at - (before?.at ?? low)) + 4 * step);
        before = good;
      } else return;
    }
  }
}

function slope(a: Known, b: Known): number | undefined {
  return a.slack === undefined || b.slack === undefined ? undefined : (b.slack - a.slack) / (b.at - a.at);
}
