import type { Problem } from '../../core/units/result.ts';

/** What a door of the core finds, in a language other than English: by code, with the place in what was given. */
export interface FaultWords {
  /** Put before what has no sentence here and stays English. */
  readonly english: string;
  readonly row: (row: number) => string;
  readonly field: (path: string) => string;
  /** By code; `limit` only where the door told one. */
  readonly said: Readonly<Record<string, string | ((limit: string) => string)>>;
}

export function faultIn(words: FaultWords, { code, path, message, limit }: Problem): string {
  const known = Object.hasOwn(words.said, code) ? words.said[code] : undefined;
  // A sentence made for a limit says nothing without one.
  const said = typeof known === 'function' ? (limit === undefined ? undefined : known(String(limit))) : known;
  if (said === undefined) return `${words.english} ${message}`;
  const row = /^rows\.(\d+)$/.exec(path)?.[1];
  if (row !== undefined) return `${words.row(Number(row))}: ${said}`;
  return path === '' ? said.charAt(0).toUpperCase() + said.slice(1) : `${words.field(path)}: ${said}`;
}
