import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { doors } from './doors.ts';
import { hostile } from './hostile.ts';

/** MB: a phone gives a page more. */
const MEMORY = 256;

it('no document makes a reader ask for more memory than a phone has', () => {
  const file = fileURLToPath(new URL('bounded.ts', import.meta.url));
  const run = spawnSync(process.execPath, [`--max-old-space-size=${MEMORY}`, file], {
    encoding: 'utf8',
    timeout: 240_000,
  });
  expect(run.status, run.stderr.slice(-2000)).toBe(0);
  const { met } = JSON.parse(run.stdout);
  expect(met).toBe(doors.length * hostile().length);
}, 250_000);
