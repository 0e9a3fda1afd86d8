import { appendFileSync } from 'node:fs';
import { relative } from 'node:path';
import { afterAll, beforeAll, expect } from 'vitest';

/** Set up before every test file of a marked copy: notes which stretches it runs, and which ran while it was loaded. */
const place = globalThis as { homelegMarks?: unknown[] };
let loaded: readonly number[] = [];
place.homelegMarks = [];
const before = process.threadCpuUsage();

function taken(): readonly number[] {
  const marks = Object.keys(place.homelegMarks ?? []).map(Number);
  place.homelegMarks = [];
  return marks;
}

beforeAll(() => {
  loaded = taken();
});

afterAll(() => {
  const { user, system } = process.threadCpuUsage(before);
  const file = relative(process.cwd(), expect.getState().testPath!);
  const line = { file, ms: Math.round((user + system) / 1000), reached: taken(), loaded };
  appendFileSync(process.env.HOMELEG_REACHED!, `${JSON.stringify(line)}\n`);
});
