import type { Sheet } from './sheet.ts';

const STEPS = 100;
/** Changes of the same field this close together are one step, such as the letters of a name; ms. */
const TOGETHER = 1200;

/** Undo and redo over a whole sheet; a step is a few references, since sheets share most of their parts. */
export class SheetHistory {
  #past: Sheet[] = [];
  #future: Sheet[] = [];
  #last: { readonly field: string; readonly at: number } | undefined;

  get canUndo(): boolean {
    return this.#past.length > 0;
  }

  get canRedo(): boolean {
    return this.#future.length > 0;
  }

  /** Takes note of the sheet before a change; `field` names what was typed in, `at` is a time in ms. */
  changed(before: Sheet, field: string, at: number): void {
    const goesOn = field !== '' && this.#last?.field === field && at - this.#last.at < TOGETHER;
    if (!goesOn || this.#past.length === 0) this.#past = [...this.#past, before].slice(-STEPS);
    this.#future = [];
    this.#last = { field, at };
  }

  undo(now: Sheet): Sheet | undefined {
    return this.#step(this.#past, this.#future, now);
  }

  redo(now: Sheet): Sheet | undefined {
    return this.#step(this.#future, this.#past, now);
  }

  #step(from: Sheet[], onto: Sheet[], now: Sheet): Sheet | undefined {
    const next = from.pop();
    this.#last = undefined;
    if (next) onto.push(now);
    return next;
  }
}
