import { createHash } from 'node:crypto';
import { existsSync, globSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { privateCopy, removeCopy } from './copy.ts';
import { loadedBy } from './imports.ts';
import { type Marked, marked, markOf } from './marks.ts';
import type { Mutant } from './mutators.ts';
import { CORE } from './sample.ts';
import { Worker } from './worker.ts';

/** Tests about boats. Those of files and commands (structure) say nothing of the core; damaged files (fuzz) take too long. */
const TESTS = 'tests/{core,published,regression,properties,components}/**/*.test.ts';

/** Tests that hold every figure against what it was, and so state nothing of what is right. */
const KEPT = 'tests/core/kept/';

/** What one test file runs: marks of stretches, and processor time in ms. */
export interface TestFile {
  readonly file: string;
  readonly ms: number;
  readonly reached: ReadonlySet<number>;
  readonly loads: ReadonlySet<string>;
}

export interface Reach {
  readonly files: readonly TestFile[];
  readonly marks: ReadonlyMap<string, Marked>;
}

interface Noted {
  readonly file: string;
  readonly ms: number;
  readonly reached: readonly number[];
}

/** Runs all tests once in a copy whose core notes what runs; kept until a file changes. */
export async function reach(root: string): Promise<Reach> {
  const marks = new Map<string, Marked>();
  let first = 0;
  for (const file of globSync(`${CORE}/**/*.ts`, { cwd: root }).sort()) {
    const one = marked(file, readFileSync(join(root, file), 'utf8'), first);
    marks.set(file, one);
    first += one.stretches.length;
  }
  const kept = join(root, 'node_modules', '.cache', 'homeleg-mutation', `${stateOf(root)}.json`);
  const noted: readonly Noted[] = existsSync(kept)
    ? JSON.parse(readFileSync(kept, 'utf8'))
    : await notes(root, marks, kept);
  const known = new Map<string, readonly string[]>();
  return {
    files: noted.map((one) => ({
      file: one.file,
      ms: one.ms,
      reached: new Set(one.reached),
      loads: loadedBy(root, one.file, known),
    })),
    marks,
  };
}

export function isKept(file: string): boolean {
  return file.startsWith(KEPT);
}

/**
 * Test files that reach a mutant: that of its name first, then the quickest, kept answers last, of these those of its
 * folder first. What runs while loading, all reach that load it.
 */
export function testsOf({ files, marks }: Reach, mutant: Mutant): readonly TestFile[] {
  const mark = markOf(marks.get(mutant.file)!.stretches, mutant.start, mutant.end);
  const own = `${mutant.file.replace(/^src/, 'tests').replace(/\.ts$/, '')}.test.ts`;
  const folder = mutant.file.split('/')[2]!;
  const near = ({ file }: TestFile) => {
    if (isKept(file)) return basename(file).startsWith(folder) ? 3 : 4;
    return file === own ? 0 : basename(file) === basename(own) ? 1 : 2;
  };
  return files
    .filter(({ reached, loads }) => (mark === undefined ? loads.has(mutant.file) : reached.has(mark)))
    .sort((a, b) => near(a) - near(b) || a.ms - b.ms);
}

async function notes(root: string, marks: ReadonlyMap<string, Marked>, kept: string): Promise<readonly Noted[]> {
  const copy = privateCopy(root);
  const told = join(copy, 'reached.jsonl');
  const worker = new Worker(copy, { HOMELEG_SETUP: 'scripts/mutation/reached.ts', HOMELEG_REACHED: told });
  try {
    for (const [file, { text }] of marks) worker.write(file, text);
    const tests = globSync(TESTS, { cwd: root }).sort();
    const ran = await worker.run({ tests, bail: false }, 600_000);
    if (!ran) throw new Error('The tests come to no end without a fault.');
    if (ran.passed === 0) throw new Error('No test runs.');
    for (const file of ran.failing) console.error(`Fails without a fault, so it is left out: ${file}`);
    const lines = readFileSync(told, 'utf8').trim().split('\n');
    const all = lines.map((line): Noted & { loaded: number[] } => JSON.parse(line));
    // What ran while loading is noted with whoever loaded it first, which says nothing of the others.
    const noted = all.filter(({ file }) => !ran.failing.includes(file)).map(({ loaded: _, ...one }) => one);
    if (ran.failing.length === 0) {
      mkdirSync(join(kept, '..'), { recursive: true });
      writeFileSync(kept, JSON.stringify(noted));
    }
    return noted;
  } finally {
    worker.close();
    removeCopy(copy);
  }
}

function stateOf(root: string): string {
  const hash = createHash('sha256');
  for (const file of globSync('{src,tests,shared}/**/*.{ts,json,csv,gpx}', { cwd: root }).sort()) {
    hash.update(file).update(readFileSync(join(root, file)));
  }
  return hash.digest('hex').slice(0, 16);
}
