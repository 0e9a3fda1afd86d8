/**
 * npm run mutation [-- FOLDER] [--sample N] [--seed N] [--at-once N] [--with core,regression] [--write]: small faults put into the core one by one;
 * does a test notice? A seeded sample of all folders, or all of one folder of src/core.
 */
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { acceptedReason, report, reportText } from './mutation/report.ts';
import { reaches, tried } from './mutation/run.ts';
import { mutantsByFolder, sampleOf } from './mutation/sample.ts';

const root = fileURLToPath(new URL('..', import.meta.url));
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    sample: { type: 'string', default: '300' },
    seed: { type: 'string', default: '1' },
    'at-once': { type: 'string', default: '2' },
    // Folders of tests; all if none is named.
    with: { type: 'string' },
    write: { type: 'boolean', default: false },
  },
});
const [folder] = positionals;
const everything = mutantsByFolder(root);
if (folder !== undefined && !everything.has(folder)) {
  console.error(`src/core has no folder "${folder}", only: ${[...everything.keys()].join(', ')}`);
  process.exit(2);
}
const chosen =
  folder === undefined
    ? sampleOf(everything, Number(values.sample), Number(values.seed))
    : new Map([[folder, everything.get(folder)!]]);
const mutants = [...chosen.values()].flat();
const total = [...everything.values()].reduce((sum, { length }) => sum + length, 0);
console.log(
  `${mutants.length} of ${total} mutants, seed ${values.seed}. First a run that notes which tests reach which.`,
);

const folders = values.with?.split(',').map((name) => `tests/${name}/`) ?? [];
const reached = reaches(root, mutants, folders);
const outcomes = await tried(root, mutants, reached, {
  atOnce: Number(values['at-once']),
  told: (mutant, outcome, done) => {
    if (outcome.noticed) return;
    const why = acceptedReason(mutant) ? 'accepted' : outcome.reached ? 'not noticed' : 'not reached';
    console.log(`${done}/${mutants.length} ${why}: ${mutant.file}:${mutant.line} ${mutant.kind}`);
  },
});
const found = report(everything, mutants, outcomes, { seed: Number(values.seed), folder, tests: values.with });
console.log(reportText(found));
if (values.write) {
  writeFileSync(new URL('../shared/checks/mutation.json', import.meta.url), `${JSON.stringify(found, undefined, 1)}\n`);
}
