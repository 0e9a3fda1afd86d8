import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Mutant } from './mutators.ts';

/** A mutant that no test can or need notice, by the line it stands on, and why. */
export interface Accepted {
  readonly file: string;
  /** The line without its indent. */
  readonly line: string;
  readonly kind: string;
  /** Which of several of its kind on the line, from 1. */
  readonly nth: number;
  readonly reason: string;
}

export const accepted: readonly Accepted[] = JSON.parse(
  readFileSync(new URL('accepted.json', import.meta.url), 'utf8'),
);

/** What a mutant is known by while other lines change. */
export type Name = Omit<Accepted, 'reason'>;

/** Names of all mutants of a file, in their order. */
export function namesOf(root: string, mutants: readonly Mutant[]): ReadonlyMap<Mutant, Name> {
  const lines = new Map<string, readonly string[]>();
  const seen = new Map<string, number>();
  const names = new Map<Mutant, Name>();
  for (const mutant of mutants) {
    const { file, kind } = mutant;
    if (!lines.has(file)) lines.set(file, readFileSync(join(root, file), 'utf8').split('\n'));
    const line = lines.get(file)![mutant.line - 1]!.trim();
    const same = `${file}:${line}:${kind}`;
    const nth = (seen.get(same) ?? 0) + 1;
    seen.set(same, nth);
    names.set(mutant, { file, line, kind, nth });
  }
  return names;
}

export function reasonOf(name: Name, list: readonly Accepted[] = accepted): string | undefined {
  return list.find((one) => same(one, name))?.reason;
}

export function same(a: Name, b: Name): boolean {
  return a.file === b.file && a.line === b.line && a.kind === b.kind && a.nth === b.nth;
}
