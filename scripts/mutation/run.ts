import { spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Mutant } from './mutators.ts';

/** What became of one mutant. */
export interface Outcome {
  readonly noticed: boolean;
  readonly reached: boolean;
  /** The tests did not come to an end with it. */
  readonly endless?: boolean;
}

interface TestFile {
  readonly file: string;
  readonly ms: number;
}

const CONFIG = join('scripts', 'mutation', 'vitest.config.ts');
/** Quick test files first; only what they let pass meets the rest. */
const FIRST = 8;
/** ms: on top of ten times what the tests take unharmed. */
const PATIENCE = 60_000;

function command(root: string, more: readonly string[]): readonly string[] {
  return [join(root, 'node_modules', 'vitest', 'vitest.mjs'), 'run', '--config', CONFIG, '--root', root, ...more];
}

/** Test files by mutant that reach it, quickest first, from one run of all tests or of those in some folders. */
export function reaches(
  root: string,
  mutants: readonly Mutant[],
  folders: readonly string[],
): readonly (readonly TestFile[])[] {
  const folder = mkdtempSync(join(tmpdir(), 'homeleg-mutation-'));
  const order = join(folder, 'order.json');
  const notes = join(folder, 'reached.jsonl');
  writeFileSync(order, JSON.stringify({ mutants }));
  const run = spawnSync(
    process.execPath,
    command(root, ['--silent', '--reporter=dot', '--testTimeout=300000', ...folders]),
    {
      cwd: root,
      env: { ...process.env, HOMELEG_MUTATION: order, HOMELEG_REACHED: notes, NO_COLOR: '1' },
      encoding: 'utf8',
      maxBuffer: 1e8,
    },
  );
  const failing = new Set(
    [...`${run.stdout}${run.stderr}`.matchAll(/FAIL\s+(\S+\.test\.ts)/g)].map((found) => found[1]!),
  );
  if (failing.size > 0) console.error(`These fail without a fault, so they are left out: ${[...failing].join(', ')}`);
  if (run.status !== 0 && failing.size === 0) throw new Error(`The tests do not run:\n${run.stderr.slice(-2000)}`);
  const files = readFileSync(notes, 'utf8')
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as TestFile & { reached: number[]; loaded: number[] })
    .filter(({ file }) => !failing.has(file));
  rmSync(folder, { recursive: true, force: true });
  // What is reached while loading is reached by the first to load it only: whoever reaches the same source counts.
  const bySource = new Map<string, Set<(typeof files)[number]>>();
  for (const one of files) {
    for (const i of [...one.reached, ...one.loaded]) {
      const source = mutants[i]!.file;
      bySource.set(source, (bySource.get(source) ?? new Set()).add(one));
    }
  }
  return mutants.map((mutant, i) => {
    const atLoading = files.some((one) => one.loaded.includes(i));
    const near = atLoading ? [...(bySource.get(mutant.file) ?? [])] : [];
    const ofFolder = atLoading ? files.filter(({ file }) => sameFolder(file, mutant.file)) : [];
    const all = new Set([...files.filter((one) => one.reached.includes(i)), ...near, ...ofFolder]);
    return [...all].map(({ file, ms }) => ({ file, ms })).sort((a, b) => a.ms - b.ms);
  });
}

function sameFolder(test: string, source: string): boolean {
  const [, , folder] = source.split('/');
  return test.startsWith(`tests/core/${folder}/`) || test.includes(`/${folder}-`);
}

export async function tried(
  root: string,
  mutants: readonly Mutant[],
  reached: readonly (readonly TestFile[])[],
  { atOnce, told }: { atOnce: number; told: (mutant: Mutant, outcome: Outcome, done: number) => void },
): Promise<readonly Outcome[]> {
  const outcomes: Outcome[] = [];
  let next = 0;
  let done = 0;
  const work = async () => {
    while (next < mutants.length) {
      const i = next++;
      const outcome = await outcomeOf(root, mutants, i, reached[i]!);
      outcomes[i] = outcome;
      told(mutants[i]!, outcome, ++done);
    }
  };
  await Promise.all(Array.from({ length: atOnce }, work));
  return outcomes;
}

async function outcomeOf(
  root: string,
  mutants: readonly Mutant[],
  i: number,
  tests: readonly TestFile[],
): Promise<Outcome> {
  if (tests.length === 0) return { noticed: false, reached: false };
  const folder = mkdtempSync(join(tmpdir(), 'homeleg-mutation-'));
  try {
    const order = join(folder, 'order.json');
    writeFileSync(order, JSON.stringify({ mutants: [mutants[i]], put: 0 }));
    for (const part of [tests.slice(0, FIRST), tests.slice(FIRST)]) {
      if (part.length === 0) continue;
      const end = await passes(root, order, part);
      if (end !== 'passed') return { noticed: true, reached: true, ...(end === 'endless' && { endless: true }) };
    }
    return { noticed: false, reached: true };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function passes(root: string, order: string, tests: readonly TestFile[]): Promise<'passed' | 'failed' | 'endless'> {
  const patience = PATIENCE + 10 * tests.reduce((sum, { ms }) => sum + ms, 0);
  const more = ['--bail=1', '--maxWorkers=1', '--silent', '--reporter=dot', ...tests.map(({ file }) => file)];
  return new Promise((resolve) => {
    const run = spawn(process.execPath, command(root, more), {
      cwd: root,
      env: { ...process.env, HOMELEG_MUTATION: order },
      stdio: 'ignore',
      detached: true,
    });
    let endless = false;
    const timer = setTimeout(() => {
      endless = true;
      // The process and the worker it started.
      process.kill(-run.pid!, 'SIGKILL');
    }, patience);
    run.on('close', (code) => {
      clearTimeout(timer);
      resolve(endless ? 'endless' : code === 0 ? 'passed' : 'failed');
    });
  });
}
