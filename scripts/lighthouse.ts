/**
 * npm run lighthouse [-- /path/ ...]: every page of the built site in mobile emulation, four categories, and what is
 * missing to 100. `--json FILE` keeps the figures. A busy machine lowers the figures for speed, nothing else.
 */
import { execFile } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { promisify } from 'node:util';
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
  readonly figures: Readonly<Record<string, number>>;
  readonly missing: readonly string[];
}

function rowOf(page: string, { categories, audits }: Report): Row {
  const percent = (id: string): number => Math.round(100 * (categories[id]?.score ?? 0));
  const missing = CATEGORIES.filter((id) => id !== 'performance').flatMap((id) =>
    (categories[id]?.auditRefs ?? [])
      .filter((ref) => ref.weight > 0 && (audits[ref.id]?.score ?? 1) < 1)
      .map((ref) => `${id}: ${ref.id}`),
  );
  return {
    page,
    scores: Object.fromEntries(CATEGORIES.map((id) => [id, percent(id)])),
    figures: Object.fromEntries(FIGURES.map((id) => [id, audits[id]?.numericValue ?? Number.NaN])),
    missing,
  };
}

const asked = process.argv.slice(2);
const json = asked.indexOf('--json');
const file = json < 0 ? undefined : asked.splice(json, 2)[1];
const site = await serve({ folder: 'dist', port: PORT, host: undefined });
const run = promisify(execFile);

async function reportOn(page: string): Promise<Report> {
  const address = new URL(page, site.address).href;
  const asked = ['--output=json', '--quiet', `--chrome-flags=${FLAGS}`, `--only-categories=${CATEGORIES.join()}`];
  const { stdout } = await run('npx', ['--yes', LIGHTHOUSE, address, ...asked], {
    env: { ...process.env, CHROME_PATH: process.env.HOMELEG_BROWSER || '/usr/bin/chromium' },
    maxBuffer: 64 * 1024 * 1024,
  });
  return JSON.parse(stdout) as Report;
}

const rows: Row[] = [];
try {
  console.log(`${'page'.padEnd(28)}${CATEGORIES.map((id) => id.padStart(16)).join('')}    LCP s   TBT ms    CLS`);
  for (const page of asked.length > 0 ? asked : PAGES) {
    const row = rowOf(page, await reportOn(page));
    rows.push(row);
    const { scores, figures } = row;
    const [paint = 0, blocked = 0, shift = 0] = FIGURES.map((id) => figures[id]);
    const told = CATEGORIES.map((id) => String(scores[id]).padStart(16)).join('');
    const tail = [(paint / 1000).toFixed(1).padStart(9), blocked.toFixed(0).padStart(9), shift.toFixed(3).padStart(7)];
    console.log(`${page.padEnd(28)}${told}${tail.join('')}`);
    for (const each of row.missing) console.log(`  ${each}`);
  }
} finally {
  await site.close();
}
if (file) writeFileSync(file, `${JSON.stringify(rows, undefined, 2)}\n`);
