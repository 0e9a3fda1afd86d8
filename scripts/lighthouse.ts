/**
 * npm run lighthouse [-- /path/ ...] [--times N]: every page of the built site in mobile emulation, four categories, and
 * what is missing to 100; of N visits the one of median speed. Speed is told twice: as Lighthouse says it, and as it says
 * of the same visit when a task lasts as long as the processor worked on it (see lighthouse/own-time.ts). The first sinks
 * with every other program on the machine, Lighthouse itself among them. `--json FILE` keeps the figures.
 */
import { execFile } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs, promisify } from 'node:util';
import { inOwnTime, type TraceEvent } from './lighthouse/own-time.ts';
import { serve } from './serve.mjs';

/** Fetched by npm when the command is first run: some 200 packages that nothing else here needs. */
const LIGHTHOUSE = 'lighthouse@12.8.2';
const FLAGS = '--headless=new --no-sandbox --disable-gpu --disable-background-networking';

const CATEGORIES = ['performance', 'accessibility', 'best-practices', 'seo'] as const;
const PAGES = [
  '/',
  '/engines/',
  '/suit/',
  '/trials/',
  '/hire/',
  '/checklists/',
  '/checklists/before-launch/',
  '/method/',
  '/search/',
  '/waters/',
  '/embed/',
  '/gallery/',
  '/changes/',
  '/404.html',
  '/de/',
];
const FIGURES = ['largest-contentful-paint', 'total-blocking-time', 'cumulative-layout-shift'] as const;
const PORT = Number(process.env.HOMELEG_TEST_PORT || 4398);

/** What we read of a report. */
interface Report {
  readonly categories: Readonly<
    Record<string, { score: number | null; auditRefs: readonly { id: string; weight: number }[] } | undefined>
  >;
  readonly audits: Readonly<Record<string, { score: number | null; numericValue?: number } | undefined>>;
}

interface Row {
  readonly page: string;
  readonly scores: Readonly<Record<string, number>>;
  /** Of speed alone, and its figures, in the processor's own time. */
  readonly own: { readonly performance: number; readonly figures: Readonly<Record<string, number>> };
  readonly figures: Readonly<Record<string, number>>;
  readonly missing: readonly string[];
}

/** Where Lighthouse puts what it saw when it keeps it in a folder. */
const TRACE = 'defaultPass.trace.json';

const percent = ({ categories }: Report, id: string): number => Math.round(100 * (categories[id]?.score ?? 0));

const figuresOf = ({ audits }: Report): Row['figures'] =>
  Object.fromEntries(FIGURES.map((id) => [id, audits[id]?.numericValue ?? Number.NaN]));

function rowOf(page: string, { seen, own }: Visit): Row {
  const { categories, audits } = seen;
  const missing = CATEGORIES.filter((id) => id !== 'performance').flatMap((id) =>
    (categories[id]?.auditRefs ?? [])
      .filter((ref) => ref.weight > 0 && (audits[ref.id]?.score ?? 1) < 1)
      .map((ref) => `${id}: ${ref.id}`),
  );
  return {
    page,
    scores: Object.fromEntries(CATEGORIES.map((id) => [id, percent(seen, id)])),
    figures: figuresOf(seen),
    own: { performance: percent(own, 'performance'), figures: figuresOf(own) },
    missing,
  };
}

interface Visit {
  readonly seen: Report;
  readonly own: Report;
}

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { times: { type: 'string', default: '1' }, json: { type: 'string' } },
});
const times = Number(values.times);
const site = await serve({ folder: 'dist', port: PORT, host: undefined });
const folder = mkdtempSync(join(tmpdir(), 'visit-'));

async function lighthouse(page: string, ...more: readonly string[]): Promise<Report> {
  const address = new URL(page, site.address).href;
  const flags = ['--output=json', '--quiet', `--chrome-flags=${FLAGS}`, `--only-categories=${CATEGORIES.join()}`];
  const { stdout } = await promisify(execFile)('npx', ['--yes', LIGHTHOUSE, address, ...flags, ...more], {
    env: { ...process.env, CHROME_PATH: process.env.HOMELEG_BROWSER || '/usr/bin/chromium' },
    maxBuffer: 64 * 1024 * 1024,
  });
  return JSON.parse(stdout) as Report;
}

async function visit(page: string): Promise<Visit> {
  const seen = await lighthouse(page, `-GA=${folder}`);
  const file = join(folder, TRACE);
  const trace = JSON.parse(readFileSync(file, 'utf8')) as { readonly traceEvents: readonly TraceEvent[] };
  writeFileSync(file, JSON.stringify({ ...trace, traceEvents: inOwnTime(trace.traceEvents) }));
  return { seen, own: await lighthouse(page, `-A=${folder}`) };
}

/** The one of median speed in own time; as seen, if those are alike. */
async function typical(page: string): Promise<Visit> {
  const visits: Visit[] = [];
  for (let i = 0; i < times; i++) visits.push(await visit(page));
  const speed = ({ seen, own }: Visit): number => percent(own, 'performance') + percent(seen, 'performance') / 1000;
  return visits.sort((a, b) => speed(a) - speed(b))[times >> 1]!;
}

function told({ 'largest-contentful-paint': paint, 'total-blocking-time': blocked, ...rest }: Row['figures']): string {
  const figures = [(paint! / 1000).toFixed(1), blocked!.toFixed(0), rest['cumulative-layout-shift']!.toFixed(3)];
  return figures.map((figure) => figure.padStart(8)).join('');
}

const rows: Row[] = [];
try {
  console.log(
    `${'page'.padEnd(28)}${CATEGORIES.map((id) => id.padStart(16)).join('')}   LCP s  TBT ms     CLS   in own time`,
  );
  for (const page of positionals.length > 0 ? positionals : PAGES) {
    const row = rowOf(page, await typical(page));
    rows.push(row);
    const scores = CATEGORIES.map((id) => String(row.scores[id]).padStart(16)).join('');
    const own = `${String(row.own.performance).padStart(14)}${told(row.own.figures)}`;
    console.log(`${page.padEnd(28)}${scores}${told(row.figures)}${own}`);
    for (const each of row.missing) console.log(`  ${each}`);
  }
} finally {
  await site.close();
  rmSync(folder, { recursive: true });
}
if (values.json) writeFileSync(values.json, `${JSON.stringify(rows, undefined, 2)}\n`);
