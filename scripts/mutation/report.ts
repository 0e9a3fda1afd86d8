import { type Name, reasonOf } from './accepted.ts';
import type { Attempt, Fate } from './attempts.ts';
import type { Mutant } from './mutators.ts';
import { byFolder, folderOf, grouped } from './sample.ts';

export interface Run {
  readonly everything: readonly Mutant[];
  readonly attempts: readonly Attempt[];
  readonly names: ReadonlyMap<Mutant, Name>;
  readonly seed: number;
  /** Processor time of the tests one mutant may meet, s. */
  readonly budgetS: number;
}

export interface Band {
  readonly share: number;
  readonly low: number;
  readonly high: number;
}

/** Share with its 95 % interval after Wilson (1927), for a sample of a larger number. */
export function wilson(found: number, tried: number): Band {
  if (tried === 0) return { share: 0, low: 0, high: 1 };
  const z = 1.96;
  const share = found / tried;
  const middle = share + z ** 2 / (2 * tried);
  const half = z * Math.sqrt((share * (1 - share)) / tried + z ** 2 / (4 * tried ** 2));
  const whole = 1 + z ** 2 / tried;
  return { share, low: Math.max(0, (middle - half) / whole), high: Math.min(1, (middle + half) / whole) };
}

const percent = (value: number) => `${(100 * value).toFixed(1)} %`;
const known = (fate: Fate) => fate === 'noticed' || fate === 'endless';

/** Noticed of tried; endless ones are noticed by whoever waits for them. */
export function score(attempts: readonly Attempt[]): Band {
  return wilson(attempts.filter(({ fate }) => known(fate)).length, attempts.length);
}

/** The same without what kept answers alone noticed. */
export function scoreStated(attempts: readonly Attempt[]): Band {
  return wilson(attempts.filter(({ fate, keptAlone }) => known(fate) && !keptAlone).length, attempts.length);
}

export function scoreText(run: Run): string {
  const { everything, attempts, seed } = run;
  return `Noticed: ${told(score(attempts), run)} of ${attempts.length}; by tests that state something ${told(scoreStated(attempts), run)}; ${everything.length} mutants in all, seed ${seed}`;
}

function told({ share, low, high }: Band, { everything, attempts }: Run): string {
  return percent(share) + (attempts.length < everything.length ? ` (${percent(low)} to ${percent(high)})` : '');
}

/** docs/mutation.md */
export function page(run: Run): string {
  const { attempts, budgetS } = run;
  const survivors = attempts.filter(({ fate }) => !known(fate));
  const excused = survivors.filter(({ mutant }) => reasonOf(run.names.get(mutant)!));
  const without = attempts.filter((one) => !excused.includes(one));
  return `# Faults put into the core

Do the tests notice when the core is wrong? \`npm run mutation\` changes \`src/core\` in one small place at a time (a sign, a
bound of a comparison, a condition, a number, a statement, a branch, a call) and runs the tests that reach the place: the
test file of the same name first, then the quickest, up to ${budgetS} s of processor time for each fault. Tests beyond that are not
asked, so the figure is a lower bound. Types and texts for people are left alone; tests of files and commands and those with
damaged files are not asked either. Written by \`npm run mutation -- --write\`.

There are two kinds of tests. Most state something of boats that is right. Kept answers (\`tests/core/kept\`) hold every
figure that comes of many invented questions against what it was before: they notice that something moved, and know nothing
of what is right. They are asked last, so both shares are told, each with its 95 % band: noticed at all, and noticed by
tests that state something.

**${scoreText(run)}.**
${excused.length > 0 ? `\nWithout the ${excused.length} that no test can or need notice (reasons below): ${percent(score(without).share)}.\n` : ''}
${folderTable(run)}

${kindTable(run)}

## Not noticed

${survivors.length === 0 ? 'None.' : survivors.map((one) => survivor(run, one)).join('\n')}
`;
}

function folderTable({ everything, attempts }: Run): string {
  const all = byFolder(everything);
  const rows = [...all].map(([folder, mutants]) => {
    const of = attempts.filter(({ mutant }) => folderOf(mutant) === folder);
    return row([`\`${folder}\``, mutants.length, ...counts(of)]);
  });
  return [
    row([
      'folder',
      'mutants',
      'tried',
      'noticed',
      'by kept answers alone',
      'endless',
      'survived',
      'unreached',
      'share (95 % band)',
    ]),
    row(['---', ...Array.from({ length: 8 }, () => '---:')]),
    ...rows,
  ].join('\n');
}

function kindTable({ attempts }: Run): string {
  const rows = [...grouped(attempts, ({ mutant }) => mutant.kind)]
    .sort(([a, of], [b, others]) => others.length - of.length || (a < b ? -1 : 1))
    .map(([kind, of]) =>
      row([`\`${kind.replaceAll('|', '\\|')}\``, of.length, of.filter(({ fate }) => known(fate)).length]),
    );
  return [row(['kind', 'tried', 'noticed']), row(['---', '---:', '---:']), ...rows].join('\n');
}

function counts(attempts: readonly Attempt[]): readonly (string | number)[] {
  const count = (fate: Fate) => attempts.filter((one) => one.fate === fate).length;
  const { share, low, high } = score(attempts);
  const told = attempts.length === 0 ? '' : `${percent(share)} (${percent(low)} to ${percent(high)})`;
  const alone = attempts.filter(({ keptAlone }) => keptAlone).length;
  return [attempts.length, count('noticed'), alone, count('endless'), count('survived'), count('unreached'), told];
}

function row(cells: readonly (string | number)[]): string {
  return `| ${cells.join(' | ')} |`;
}

function survivor({ names }: Run, { mutant, fate, unmet }: Attempt): string {
  const name = names.get(mutant)!;
  const why = reasonOf(name) ?? (fate === 'unreached' ? 'no test reaches it' : 'a test is missing');
  const which = name.nth > 1 ? `, number ${name.nth}` : '';
  const more = unmet > 0 ? ` (${unmet} slower test files not asked)` : '';
  return `- \`${name.file}\`, ${name.kind}${which}: \`\` ${name.line} \`\`: ${why}${more}`;
}
