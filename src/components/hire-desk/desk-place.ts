import type { FuelNote, Hire } from '../../core/hire/shapes.ts';

/** What a desk has one of. */
export type Single = 'fleet' | 'morning' | 'units';

/** All that is kept, as it comes out: nothing in it has been checked yet. */
export interface Kept {
  readonly singles: Readonly<Partial<Record<Single, unknown>>>;
  readonly hires: readonly unknown[];
  readonly notes: readonly unknown[];
}

/** What is kept instead of all that was. */
export interface Replacement {
  readonly singles: Readonly<Partial<Record<Single, unknown>>>;
  readonly hires: readonly Hire[];
  readonly notes: readonly FuelNote[];
}

/** Where a desk keeps things. Each step is whole or not at all, whatever other tabs do meanwhile. */
export interface DeskPlace {
  all(): Promise<Kept>;
  put(name: Single, value: unknown): Promise<void>;
  remove(name: Single): Promise<void>;
  addHire(hire: Hire): Promise<void>;
  /** Changes what is there now, not what was read before; `change` may refuse by undefined, and gives undefined back. */
  changeHire(id: string, change: (kept: unknown) => Hire | undefined, note?: NoteOf): Promise<Hire | undefined>;
  removeHire(id: string): Promise<void>;
  clearHires(): Promise<void>;
  replace(by: Replacement): Promise<void>;
}

/** The note of consumption that goes with a change of a hire, if there is one. */
export type NoteOf = (changed: Hire) => FuelNote | undefined;
