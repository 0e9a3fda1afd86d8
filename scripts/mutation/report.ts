import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Mutant } from './mutators.ts';
import type { Outcome } from './run.ts';

/** A mutant that no test need notice, by the line it stands on, and why. */
interface Accepted {
  readonly file: string;
  readonly line: string;
  readonly kind: string;
  readonly reason: string;
}

const root = new URL('../../', import.meta.url);
const accepted: readonly Accepted[] = JSON.parse(readFileSync(new URL('accepted.json', import.meta.url), 'utf8'));

export function acceptedReason(mutant: Mutant): string | undefined {
  const line = lineOf(mutant);
  return accepted.find((one) => one.file === mutant.file && one.kind === mutant.kind && one.line === line)?.reason;
}

function lineOf({ file, line }: Mutant): string {
  return readFileSync(fileURLToPath(new URL(file, root)), 'utf8')
    .split('\n')
    [line - 1]!.trim();
}

export interface Report {
  readonly about: string;
  readonly seed: number;
  /** Folders of tests it was held against; absent: all. */
  readonly tests?: string;
  readonly folders: readonly FolderScore[];
  readonly tried: number;
  readonly all: number;
  /** Share noticed, folders weighed by their mutants, and its 95 % interval. */
  readonly score: number;
  readonly low: number;
  readonly high: number;
  readonly survivors: readonly Survivor[];
}

interface FolderScore {
  readonly folder: string;
  readonly all: number;
  readonly tried: number;
  readonly noticed: number;
  readonly accepted: number;
}

interface Survivor {
  readonly file: string;
  readonly kind: string;
  readonly line: string;
  readonly reached: boolean;
  readonly reason?: string;
}

export function report(
  everything: ReadonlyMap<string, readonly Mutant[]>,
  mutants: readonly Mutant[],
  outcomes: readonly Outcome[],
  { seed, folder: only, tests }: { seed: number; folder: string | undefined; tests: string | undefined },
): Report {
  const folders = [...everything]
    .filter(([folder]) => only === undefined || folder === only)
    .map(([folder, all]): FolderScore => {
      const of = mutants.map((_, i) => i).filter((i) => mutants[i]!.file.startsWith(`src/core/${folder}/`));
      return {
        folder,
        all: all.length,
        tried: of.length,
        noticed: of.filter((i) => outcomes[i]!.noticed).length,
        accepted: of.filter((i) => !outcomes[i]!.noticed && acceptedReason(mutants[i]!)).length,
      };
    });
  const all = folders.reduce((sum, one) => sum + one.all, 0);
  const score = folders.reduce((sum, one) => sum + (one.all / all) * (one.noticed / one.tried), 0);
  // Of a stratified sample without replacement; a stratum noticed whole is given half a miss, so that none is certain.
  const variance = folders.reduce((sum, { all: size, tried, noticed }) => {
    const share = Math.min(noticed, tried - 0.5) / tried;
    return sum + (size / all) ** 2 * (1 - tried / size) * ((share * (1 - share)) / Math.max(1, tried - 1));
  }, 0);
  const half = 1.96 * Math.sqrt(variance);
  const round = (value: number) => Math.round(value * 1000) / 1000;
  return {
    about:
      'Small faults put into the core one by one, and how many of them a test noticed. Written by npm run mutation -- --write.',
    seed,
    ...(tests !== undefined && { tests }),
    folders,
    tried: mutants.length,
    all,
    score: round(score),
    low: round(Math.max(0, score - half)),
    high: round(Math.min(1, score + half)),
    survivors: mutants.flatMap((mutant, i) => {
      const { noticed, reached } = outcomes[i]!;
      if (noticed) return [];
      const reason = acceptedReason(mutant);
      return [{ file: mutant.file, kind: mutant.kind, line: lineOf(mutant), reached, ...(reason && { reason }) }];
    }),
  };
}

export function reportText(report: Report): string {
  const lines = report.folders.map(
    ({ folder, all, tried, noticed, accepted: left }) =>
      `${folder.padEnd(10)} ${String(noticed).padStart(5)} of ${String(tried).padStart(5)} noticed, ${left} accepted; ${all} mutants in all`,
  );
  const percent = (value: number) => `${(100 * value).toFixed(1)} %`;
  return [
    ...lines,
    `Noticed: ${percent(report.score)}, 95 % interval ${percent(report.low)} to ${percent(report.high)}; ${report.tried} of ${report.all} mutants tried, seed ${report.seed}`,
  ].join('\n');
}
