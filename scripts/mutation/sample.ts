import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { seededChance } from '../../src/core/trip/chance.ts';
import { type Mutant, mutantsOf } from './mutators.ts';

export const CORE = 'src/core';

/** All mutants of the core, in the order of its files. */
export function mutantsOfCore(root: string): readonly Mutant[] {
  return readdirSync(join(root, CORE), { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts'))
    .map((file) => `${CORE}/${file.replaceAll('\\', '/')}`)
    .sort()
    .flatMap((file) => mutantsOf(file, readFileSync(join(root, file), 'utf8')));
}

export function folderOf({ file }: Mutant): string {
  return file.split('/').slice(2, -1)[0] ?? '';
}

export function byFolder(mutants: readonly Mutant[]): ReadonlyMap<string, readonly Mutant[]> {
  return grouped(mutants, folderOf);
}

export function grouped<T>(list: readonly T[], by: (one: T) => string): ReadonlyMap<string, readonly T[]> {
  const groups = new Map<string, T[]>();
  for (const one of list) {
    const group = groups.get(by(one));
    if (group) group.push(one);
    else groups.set(by(one), [one]);
  }
  return groups;
}

/**
 * So many mutants, each folder in proportion to those it has, so that every mutant of the core is as likely as any
 * other; the same for the same seed.
 */
export function sampleOf(mutants: readonly Mutant[], wanted: number, seed: number): readonly Mutant[] {
  if (wanted >= mutants.length) return mutants;
  const folders = [...byFolder(mutants)].map(([folder, all]) => {
    const share = (wanted * all.length) / mutants.length;
    return { folder, all, whole: Math.floor(share), rest: share % 1 };
  });
  const missing = wanted - folders.reduce((sum, { whole }) => sum + whole, 0);
  const rounded = new Set(folders.toSorted((a, b) => b.rest - a.rest).slice(0, missing));
  return folders.flatMap((one) => shuffled(one.all, seed).slice(0, one.whole + (rounded.has(one) ? 1 : 0)));
}

export function shuffled<T>(list: readonly T[], seed: number): T[] {
  const random = seededChance(seed);
  const mixed = [...list];
  for (let i = mixed.length - 1; i > 0; i--) {
    const j = Math.floor(random() * (i + 1));
    [mixed[i], mixed[j]] = [mixed[j]!, mixed[i]!];
  }
  return mixed;
}
