/**
 * Runs test files in the project it stands in, as often as it is asked to: a line `{changed, tests, bail}` of JSON on its
 * input, `{done: ...}` on its output, `{file}` after every test file before that. Started by worker.ts.
 */
import { join, resolve } from 'node:path';
import { createInterface } from 'node:readline';
import type { TestModule } from 'vitest/node';
import { BaseSequencer, createVitest } from 'vitest/node';
import type { Order, Ran } from './worker.ts';

const root = process.cwd();
const setup = process.env.HOMELEG_SETUP;
const tell = (line: object) => process.stdout.write(`\n${JSON.stringify(line)}\n`);
let ordered: readonly string[] = [];

/** In the order that was asked for. */
class AsAsked extends BaseSequencer {
  override async sort(files: Parameters<BaseSequencer['sort']>[0]) {
    const place = (one: { moduleId: string }) => ordered.indexOf(one.moduleId);
    return files.toSorted((a, b) => place(a) - place(b));
  }
}

let bail = 0;
const vitest = await createVitest(
  'test',
  {
    root,
    config: join(root, 'vitest.config.ts'),
    watch: false,
    silent: true,
    maxWorkers: 1,
    // Patient, for a machine that is busy; who comes to no end is noticed by who waits.
    testTimeout: 600_000,
    hookTimeout: 600_000,
    fsModuleCache: false,
    // A fault that is noticed need not be told well.
    chaiConfig: { truncateThreshold: 40 },
    sequence: { sequencer: AsAsked },
    ...(setup && { setupFiles: [setup] }),
    reporters: [
      {
        onTestCaseResult: (test) => {
          if (bail > 0 && test.result().state === 'failed') void vitest.cancelCurrentRun('test-failure');
        },
        onTestModuleEnd: (module) => {
          tell({ file: module.relativeModuleId });
        },
      },
    ],
  },
  // Nothing is kept between runs but in this process, and no file is watched.
  { cacheDir: join(root, '.cache'), server: { watch: null } },
);
await vitest.standalone();
const specifications = new Map((await vitest.globTestSpecifications()).map((one) => [one.moduleId, one]));

function ran(modules: readonly TestModule[], errors: number): Ran {
  const tests = modules.flatMap((module) => [...module.children.allTests()]);
  const count = (state: string) => tests.filter((test) => test.result().state === state).length;
  return {
    passed: count('passed'),
    failed: count('failed'),
    failing: modules.filter((module) => !module.ok()).map((module) => module.relativeModuleId),
    errors: errors + modules.reduce((sum, module) => sum + module.errors().length, 0),
    files: modules.filter((module) => module.state() === 'passed').length,
  };
}

tell({ ready: [...specifications.keys()].length });
for await (const line of createInterface({ input: process.stdin })) {
  const order = JSON.parse(line) as Order;
  for (const file of order.changed) vitest.invalidateFile(resolve(root, file));
  ordered = order.tests.map((file) => resolve(root, file));
  bail = order.bail ? 1 : 0;
  const asked = ordered.map((file) => specifications.get(file)!);
  const { testModules, unhandledErrors } = await vitest.runTestSpecifications(asked);
  tell({ done: ran(testModules, unhandledErrors.length) });
  vitest.state.filesMap.clear();
}
await vitest.close();
process.exit(0);
