/** Figures drawn by a law of our own (a multiplicative generator of Park and Miller 1988), so that no change of the core moves them. */
export class Drawn {
  #state: number;

  constructor(seed: number) {
    this.#state = (seed * 48271 + 11) % 2147483647;
    for (let i = 0; i < 5; i++) this.#next();
  }

  /** Of the range, to three digits, as somebody might type it. */
  between(low: number, high: number): number {
    return Number((low + (high - low) * this.#next()).toPrecision(4));
  }

  of<T>(list: readonly T[]): T {
    return list[Math.floor(this.#next() * list.length)]!;
  }

  chance(share: number): boolean {
    return this.#next() < share;
  }

  #next(): number {
    this.#state = (this.#state * 48271) % 2147483647;
    return this.#state / 2147483647;
  }
}
