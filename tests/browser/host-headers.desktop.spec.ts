/** The built site on a plain host that sends what docs/host-headers.md has to copy, and nothing else. */
import { readFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join, matchesGlob } from 'node:path';
import { expect, test } from '@playwright/test';

test.use({ serviceWorkers: 'allow' });

const page = readFileSync(new URL('../../docs/host-headers.md', import.meta.url), 'utf8');
/** The first block: headers of every answer. */
const everywhere = page
  .split('```')[1]!
  .trim()
  .split('\n')
  .map((line) => line.split(/: (.*)/, 2) as [string, string]);
/** The table: patterns of paths with one header each; the last row is of all others. */
const rows = [...page.matchAll(/^\| (.+?) \| `([\w-]+): ([^`]+)`.*\|$/gm)].map(([, paths, name, value]) => ({
  patterns: [...paths!.matchAll(/`([^`]+)`/g)].map(([, pattern]) => pattern!),
  others: paths!.startsWith('all others'),
  name: name!,
  value: value!,
}));

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.geojson': 'application/json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.webmanifest': 'application/manifest+json',
};

function headersOf(path: string): Readonly<Record<string, string>> {
  const own = rows.filter(({ patterns, others }) => !others && patterns.some((each) => matchesGlob(path, `${each}*`)));
  const rest = rows.filter(({ others, name }) => others && !own.some((each) => each.name === name));
  return Object.fromEntries([...everywhere, ...[...own, ...rest].map(({ name, value }) => [name, value] as const)]);
}

async function plainHost() {
  const server = createServer(async (asked, answer) => {
    const { pathname } = new URL(asked.url!, 'http://host');
    const file = join('dist', pathname.endsWith('/') ? `${pathname}index.html` : pathname);
    try {
      const body = await readFile(file);
      answer.writeHead(200, { ...headersOf(pathname), 'Content-Type': TYPES[extname(file)] ?? 'text/plain' }).end(body);
    } catch {
      answer.writeHead(404, headersOf(pathname)).end();
    }
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  const address = server.address();
  if (typeof address !== 'object' || address === null) throw new Error('no port');
  return {
    address: `http://127.0.0.1:${address.port}`,
    end: () => {
      server.closeAllConnections();
      return new Promise((done) => server.close(done));
    },
  };
}

test('the page has the headers of all files, of those for other sites and of those that last', () => {
  expect(everywhere.map(([name]) => name)).toEqual([
    'Content-Security-Policy',
    'X-Content-Type-Options',
    'Referrer-Policy',
    'Permissions-Policy',
  ]);
  expect(headersOf('/embed/planner.js')).toMatchObject({
    'Access-Control-Allow-Origin': '*',
    'Cache-Control': 'no-cache',
  });
  expect(headersOf('/_astro/a.js')['Cache-Control']).toContain('immutable');
  expect(headersOf('/embed/parts/a.js')['Cache-Control']).toContain('immutable');
  expect(headersOf('/sw.js')['Cache-Control']).toBe('no-cache');
  expect(headersOf('/')).not.toHaveProperty('Access-Control-Allow-Origin');
});

test('under them a trip is planned and played over, the map has its pictures, every page opens, and the site works offline', async ({
  page,
  context,
}) => {
  const host = await plainHost();
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(String(error)));
  await page.route('https://tile.openstreetmap.org/**', (route) =>
    route.fulfill({ path: 'public/icons/192.png', contentType: 'image/png' }),
  );
  await page.goto(host.address);
  await page.getByLabel('Example trips').selectOption({ label: 'Petrol catamaran, a day out' });
  await expect(page.getByRole('heading', { name: 'Home with reserve' })).toBeVisible();
  await page.getByRole('button', { name: 'Street map' }).press('Enter');
  await expect
    .poll(() =>
      page
        .locator('img.leaflet-tile')
        .evaluateAll((all) => all.some((one) => (one as HTMLImageElement).naturalWidth > 0)),
    )
    .toBe(true);
  await page.locator('#further > summary').press('Enter');
  const sure = page.locator('homeleg-further details.sure').first();
  await sure.locator('> summary').press('Enter');
  const worker = page.waitForEvent('worker');
  await sure.getByRole('button', { name: 'Play it 10,000 times' }).press('Enter');
  await worker;
  await expect(sure).toContainText(/Played: reserve whole in about \d\d of 100/);
  for (const path of [
    'hire',
    'trials',
    'engines',
    'suit',
    'waters',
    'checklists',
    'method',
    'gallery',
    'embed',
    'search',
  ]) {
    await page.goto(`${host.address}/${path}/`);
    await expect.poll(() => page.evaluate(() => document.querySelectorAll('main :not(:defined)').length), path).toBe(0);
  }
  await page.getByRole('main').getByRole('searchbox').fill('mayday');
  await expect(page.getByRole('main').getByRole('status')).toContainText('mayday');
  await page.evaluate(() => navigator.serviceWorker.ready);
  await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
  expect(complaints).toEqual([]);
  await host.end();
  await context.setOffline(true);
  await page.goto(host.address);
  await expect(page.getByRole('heading', { name: 'Home with reserve' })).toBeVisible();
});
