/**
 * npm run drag: a waypoint of the built site's example trip dragged in mobile emulation at a quarter of the processor's
 * speed; how long from each move to the next picture, and every task over 50 ms. `--json FILE` keeps the figures.
 * A busy machine makes the figures worse, never better.
 */
import { writeFileSync } from 'node:fs';
import { chromium } from '@playwright/test';
import { serve } from './serve.mjs';

/** Times slower than this machine. */
const SLOWDOWN = 4;
const MOVES = 60;
/** Goals: the median move, and the longest task, ms. */
const PAINT = 50;
const TASK = 50;
const PORT = Number(process.env.HOMELEG_TEST_PORT || 4399);

const site = await serve({ folder: 'dist', port: PORT, host: undefined });
const browser = await chromium.launch({
  executablePath: process.env.HOMELEG_BROWSER || '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking'],
});
try {
  const page = await browser.newPage({ viewport: { width: 1280, height: 900 }, serviceWorkers: 'block' });
  await page.goto(site.address);
  await page.getByLabel('Example trips').selectOption('petrol-day');
  const pins = page.locator('homeleg-route-map').getByRole('button', { name: /^Waypoint 3/ });
  await pins.waitFor();
  await page.locator('homeleg-planner section.unsettled').waitFor({ state: 'detached' });
  await pins.scrollIntoViewIfNeeded();
  const box = await pins.boundingBox();
  if (!box) throw new Error('The third waypoint is not on the map');
  await page.evaluate(() => {
    const seen = { moves: [] as number[], tasks: [] as number[] };
    Object.assign(globalThis, { seen });
    globalThis.addEventListener(
      'pointermove',
      (event) => {
        // After the frame in which the move is drawn.
        requestAnimationFrame(() => {
          const { port1, port2 } = new MessageChannel();
          port1.onmessage = () => seen.moves.push(performance.now() - event.timeStamp);
          port2.postMessage(undefined);
        });
      },
      true,
    );
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) seen.tasks.push(entry.duration);
    }).observe({ type: 'longtask' });
  });
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWDOWN });
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let i = 1; i <= MOVES; i++) await page.mouse.move(x + 30 * Math.sin(i / 5), y + 12 * Math.sin(i / 3));
  await page.mouse.up();
  await session.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  const { moves, tasks } = await page.evaluate(
    () => (globalThis as unknown as { seen: { moves: number[]; tasks: number[] } }).seen,
  );
  moves.sort((a, b) => a - b);
  const at = (share: number): number =>
    moves[Math.min(moves.length - 1, Math.floor(share * moves.length))] ?? Number.NaN;
  const found = {
    slowdown: SLOWDOWN,
    moves: moves.length,
    medianMs: at(0.5),
    p95Ms: at(0.95),
    longTasks: tasks.map((ms) => Math.round(ms)),
    goals: { medianMs: PAINT, longestTaskMs: TASK },
  };
  console.log(
    `${found.moves} moves: median ${found.medianMs.toFixed(0)} ms to the picture (goal ${PAINT}), p95 ${found.p95Ms.toFixed(0)} ms`,
  );
  console.log(`tasks over ${TASK} ms: ${found.longTasks.length === 0 ? 'none' : found.longTasks.join(', ')}`);
  const json = process.argv.indexOf('--json');
  const file = json < 0 ? undefined : process.argv[json + 1];
  if (file) writeFileSync(file, `${JSON.stringify(found, undefined, 2)}\n`);
} finally {
  await browser.close();
  await site.close();
}
