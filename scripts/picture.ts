/** npm run picture: draws the README's picture of the planner from the built site in dist. */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { chromium } from '@playwright/test';

const PORT = 4398;
const server = spawn(process.execPath, ['scripts/serve.mjs', 'dist'], {
  env: { ...process.env, PORT: String(PORT) },
  stdio: ['ignore', 'pipe', 'inherit'],
});

try {
  await once(server.stdout, 'data');
  const browser = await chromium.launch({
    executablePath: process.env.HOMELEG_BROWSER || '/usr/bin/chromium',
    args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking'],
  });
  const page = await browser.newPage({
    viewport: { width: 1280, height: 1180 },
    colorScheme: 'light',
    reducedMotion: 'reduce',
  });
  await page.goto(`http://localhost:${PORT}/`);
  await page.getByLabel('Example trips').selectOption({ label: 'Petrol catamaran, a day out' });
  await page.getByRole('heading', { name: 'Home with reserve' }).waitFor();
  await page
    .getByRole('region', { name: 'Map of the route' })
    .getByRole('button', { name: /^Waypoint 28/ })
    .waitFor();
  // The note about the opened example is not part of the picture.
  await page.reload();
  await page.getByRole('heading', { name: 'Home with reserve' }).waitFor();
  await page
    .getByRole('region', { name: 'Map of the route' })
    .getByRole('button', { name: /^Waypoint 28/ })
    .waitFor();
  await page.locator('homeleg-fuel-bar svg').first().waitFor();
  await page.evaluate(() => document.fonts.ready);
  await page.locator('homeleg-planner').evaluate((planner) => planner.scrollIntoView());
  await page.screenshot({ path: 'public/planner.png' });
  await browser.close();
  console.log('Drawn: public/planner.png');
} finally {
  server.kill();
}
