import { appendFileSync } from 'node:fs';
import { relative } from 'node:path';
import { afterAll, beforeAll, expect } from 'vitest';

/** Set up before every test file: notes which mutants its tests reach, and which were reached while it was loaded. */
const reached = new Set<number>();
const loaded = new Set<number>();
let loading = true;
Object.assign(globalThis, {
  homelegReached: (mutant: number) => {
    (loading ? loaded : reached).add(mutant);
  },
});
let start = 0;

beforeAll(() => {
  loading = false;
  start = performance.now();
});

afterAll(() => {
  const file = relative(process.cwd(), expect.getState().testPath!);
  const line = { file, ms: Math.round(performance.now() - start), reached: [...reached], loaded: [...loaded] };
  appendFileSync(process.env.HOMELEG_REACHED!, `${JSON.stringify(line)}\n`);
});
