/** A finding at a door, in terms of what was given. `path` is the place inside it, such as `load.items.2.mass`. */
export interface Problem {
  readonly code: string;
  readonly path: string;
  readonly message: string;
  readonly limit?: number;
}

/** What a door returns: the checked value, or every problem found. */
export type Result<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly Problem[] };
