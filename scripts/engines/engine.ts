/** A browser that can be walked through the site; what each needs is in the file of its name. */
export interface Engine {
  readonly name: string;
  open(address: string): Promise<void>;
  /** Runs the body of an async function in the page with `given`, and returns what it returns, as JSON. */
  run<T>(body: string, given?: unknown): Promise<T>;
  /** Keys as WebDriver writes them, pressed one by one where the focus is. */
  press(...keys: readonly string[]): Promise<void>;
  /** What the page complained of so far. */
  complaints(): readonly string[];
  close(): Promise<void>;
}

export const ENTER = '\uE007';
export const SPACE = ' ';

/** Waits until `check` gives something; what it waited for is named when it never does. */
export async function until<T>(what: string, check: () => Promise<T | undefined | null | false>): Promise<T> {
  const end = Date.now() + 60_000;
  for (;;) {
    const found = await check();
    if (found) return found;
    if (Date.now() > end) throw new Error(`it never came to this: ${what}`);
    await new Promise((next) => setTimeout(next, 100));
  }
}
