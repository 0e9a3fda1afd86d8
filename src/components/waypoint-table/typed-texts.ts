/** Text in a field that is not (yet) in the route, and what is wrong with it. */
export interface Typed {
  readonly text: string;
  readonly problem?: string;
}

/**
 * What is being typed, by row and field. It outlives every redrawing, or a plan that arrives from a worker would
 * overwrite a half-typed figure, and bad text would be gone before anyone could mend it.
 */
export class TypedTexts {
  #rows = new Map<number, Map<string, Typed>>();
  #versions = new Map<number, number>();

  get(row: number, field: string): Typed | undefined {
    return this.#rows.get(row)?.get(field);
  }

  typed(row: number, field: string, text: string): void {
    const fields = this.#rows.get(row) ?? new Map<string, Typed>();
    this.#rows.set(row, fields.set(field, { text }));
  }

  /** Keeps the text, with what is wrong. */
  refused(row: number, field: string, problem: string): void {
    const text = this.get(row, field)?.text ?? '';
    this.typed(row, field, text);
    this.#rows.get(row)!.set(field, { text, problem });
    this.#changed(row);
  }

  /** The route has it: the field shows the route again. */
  accepted(row: number, field: string): void {
    this.#rows.get(row)?.delete(field);
    this.#changed(row);
  }

  wrong(row: number): boolean {
    return [...(this.#rows.get(row)?.values() ?? [])].some(({ problem }) => problem !== undefined);
  }

  /** Another figure whenever the row has to be drawn again. */
  version(row: number): number {
    return this.#versions.get(row) ?? 0;
  }

  #changed(row: number): void {
    this.#versions.set(row, this.version(row) + 1);
  }
}
