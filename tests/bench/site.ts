import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { availableParallelism, loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Browser, chromium, type Page } from '@playwright/test';
import { serve } from '../../scripts/serve.mjs';

/** What the built site costs on a device slower than this machine. */
export interface SiteCost {
  readonly slowdown: number;
  readonly browser: string;
  readonly loads: number;
  readonly busy: number;
  readonly rows: readonly {
    readonly name: string;
    readonly measured: number;
    /** What the same comes to in milliseconds is asked of it; a goal, and no test depends on it. */
    readonly budget: undefined;
    readonly goalMs?: number;
    readonly microseconds: number;
  }[];
}

/** A phone some years old, as Lighthouse's mobile emulation takes it. */
const SLOWDOWN = 4;
const LOADS = 5;
/** Beyond these a page feels slow (web.dev, Core Web Vitals: LCP 2.5 s, INP 200 ms); the move is our own goal. */
const GOALS = { picture: 2500, interaction: 200, move: 50 };
const PORT = Number(process.env.HOMELEG_TEST_PORT || 4398);
const root = fileURLToPath(new URL('../..', import.meta.url));

/** Names, in order, of what is measured. */
export const SITE_ROWS = [
  'First words on the start page',
  'Largest part of it in place',
  'First whole answer worked out',
  'A move of a dragged waypoint to the next picture, median',
  'A move of a dragged waypoint to the next picture, 95 of 100 sooner',
  'Slowest answer to a press or key in the planner (INP)',
] as const;

export async function siteCosts(): Promise<SiteCost> {
  const folder = join(root, 'dist');
  if (!existsSync(join(folder, 'index.html'))) throw new Error('Build the site first: npm run build');
  const busy = Number((loadavg()[0]! / availableParallelism()).toFixed(1));
  const site = await serve({ folder, port: PORT, host: undefined });
  const browser = await chromium.launch({
    executablePath: process.env.HOMELEG_BROWSER || '/usr/bin/chromium',
    args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking'],
  });
  try {
    const loads: Load[] = [];
    for (let i = 0; i < LOADS; i++) loads.push(await load(browser, site.address));
    const of = (pick: (one: Load) => number) => median(loads.map(pick));
    const interaction = await slowestInteraction(browser, site.address);
    const unit = median([...loads.map((one) => one.unit), interaction.unit]);
    const drag = await dragged();
    const times = [of((one) => one.first), of((one) => one.largest), of((one) => one.answer), ...drag, interaction.ms];
    const goals = [undefined, GOALS.picture, undefined, GOALS.move, undefined, GOALS.interaction];
    return {
      slowdown: SLOWDOWN,
      browser: browser.version(),
      loads: LOADS,
      busy,
      rows: SITE_ROWS.map((name, i) => ({
        name,
        measured: (1000 * times[i]!) / unit,
        budget: undefined,
        ...(goals[i] !== undefined && { goalMs: goals[i] }),
        microseconds: 1000 * times[i]!,
      })),
    };
  } finally {
    await browser.close();
    await site.close();
  }
}

/** ms, and us for the unit. */
interface Load {
  readonly first: number;
  readonly largest: number;
  readonly answer: number;
  readonly unit: number;
}

async function slowPage(browser: Browser): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 412, height: 823 }, serviceWorkers: 'block' });
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWDOWN });
  await page.addInitScript(() => {
    const seen = { largest: 0, interaction: 0 };
    Object.assign(globalThis, { seen });
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) seen.largest = entry.startTime;
    }).observe({ type: 'largest-contentful-paint', buffered: true });
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries() as (PerformanceEntry & { interactionId: number })[]) {
        if (entry.interactionId > 0) seen.interaction = Math.max(seen.interaction, entry.duration);
      }
    }).observe({ type: 'event', buffered: true, durationThreshold: 16 } as PerformanceObserverInit);
  });
  return page;
}

async function load(browser: Browser, address: string): Promise<Load> {
  const page = await slowPage(browser);
  const unit = await unitIn(page);
  await page.goto(address);
  await answered(page);
  const { first, largest, answer } = await page.evaluate(() => ({
    first: performance.getEntriesByName('first-contentful-paint')[0]!.startTime,
    largest: (globalThis as unknown as { seen: { largest: number } }).seen.largest,
    answer: performance.now(),
  }));
  await page.context().close();
  return { first, largest, answer, unit };
}

/** Opens the example, types a load, drags a waypoint by mouse and by keys: the longest from a press to its picture. */
async function slowestInteraction(browser: Browser, address: string): Promise<{ ms: number; unit: number }> {
  const page = await slowPage(browser);
  const unit = await unitIn(page);
  await page.goto(address);
  await answered(page);
  await page.getByLabel('Example trips').selectOption('petrol-day');
  const pin = page.locator('homeleg-route-map').getByRole('button', { name: /^Waypoint 3/ });
  await pin.waitFor();
  await answered(page);
  await pin.scrollIntoViewIfNeeded();
  const box = await pin.boundingBox();
  if (!box) throw new Error('The third waypoint is not on the map');
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let i = 1; i <= 20; i++) await page.mouse.move(x + 20 * Math.sin(i / 5), y + 12 * Math.sin(i / 3));
  await page.mouse.up();
  await answered(page);
  await pin.press('ArrowLeft');
  await pin.press('ArrowUp');
  await answered(page);
  // Entries come after the picture they tell of.
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
  const ms = await page.evaluate(() => (globalThis as unknown as { seen: { interaction: number } }).seen.interaction);
  await page.context().close();
  if (!(ms > 0)) throw new Error('The browser told of no press');
  return { ms, unit };
}

function answered(page: Page): Promise<void> {
  return page
    .locator('homeleg-planner section[data-part="details"]:not(.unsettled)')
    .first()
    .waitFor({ state: 'attached', timeout: 60_000 });
}

/** The unit of the core's figures, us, in this page at this slowdown. */
async function unitIn(page: Page): Promise<number> {
  await page.goto('about:blank');
  return page.evaluate(() => {
    const rounds = Array.from({ length: 9 }, () => {
      let sum = 0;
      const start = performance.now();
      for (let n = 0; n < 20_000; n++) {
        // biome-ignore lint/style/useExponentiationOperator: the unit is told in calls of Math.pow
        for (let i = 0; i < 20; i++) sum += Math.pow(1.05 + sum * 1e-30 + i * 0.11, 1.1 + i * 0.013);
        sum %= 1;
      }
      return (performance.now() - start + sum * 1e-12) / 20;
    });
    return rounds.sort((a, b) => a - b)[4]!;
  });
}

/** ms, median and 95 of 100, by `npm run drag`. */
async function dragged(): Promise<readonly [number, number]> {
  const folder = mkdtempSync(join(tmpdir(), 'homeleg-drag-'));
  try {
    const file = join(folder, 'drag.json');
    const run = spawnSync(process.execPath, [join(root, 'scripts', 'drag.ts'), '--json', file], {
      cwd: root,
      env: { ...process.env, HOMELEG_TEST_PORT: String(PORT + 1) },
      encoding: 'utf8',
    });
    if (run.status !== 0) throw new Error(`The drag could not be measured:\n${run.stderr}`);
    const { medianMs, p95Ms } = JSON.parse(readFileSync(file, 'utf8')) as { medianMs: number; p95Ms: number };
    return [medianMs, p95Ms];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function median(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)]!;
}
