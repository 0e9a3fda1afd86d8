/**
 * npm run test:properties [-- --cases N] [--seed N] [--beside N]: what must hold of every trip, over many random ones.
 * npm run test:fuzz, the same of every reader, over many damaged files.
 *
 * Every property is held in each of `beside` processes, over a share of the cases of its own: all are busy to the end.
 */
import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';

const root = fileURLToPath(new URL('..', import.meta.url));
/** The properties of whole trips and of what is kept of them; those of the parts run with `npm test`. */
const FILES = {
  trips: ['trip-', 'share-link', 'payload-crew', 'units'].map((name) => `tests/properties/${name}`),
  readers: ['readers', 'storage'].map((name) => `tests/fuzz/${name}`),
};
/** At most the sum of what `hold.ts` counts a property as, so that all together get the cases asked for. */
const PROPERTIES = { trips: 40, readers: 40 };
/** Seeds of processes beside each other lie this far apart: no property has a seed of its own as large. */
const APART = 100_000_007;

interface Held {
  readonly name: string;
  readonly cases: number;
  readonly seed: number;
}

const { values } = parseArgs({
  options: {
    cases: { type: 'string' },
    seed: { type: 'string' },
    beside: { type: 'string' },
    readers: { type: 'boolean', default: false },
  },
});
const sort = values.readers ? 'readers' : 'trips';
const cases = whole(values.cases, values.readers ? 20_000 : 100_000);
const seed = whole(values.seed, Date.now() % 1_000_000_000);
const beside = Math.max(1, whole(values.beside, Math.min(2, availableParallelism())));
const folder = mkdtempSync(join(tmpdir(), 'homeleg-properties-'));
const counts = join(folder, 'counts.jsonl');
const command = `${values.readers ? 'test:fuzz' : 'test:properties'} -- --cases ${cases} --seed ${seed} --beside ${beside}`;
console.log(`At least ${cases} random cases. To run the same again: npm run ${command}`);

const begun = performance.now();
const passed = await Promise.all(Array.from({ length: beside }, (_, share) => run(share)));
const minutes = ((performance.now() - begun) / 60_000).toFixed(1);
const held: readonly Held[] = existsSync(counts)
  ? readFileSync(counts, 'utf8')
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line))
  : [];
rmSync(folder, { recursive: true, force: true });
const total = held.reduce((sum, one) => sum + one.cases, 0);
const names = new Set(held.map(({ name }) => name));
console.log(`${names.size} properties, ${total} cases, seed ${seed}, ${minutes} min`);
if (total < cases) console.error(`Fewer cases than the ${cases} asked for were run.`);
process.exit(passed.every(Boolean) && total >= cases ? 0 : 1);

/** Holds all properties over one share of the cases; what it says comes in one piece. */
function run(share: number): Promise<boolean> {
  const vitest = join(root, 'node_modules', 'vitest', 'vitest.mjs');
  const child = spawn(process.execPath, [vitest, 'run', '--testTimeout=3600000', '--maxWorkers=1', ...FILES[sort]], {
    cwd: root,
    stdio: ['ignore', 'pipe', 'pipe'],
    env: {
      ...process.env,
      HOMELEG_CASES: String(Math.ceil(cases / PROPERTIES[sort] / beside)),
      HOMELEG_SEED: String(seed + share * APART),
      HOMELEG_COUNTS: counts,
    },
  });
  let said = '';
  for (const stream of [child.stdout, child.stderr]) {
    stream.setEncoding('utf8').on('data', (text: string) => {
      said += text;
    });
  }
  return new Promise((done) => {
    child.on('close', (code) => {
      process.stdout.write(said);
      done(code === 0);
    });
  });
}

function whole(text: string | undefined, usual: number): number {
  const value = text === undefined ? usual : Number(text);
  if (Number.isInteger(value) && value >= 0) return value;
  console.error(`"${text}" is no whole number`);
  process.exit(2);
}
