/**
 * npm run test:properties [-- --cases N] [--seed N]: what must hold of every trip, over many random ones.
 * npm run test:fuzz, the same of every reader, over many damaged files.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';

const root = fileURLToPath(new URL('..', import.meta.url));
/** The properties of whole trips and of what is kept of them; those of the parts run with `npm test`. */
const FILES = {
  trips: ['trip-', 'share-link', 'payload-crew', 'units'].map((name) => `tests/properties/${name}`),
  readers: ['tests/fuzz/readers'],
};
/** As many as there are properties of each sort at most, so that every one gets its share of the cases. */
const PROPERTIES = { trips: 40, readers: 24 };

interface Held {
  readonly name: string;
  readonly cases: number;
  readonly seed: number;
}

const { values } = parseArgs({
  options: { cases: { type: 'string' }, seed: { type: 'string' }, readers: { type: 'boolean', default: false } },
});
const sort = values.readers ? 'readers' : 'trips';
const cases = whole(values.cases, values.readers ? 20_000 : 100_000);
const seed = whole(values.seed, Date.now() % 1_000_000_000);
const folder = mkdtempSync(join(tmpdir(), 'homeleg-properties-'));
const counts = join(folder, 'counts.jsonl');
const command = values.readers ? 'test:fuzz' : 'test:properties';
console.log(`At least ${cases} random cases. To run the same again: npm run ${command} -- --seed ${seed}`);

const vitest = join(root, 'node_modules', 'vitest', 'vitest.mjs');
const run = spawnSync(process.execPath, [vitest, 'run', '--testTimeout=1800000', '--maxWorkers=2', ...FILES[sort]], {
  cwd: root,
  stdio: 'inherit',
  env: {
    ...process.env,
    HOMELEG_CASES: String(Math.ceil(cases / PROPERTIES[sort])),
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
