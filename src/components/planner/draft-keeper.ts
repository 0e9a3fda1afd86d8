import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { putBy } from '../store/put-by.ts';
import type { Draft } from './first-trip.ts';

/** Trips put by at most. */
const ASIDE = 5;

/** What the device kept, or why it could not be used. */
export type Kept = { readonly draft: Draft } | { readonly unreadable: true } | undefined;

/**
 * Keeps what was entered on this device, so that a reload loses nothing. Storage may be blocked or full: then the page
 * works without, and says so once.
 */
export class DraftKeeper implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  readonly #key: () => string | undefined;
  #waiting: Draft | undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;
  /** What is there cannot be read, and there is no room to put it by: it stays. */
  #locked = false;
  /** The last attempt to keep something failed. */
  failed = false;

  constructor(host: ReactiveControllerHost, key: () => string | undefined) {
    this.#host = host;
    this.#key = key;
    host.addController(this);
  }

  hostConnected(): void {
    globalThis.addEventListener('pagehide', this.#flush);
  }

  hostDisconnected(): void {
    globalThis.removeEventListener('pagehide', this.#flush);
    this.#flush();
  }

  async load(): Promise<Kept> {
    const key = this.#key();
    if (!key) return undefined;
    let text: string | null = null;
    try {
      text = localStorage.getItem(key);
    } catch {
      return undefined;
    }
    if (text === null) return undefined;
    const draft = await parsed(text);
    if (draft) return { draft };
    this.#locked = !putBy(key, text);
    return { unreadable: true };
  }

  /** Soon, not on every step of a drag. */
  keep(draft: Draft): void {
    this.#waiting = draft;
    clearTimeout(this.#timer);
    this.#timer = setTimeout(this.#flush, 300);
  }

  /** Puts a trip by, so that the one a link brings costs nothing even after a reload. The last few are kept. */
  setAside(draft: Draft): void {
    const key = this.#key();
    if (!key) return;
    const text = JSON.stringify(draft);
    const rest = this.#asideTexts().filter((other) => other !== text);
    this.#put(`${key}-aside`, JSON.stringify([...rest, text].slice(-ASIDE)));
  }

  /** The trip put by last. */
  async aside(): Promise<Draft | undefined> {
    const text = this.#asideTexts().at(-1);
    return text === undefined ? undefined : parsed(text);
  }

  /** The trip put by last is back on screen, or no longer wanted. */
  dropAside(): void {
    const key = this.#key();
    if (key) this.#put(`${key}-aside`, JSON.stringify(this.#asideTexts().slice(0, -1)));
  }

  #asideTexts(): readonly string[] {
    try {
      const texts: unknown = JSON.parse(localStorage.getItem(`${this.#key()}-aside`) ?? '[]');
      return Array.isArray(texts) ? texts.filter((text) => typeof text === 'string') : [];
    } catch {
      return [];
    }
  }

  forget(): void {
    this.#waiting = undefined;
    const key = this.#key();
    try {
      if (key) localStorage.removeItem(key);
    } catch {
      // Blocked storage holds nothing to forget.
    }
  }

  readonly #flush = (): void => {
    clearTimeout(this.#timer);
    const key = this.#key();
    if (!this.#waiting || !key) return;
    const failed = this.#locked || !this.#put(key, JSON.stringify(this.#waiting));
    this.#waiting = undefined;
    if (failed !== this.failed) {
      this.failed = failed;
      this.#host.requestUpdate();
    }
  };

  #put(key: string, text: string): boolean {
    try {
      localStorage.setItem(key, text);
      return true;
    } catch {
      return false;
    }
  }
}

async function parsed(text: string): Promise<Draft | undefined> {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return undefined;
  }
  if (typeof value !== 'object' || value === null || !('trip' in value)) return undefined;
  const { readDraft } = await import('../../core/files/trip-schema.ts');
  const trip = readDraft(value.trip);
  if (!trip.ok) return undefined;
  const origin = 'origin' in value && typeof value.origin === 'object' && value.origin !== null ? value.origin : {};
  const id = (name: string): string | undefined => {
    const found = (origin as Record<string, unknown>)[name];
    return typeof found === 'string' ? found : undefined;
  };
  return { trip: trip.value, origin: { hullId: id('hullId'), engineId: id('engineId'), storeId: id('storeId') } };
}
