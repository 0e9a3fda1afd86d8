/** What is kept of one checklist on this device. */
interface Kept {
  readonly ticked: readonly string[];
  /** Time of the last tick, ms since 1970. */
  readonly at: number;
}

/** A list ticked on another day says nothing about today. */
const STALE = 12 * 3600 * 1000;

/** Keeps the ticks of one checklist on the device. Where nothing may be kept they last as long as the page. */
export class TickKeeper {
  readonly #key: string | undefined;
  #ticked = new Set<string>();
  #cleared: ReadonlySet<string> | undefined;
  /** When these ticks were made, ms since 1970, if that is too long ago to count. */
  readonly oldSince: number | undefined;

  /** Without a name nothing is kept. */
  constructor(list: string | undefined) {
    this.#key = list && `homeleg-checklist-${list}`;
    const kept = this.#key ? read(this.#key) : undefined;
    if (!kept) return;
    this.#ticked = new Set(kept.ticked);
    if (kept.ticked.length > 0 && Date.now() - kept.at > STALE) this.oldSince = kept.at;
  }

  get ticked(): ReadonlySet<string> {
    return this.#ticked;
  }

  /** A clearing can still be taken back. */
  get undoable(): boolean {
    return this.#cleared !== undefined;
  }

  /** Each returns whether the device keeps it. */
  tick(id: string, on: boolean): boolean {
    this.#cleared = undefined;
    if (on) this.#ticked.add(id);
    else this.#ticked.delete(id);
    return this.#put();
  }

  clear(): boolean {
    this.#cleared = this.#ticked.size > 0 ? this.#ticked : undefined;
    this.#ticked = new Set();
    return this.#put();
  }

  takeBack(): boolean {
    if (this.#cleared) this.#ticked = new Set(this.#cleared);
    this.#cleared = undefined;
    return this.#put();
  }

  // Writing throws where a page may keep nothing: private windows, sandboxed frames, full storage.
  #put(): boolean {
    if (!this.#key) return true;
    try {
      localStorage.setItem(this.#key, JSON.stringify({ ticked: [...this.#ticked], at: Date.now() } satisfies Kept));
      return true;
    } catch {
      return false;
    }
  }
}

function read(key: string): Kept | undefined {
  try {
    const kept = JSON.parse(localStorage.getItem(key) ?? 'null') as Partial<Kept> | null;
    if (typeof kept !== 'object' || kept === null) return undefined;
    const { ticked, at } = kept;
    const names = Array.isArray(ticked) && ticked.every((name) => typeof name === 'string');
    return names && typeof at === 'number' && Number.isFinite(at) ? { ticked, at } : undefined;
  } catch {
    return undefined;
  }
}
