import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { HostProblems } from './host-problems.ts';

export const THEMES = ['', 'light', 'dark'] as const;

/**
 * Tells the author of a page of attributes that know only certain words and were given another one; the element goes by
 * its usual one meanwhile. What says so is loaded only then.
 */
export function knowValues(
  host: ReactiveControllerHost & HTMLElement,
  problems: HostProblems,
  known: Readonly<Record<string, readonly string[]>>,
): void {
  host.addController(new KnownValues(host, problems, known));
}

class KnownValues implements ReactiveController {
  readonly #host: ReactiveControllerHost & HTMLElement;
  readonly #problems: HostProblems;
  readonly #known: Readonly<Record<string, readonly string[]>>;
  #wrong = '[]';
  /** A wrong word taken away leaves the property at its usual one, so that nothing else would look again. */
  #written: MutationObserver | undefined;

  constructor(
    host: ReactiveControllerHost & HTMLElement,
    problems: HostProblems,
    known: Readonly<Record<string, readonly string[]>>,
  ) {
    this.#host = host;
    this.#problems = problems;
    this.#known = known;
  }

  hostConnected(): void {
    this.#written = new MutationObserver(() => this.#look());
    this.#written.observe(this.#host, { attributeFilter: Object.keys(this.#known) });
  }

  hostDisconnected(): void {
    this.#written?.disconnect();
  }

  hostUpdated(): void {
    this.#look();
  }

  #look(): void {
    const given = Object.entries(this.#known).map(([name, words]) => ({ name, words, value: this.#value(name) }));
    const wrong = given.filter(({ words, value }) => value !== undefined && !words.includes(value));
    const now = JSON.stringify(wrong);
    if (now === this.#wrong) return;
    this.#wrong = now;
    void this.#tell(wrong, now);
  }

  /** As the page wrote it; a framework may set the property alone. */
  #value(name: string): string | undefined {
    const value = this.#host.getAttribute(name) ?? (this.#host as unknown as Record<string, unknown>)[name];
    return value === null || value === undefined ? undefined : String(value);
  }

  async #tell(wrong: readonly { name: string; words: readonly string[]; value?: string | undefined }[], now: string) {
    const names = Object.keys(this.#known);
    const { givenWords: words } = await import('../words/en-given.ts');
    if (now !== this.#wrong) return;
    const told = wrong.map(({ name, words: known, value = '' }) => ({
      attribute: name,
      message: words.choices(value, known.filter(Boolean).join(', ')),
    }));
    this.#problems.tell(names, told);
  }
}
