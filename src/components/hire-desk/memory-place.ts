import type { FuelNote, Hire } from '../../core/hire/shapes.ts';
import type { DeskPlace, Kept, NoteOf, Replacement, Single } from './desk-place.ts';

/** Keeps a desk as long as the page is open, where the browser keeps nothing. */
export class MemoryPlace implements DeskPlace {
  readonly #singles = new Map<Single, unknown>();
  readonly #hires = new Map<string, Hire>();
  readonly #notes = new Map<string, FuelNote>();

  async all(): Promise<Kept> {
    return {
      singles: Object.fromEntries(this.#singles),
      hires: [...this.#hires.values()],
      notes: [...this.#notes.values()],
    };
  }

  async put(name: Single, value: unknown): Promise<void> {
    this.#singles.set(name, value);
  }

  async remove(name: Single): Promise<void> {
    this.#singles.delete(name);
  }

  async addHire(hire: Hire): Promise<void> {
    this.#hires.set(hire.id, hire);
  }

  async changeHire(id: string, change: (kept: unknown) => Hire | undefined, note?: NoteOf): Promise<Hire | undefined> {
    const changed = change(this.#hires.get(id));
    if (!changed) return undefined;
    this.#hires.set(id, changed);
    const found = note?.(changed);
    if (found) this.#notes.set(found.id, found);
    return changed;
  }

  async removeHire(id: string): Promise<void> {
    this.#hires.delete(id);
  }

  async clearHires(): Promise<void> {
    this.#hires.clear();
  }

  async replace({ singles, hires, notes }: Replacement): Promise<void> {
    this.#singles.clear();
    this.#hires.clear();
    this.#notes.clear();
    for (const [name, value] of Object.entries(singles))
      if (value !== undefined) this.#singles.set(name as Single, value);
    for (const hire of hires) this.#hires.set(hire.id, hire);
    for (const note of notes) this.#notes.set(note.id, note);
  }
}
