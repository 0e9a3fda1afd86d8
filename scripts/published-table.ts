/** node scripts/published-table.ts [--write]: every figure that the tests hold against a publication, with what they found. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';

const root = fileURLToPath(new URL('..', import.meta.url));
const checks = join(root, 'shared', 'checks');
/** Of the check files, in the order of the method page. */
const SUBJECTS = ['hull', 'propulsion', 'load', 'trip', 'sea', 'daylight', 'measured'];

interface Entry {
  readonly id: string;
  readonly source: string;
  readonly provenance: string;
}

/** What the tests tell while they run. */
function collected(): readonly { check: string; what: string; published: number; found: number }[] {
  const folder = mkdtempSync(join(tmpdir(), 'homeleg-told-'));
  const file = join(folder, 'told.jsonl');
  try {
    const run = spawnSync(
      process.execPath,
      [join(root, 'node_modules', 'vitest', 'vitest.mjs'), 'run', 'tests/published'],
      {
        cwd: root,
        env: { ...process.env, HOMELEG_TOLD: file },
        encoding: 'utf8',
      },
    );
    if (run.status !== 0) throw new Error(`The tests fail, so there is nothing to write:\n${run.stdout.slice(-2000)}`);
    const rows = readFileSync(file, 'utf8')
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line));
    // A figure that several tests look at is one row.
    const told = new Map(rows.map((row) => [`${row.check} ${row.what}`, row]));
    for (const row of rows) {
      const other = told.get(`${row.check} ${row.what}`);
      if (Math.abs(row.found - other.found) > 1e-6 * Math.abs(row.found)) {
        throw new Error(`Two figures are both called "${row.check} ${row.what}": ${row.found} and ${other.found}`);
      }
    }
    return [...told.values()];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function document() {
  const entries = new Map<string, Entry & { subject: string }>();
  for (const subject of SUBJECTS) {
    for (const entry of JSON.parse(readFileSync(join(checks, `${subject}-checks.json`), 'utf8')) as Entry[]) {
      entries.set(entry.id, { ...entry, subject });
    }
  }
  const order = [...entries.keys()];
  const rows = collected().map(({ check, what, published, found }) => {
    const entry = entries.get(check);
    if (!entry) throw new Error(`No check is called ${check}`);
    const { subject, source, provenance } = entry;
    const round = (figure: number) => Number(figure.toPrecision(6));
    return { subject, check, source, provenance, what, published: round(published), found: round(found) };
  });
  rows.sort((a, b) => order.indexOf(a.check) - order.indexOf(b.check) || (a.what < b.what ? -1 : 1));
  return {
    about:
      'Every published figure that a test tells of, with what the method makes of it. Provenance: P read, M from memory, C common practice, D our own evaluation of a published formula. Written by scripts/published-table.ts from what the tests found.',
    files: readdirSync(checks).filter((file) => file.endsWith('-checks.json')).length,
    rows,
  };
}

const { values } = parseArgs({ options: { write: { type: 'boolean' } } });
const text = `${JSON.stringify(document(), undefined, 1)}\n`;
if (values.write) writeFileSync(join(checks, 'published-table.json'), text);
else process.stdout.write(text);
