/**
 * npm run mutation [-- --count N] [--seed N] [--all] [--files PART,PART] [--budget S] [--at-once N] [--minutes N]
 * [--write]: small faults are put into the core one by one; does a test notice? A seeded sample, or all, of the core or of
 * some files.
 */
import { appendFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { namesOf, reasonOf } from './mutation/accepted.ts';
import { type Attempt, attempts } from './mutation/attempts.ts';
import { reach } from './mutation/reach.ts';
import { page, scoreText } from './mutation/report.ts';
import { mutantsOfCore, sampleOf, shuffled } from './mutation/sample.ts';

const root = fileURLToPath(new URL('..', import.meta.url));
const { values } = parseArgs({
  options: {
    count: { type: 'string', default: '300' },
    seed: { type: 'string', default: '1' },
    all: { type: 'boolean', default: false },
    // Parts of paths, as `core/hull,trip/sail`.
    files: { type: 'string' },
    // Processor time of the tests one mutant may meet, s.
    budget: { type: 'string', default: '20' },
    'at-once': { type: 'string', default: '2' },
    // From the start on; what has been tried by then is told. They come in a drawn order, so that these are a sample too.
    minutes: { type: 'string', default: '1000' },
    // Survivors as lines of JSON, as they are found.
    survivors: { type: 'string' },
    write: { type: 'boolean', default: false },
  },
});
const count = number('count');
const seed = number('seed');
const budgetS = number('budget');
const parts = values.files?.split(',');
const whole = mutantsOfCore(root);
const everything = parts ? whole.filter(({ file }) => parts.some((part) => file.includes(part))) : whole;
if (everything.length === 0) stop(`No mutants in files of src/core named like ${values.files}`);
if (values.write && parts) stop('--write is for the whole core, or a sample of it');
const mutants = values.all ? everything : sampleOf(everything, count, seed);
const names = namesOf(root, whole);

console.log(
  `${mutants.length} of ${everything.length} mutants, seed ${seed}. First all tests run once, to see what they reach.`,
);
const reached = await reach(root);
console.log(`${reached.files.length} test files. Now the mutants, after a control.`);
if (values.survivors) rmSync(values.survivors, { force: true });
// Mixed, so that what is told meanwhile says something of all folders.
const found = await attempts(root, shuffled(mutants, seed), reached, {
  atOnce: number('at-once'),
  budget: 1000 * budgetS,
  until: 60_000 * number('minutes'),
  told,
});
const order = new Map(mutants.map((mutant, i) => [mutant, i]));
const inOrder = found.toSorted((a, b) => order.get(a.mutant)! - order.get(b.mutant)!);
const run = { everything, attempts: inOrder, names, seed, budgetS };
console.log(scoreText(run));
if (values.write) writeFileSync(join(root, 'docs', 'mutation.md'), page(run));

function told({ mutant, fate, keptAlone, met, unmet }: Attempt, done: number): void {
  if (done % 25 === 0) console.log(`${done} of ${mutants.length}`);
  if (fate === 'noticed' && !keptAlone) return;
  const name = names.get(mutant)!;
  const reason = reasonOf(name);
  const how = fate === 'noticed' ? 'by kept answers alone' : `${fate}${reason ? ' (accepted)' : ''}`;
  console.log(`${how}: ${mutant.file}:${mutant.line} ${mutant.kind}: ${name.line}`);
  if (fate === 'noticed') return;
  if (values.survivors && !reason && fate !== 'endless') {
    const line = { ...name, at: mutant.line, fate, met, unmet, replacement: mutant.replacement };
    appendFileSync(values.survivors, `${JSON.stringify(line)}\n`);
  }
}

function number(name: 'count' | 'seed' | 'budget' | 'at-once' | 'minutes'): number {
  const value = Number(values[name]);
  if (!Number.isInteger(value) || value < 1) stop(`--${name} needs a whole number from 1 on, not "${values[name]}"`);
  return value;
}

function stop(message: string): never {
  console.error(message);
  process.exit(2);
}
