import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';

const program = resolve('node_modules/dependency-cruiser/bin/dependency-cruiser.mjs');
const rules = resolve('.dependency-cruiser.cjs');

const sound = {
  'src/core/units/mass.ts': 'export const kilogram = 1;',
  'src/core/craft/shapes.ts': "import { kilogram } from '../units/mass.ts';\nexport const boat = kilogram;",
  'src/core/hull/drag.ts': "import { boat } from '../craft/shapes.ts';\nexport const drag = boat;",
  'src/core/trip/plan.ts': "import { drag } from '../hull/drag.ts';\nexport const plan = drag;",
  'src/core/files/read.ts': "import { boat } from '../craft/shapes.ts';\nexport const read = boat;",
  'src/components/bar.ts': "import { plan } from '../core/trip/plan.ts';\nexport const bar = plan;",
};

/** Each adds one file that points the wrong way to the sound ones. */
const wrong = [
  ['core-hull', 'src/core/hull/upward.ts', "import { plan } from '../trip/plan.ts';\nexport const upward = plan;"],
  [
    'core-units',
    'src/core/units/heavy.ts',
    "import type { boat } from '../craft/shapes.ts';\nexport type Heavy = typeof boat;",
  ],
  [
    'files-know-no-method',
    'src/core/files/guess.ts',
    "import { drag } from '../hull/drag.ts';\nexport const guess = drag;",
  ],
  [
    'core-is-the-bottom',
    'src/core/trip/draw.ts',
    "import { bar } from '../../components/bar.ts';\nexport const draw = bar;",
  ],
  [
    'components-know-no-page',
    'src/components/link.ts',
    "import { home } from '../pages/home.ts';\nexport const link = home;",
  ],
  ['no-circles', 'src/core/load/seat.ts', "import { seats } from './seats.ts';\nexport const seat = seats;"],
  ['nothing-unresolved', 'src/core/water/lost.ts', "import { tide } from './nowhere.ts';\nexport const lost = tide;"],
] as const;

const beside = {
  'src/pages/home.ts': 'export const home = 1;',
  'src/core/load/seats.ts': "import { seat } from './seat.ts';\nexport const seats = () => seat;",
};

const folders: string[] = [];
afterAll(() => {
  for (const folder of folders) rmSync(folder, { recursive: true, force: true });
});

/** What the same command as in `npm test` says of these files. */
function check(files: Record<string, string>): { status: number | null; findings: string } {
  const folder = mkdtempSync(join(tmpdir(), 'homeleg-layers-'));
  folders.push(folder);
  for (const [path, text] of Object.entries({ 'tsconfig.json': '{}', ...files })) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  const env = { ...process.env, NO_COLOR: '1', FORCE_COLOR: undefined };
  const run = spawnSync(process.execPath, [program, 'src', '--config', rules], { cwd: folder, env, encoding: 'utf8' });
  return { status: run.status, findings: run.stdout + run.stderr };
}

describe('the check of the direction of dependencies', () => {
  it('finds nothing where pages stand on components, components on the core, and the core on itself', () => {
    const { status, findings } = check(sound);
    expect(findings).toContain('no dependency violations found (6 modules');
    expect(status).toBe(0);
  });

  it('fails, and names the file and the rule, for every way of pointing upwards', () => {
    const files = { ...sound, ...beside, ...Object.fromEntries(wrong.map(([, path, text]) => [path, text])) };
    const { status, findings } = check(files);
    for (const [rule, path] of wrong) expect(findings).toContain(`error ${rule}: ${path}`);
    expect(status).toBeGreaterThan(0);
  });
});
