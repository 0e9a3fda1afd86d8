/**
 * What is left on the way of a trip that fills up at landings, kg or J: it falls with what is used and rises to what
 * it is filled to. The need of such a trip is what would have had to be aboard at departure to come to the same least.
 */
export class Level {
  readonly #start: number;
  #left: number;
  /** Used since it was last filled. */
  #since = 0;
  #least = Infinity;
  #used = 0;

  constructor(start: number) {
    this.#start = start;
    this.#left = start;
  }

  draw(use: number): void {
    this.#left -= use;
    this.#since += use;
    this.#note();
  }

  /** Nothing is let out where more is aboard. */
  fillTo(amount: number): void {
    if (amount <= this.#left) return;
    this.#left = amount;
    this.#since = 0;
  }

  get need(): number {
    return this.#start - this.#least;
  }

  /** Used since the last filling where least was left: all that the need can be wrong about. */
  get unsure(): number {
    return this.#used;
  }

  #note(): void {
    if (this.#left >= this.#least) return;
    this.#least = this.#left;
    this.#used = this.#since;
  }
}
