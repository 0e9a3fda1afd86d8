/** npm run test:properties [-- --cases N] [--seed N]: what must hold of every trip, over many random ones. */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';

const root = fileURLToPath(new URL('..', import.meta.url));
/** The properties of whole trips and of what is kept of them; those of the parts run with `npm test`. */
const FILES = ['trip-', 'share-link', 'payload-crew', 'units'].map((name) => `tests/properties/${name}`);
/** As many as there are properties of whole trips at least, so that every one gets its share of the cases. */
const PROPERTIES = 40;

interface Held {
  readonly name: string;
  readonly cases: number;
  readonly seed: number;
}

const { values } = parseArgs({ options: { cases: { type: 'string' }, seed: { type: 'string' } } });
const cases = whole(values.cases, 100_000);
const seed = whole(values.seed, Date.now() % 1_000_000_000);
const folder = mkdtempSync(join(tmpdir(), 'homeleg-properties-'));
const counts = join(folder, 'counts.jsonl');
console.log(`At least ${cases} random cases. To run the same again: npm run test:properties -- --seed ${seed}`);

const vitest = join(root, 'node_modules', 'vitest', 'vitest.mjs');
const run = spawnSync(process.execPath, [vitest, 'run', '--testTimeout=1800000', ...FILES], {
  cwd: root,
  stdio: 'inherit',
  env: {
    ...process.env,
    HOMELEG_CASES: String(Math.ceil(cases / PROPERTIES)),
    HOMELEG_SEED: String(seed),
    HOMELEG_COUNTS: counts,
  },
});
const held: readonly Held[] = existsSync(counts)
  ? readFileSync(counts, 'utf8')
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line))
  : [];
rmSync(folder, { recursive: true, force: true });
const total = held.reduce((sum, one) => sum + one.cases, 0);
console.log(`${held.length} properties, ${total} cases, seed ${seed}`);
if (total < cases) console.error(`Fewer cases than the ${cases} asked for were run.`);
process.exit(run.status === 0 && total >= cases ? 0 : 1);

function whole(text: string | undefined, usual: number): number {
  const value = text === undefined ? usual : Number(text);
  if (Number.isInteger(value) && value >= 0) return value;
  console.error(`"${text}" is no whole number`);
  process.exit(2);
}
