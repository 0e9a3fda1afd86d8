import { type ChildProcess, spawn } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import { type Mutant, mutated } from './mutators.ts';

export interface Order {
  /** Files that are no longer what they were. */
  readonly changed: readonly string[];
  readonly tests: readonly string[];
  /** Stop at the first test that fails. */
  readonly bail: boolean;
}

/** What came of it: tests, test files that passed wholly, and errors outside of tests. */
export interface Ran {
  readonly passed: number;
  readonly failed: number;
  readonly failing: readonly string[];
  readonly errors: number;
  readonly files: number;
}

export interface End {
  readonly end: 'passed' | 'failed' | 'endless';
  /** The test file that failed. */
  readonly by?: string;
}

/** ms of waiting for one test file before what it would take unharmed counts at all; starting is a part of it. */
const PATIENCE = 60_000;

/** One copy of the project and the process that runs tests in it, started anew after an end without an answer. */
export class Worker {
  static readonly #all = new Set<Worker>();
  readonly #copy: string;
  readonly #setup: Readonly<Record<string, string>>;
  #process: ChildProcess | undefined;
  #answer: (answer: Ran | undefined) => void = () => {};
  #sign: () => void = () => {};
  /** Files changed since they were last told. */
  #changed = new Set<string>();

  /** Processes of their own groups, which would outlive this one. */
  static {
    process.on('exit', () => {
      for (const worker of Worker.#all) worker.close();
    });
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.on(signal, () => process.exit(1));
  }

  constructor(copy: string, setup: Readonly<Record<string, string>> = {}) {
    this.#copy = copy;
    this.#setup = setup;
    Worker.#all.add(this);
  }

  /** What stands from then on in a file of the copy. */
  write(file: string, text: string): void {
    writeFileSync(join(this.#copy, file), text);
    this.#changed.add(file);
  }

  /** Runs the test files with one mutant in place; the file is as it was afterwards. */
  async attempt(mutant: Mutant, tests: readonly string[], patience: number): Promise<End> {
    const text = readFileSync(join(this.#copy, mutant.file), 'utf8');
    this.write(mutant.file, mutated(text, mutant));
    try {
      const ran = await this.run({ tests, bail: true }, patience);
      if (!ran) return { end: 'endless' };
      if (ran.failed > 0 || ran.errors > 0) {
        const by = tests.find((file) => ran.failing.includes(file));
        return { end: 'failed', ...(by && { by }) };
      }
      if (ran.files !== tests.length || ran.passed === 0) {
        throw new Error(`${ran.files} of ${tests.length} test files came to an end with ${JSON.stringify(mutant)}`);
      }
      return { end: 'passed' };
    } finally {
      this.write(mutant.file, text);
    }
  }

  /** Nothing, if no test file ended for so long, or the process did not live through it. */
  async run(order: Omit<Order, 'changed'>, patience: number): Promise<Ran | undefined> {
    this.#process ??= this.#started();
    const child = this.#process;
    const changed = [...this.#changed];
    this.#changed.clear();
    return new Promise((resolve) => {
      let timer: NodeJS.Timeout | undefined;
      this.#sign = () => {
        clearTimeout(timer);
        timer = setTimeout(() => this.#kill(), PATIENCE + patience);
      };
      this.#answer = (answer) => {
        clearTimeout(timer);
        this.#sign = () => {};
        this.#answer = () => {};
        resolve(answer);
      };
      this.#sign();
      child.stdin!.write(`${JSON.stringify({ ...order, changed } satisfies Order)}\n`);
    });
  }

  close(): void {
    this.#kill();
  }

  #started(): ChildProcess {
    const child = spawn(process.execPath, [fileURLToPath(new URL('runner.ts', import.meta.url))], {
      cwd: this.#copy,
      env: { ...process.env, ...this.#setup, NODE_ENV: 'test', NO_COLOR: '1' },
      stdio: ['pipe', 'pipe', 'ignore'],
      detached: true,
    });
    child.stdin!.on('error', () => {});
    child.on('exit', () => {
      if (this.#process !== child) return;
      this.#process = undefined;
      this.#answer(undefined);
    });
    createInterface({ input: child.stdout! }).on('line', (line) => {
      if (this.#process !== child || !line.startsWith('{"')) return;
      const told = JSON.parse(line) as { done?: Ran };
      if (told.done) this.#answer(told.done);
      else this.#sign();
    });
    return child;
  }

  /** The process and the workers it started. */
  #kill(): void {
    const { pid } = this.#process ?? {};
    if (pid !== undefined) {
      try {
        process.kill(-pid, 'SIGKILL');
      } catch {
        // It is gone already.
      }
    }
  }
}
