import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Mutant, mutantsOf } from './mutators.ts';

const CORE = 'src/core';

/** All mutants of the core, by folder. */
export function mutantsByFolder(root: string): ReadonlyMap<string, readonly Mutant[]> {
  const folders = readdirSync(join(root, CORE), { withFileTypes: true }).filter((one) => one.isDirectory());
  return new Map(
    folders.map(({ name }) => {
      const files = readdirSync(join(root, CORE, name), { recursive: true, encoding: 'utf8' })
        .filter((file) => file.endsWith('.ts'))
        .sort();
      return [
        name,
        files.flatMap((file) => {
          const path = `${CORE}/${name}/${file}`;
          return mutantsOf(path, readFileSync(join(root, path), 'utf8'));
        }),
      ];
    }),
  );
}

/** So many of each folder, in proportion to its mutants and ten at least; the same for the same seed. */
export function sampleOf(
  all: ReadonlyMap<string, readonly Mutant[]>,
  wanted: number,
  seed: number,
): ReadonlyMap<string, readonly Mutant[]> {
  const total = [...all.values()].reduce((sum, { length }) => sum + length, 0);
  return new Map(
    [...all].map(([folder, mutants]) => {
      const share = Math.min(mutants.length, Math.max(10, Math.round((wanted * mutants.length) / total)));
      return [folder, shuffled(mutants, seed).slice(0, share)];
    }),
  );
}

function shuffled<T>(list: readonly T[], seed: number): T[] {
  const random = chance(seed);
  const mixed = [...list];
  for (let i = mixed.length - 1; i > 0; i--) {
    const j = Math.floor(random() * (i + 1));
    [mixed[i], mixed[j]] = [mixed[j]!, mixed[i]!];
  }
  return mixed;
}

/** Mulberry32. */
function chance(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
}
