import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContext, test as base, expect, type Page } from '@playwright/test';
import { serve } from '../../scripts/serve.mjs';
import { builtPages } from '../../scripts/site/built-pages.ts';
import { buildWorker } from '../../scripts/site/worker.ts';

/** A server before another one, whose line goes dead after so many answers, in the middle of the next. */
async function frailLine(port: number, host: string, behind: string) {
  let left = Number.POSITIVE_INFINITY;
  const server = createServer((asked, answer) => {
    left--;
    if (left < -1) {
      asked.socket.destroy();
      return;
    }
    const dying = left < 0;
    const asking = request(new URL(asked.url!, behind), { method: asked.method, headers: asked.headers }, (got) => {
      answer.writeHead(got.statusCode!, got.headers);
      if (!dying) got.pipe(answer);
      else
        got.once('data', (part: Buffer) => {
          // The beginning of a file, then nothing more.
          answer.write(part.subarray(0, Math.floor(part.length / 2)), () => asked.socket.destroy());
        });
    });
    asking.on('error', () => asked.socket.destroy());
    asked.pipe(asking);
  });
  await new Promise<void>((done) => server.listen(port, host, done));
  return {
    deadAfter: (answers: number) => {
      left = answers;
    },
    dead: () => left < 0,
    whole: () => {
      left = Number.POSITIVE_INFINITY;
    },
    close: () => {
      server.closeAllConnections();
      return new Promise((done) => server.close(done));
    },
  };
}

/** A copy of the built site on a port of its own, to be cut off and built anew. */
async function ownSite(parallelIndex: number) {
  const folder = mkdtempSync(join(tmpdir(), 'homeleg-offline-'));
  cpSync('dist', folder, { recursive: true });
  const port = Number(process.env.HOMELEG_TEST_PORT || 4397) + 300 + parallelIndex;
  const host = '127.0.0.1';
  const behind = await serve({ folder, port: 0, host });
  const line = await frailLine(port, host, behind.address);
  return {
    address: `http://${host}:${port}/`,
    line,
    cut: () => line.deadAfter(-1),
    back: () => line.whole(),
    /** The parts that pages load when they are asked for. */
    parts: () => readdirSync(join(folder, '_astro')).filter((file) => file.endsWith('.js')),
    /** A new version without one of the parts, told from the one before by a sentence on the method page. */
    anew: async (sentence: string, without?: string) => {
      if (without) rmSync(join(folder, '_astro', without));
      say(folder, 'method', sentence);
      await buildWorker(folder);
    },
    /** A new version in which every page says so. */
    allAnew: async (sentence: string) => {
      for (const { path } of builtPages(folder)) if (path.endsWith('/')) say(folder, path, sentence);
      await buildWorker(folder);
    },
    /** A page as an upload that stopped half way left it: older than the worker that is there already. */
    leftBehind: (path: string) => cpSync(join('dist', path, 'index.html'), join(folder, path, 'index.html')),
    end: async () => {
      await line.close();
      await behind.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

function say(folder: string, path: string, sentence: string): void {
  const page = join(folder, path, 'index.html');
  writeFileSync(page, readFileSync(page, 'utf8').replace('</h1>', `</h1><p>${sentence}</p>`));
}

const test = base.extend<{ site: Awaited<ReturnType<typeof ownSite>> }>({
  // biome-ignore lint/correctness/noEmptyPattern: the runner wants a pattern
  site: async ({}, use, { parallelIndex }) => {
    const site = await ownSite(parallelIndex);
    await use(site);
    await site.end();
  },
});

test.use({ serviceWorkers: 'allow' });

/** Opens one page and waits until everything is on the device. */
async function firstVisit(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await page.evaluate(() => navigator.serviceWorker.ready);
  await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
}

async function cutOff(context: BrowserContext, site: { cut(): void }): Promise<void> {
  site.cut();
  await context.setOffline(true);
}

test('after one visit every page opens with the network cut', async ({ page, context, site }) => {
  await firstVisit(page, site.address);
  await cutOff(context, site);
  const failures: string[] = [];
  page.on('requestfailed', (request) => {
    // What a page was still loading when the next one was opened is broken off, not missing.
    const why = request.failure()?.errorText;
    if (why !== 'net::ERR_ABORTED') failures.push(`${request.url()} ${why}`);
  });
  page.on('pageerror', (error) => failures.push(String(error)));
  // Not the gallery's framed pages, which stand for pages of others.
  const paths = builtPages('dist')
    .map(({ path }) => path)
    .filter((path) => !path.includes('/guests/'));
  expect(paths.length).toBeGreaterThan(18);
  for (const path of paths) {
    await page.goto(new URL(path, site.address).href);
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    await expect(page.getByRole('contentinfo')).toContainText(
      /not for navigation|nicht zum Navigieren|pas pour naviguer|no para navegar/i,
    );
    // Its own elements too, with what they load.
    await expect.poll(() => page.evaluate(() => document.querySelectorAll('main :not(:defined)').length), path).toBe(0);
  }
  expect(failures).toEqual([]);
});

test('with the network cut the gallery says of the pages it frames that they need one, and shows them when it is back', async ({
  page,
  context,
  site,
}) => {
  await firstVisit(page, site.address);
  await cutOff(context, site);
  await page.goto(new URL('/gallery/', site.address).href);
  const framed = page.locator('[data-src="/guests/club.html"]');
  await framed.scrollIntoViewIfNeeded();
  await expect(framed).toContainText('needs JavaScript and, as a page of others, a network');
  await expect(framed.locator('iframe')).toHaveCount(0);
  site.back();
  await context.setOffline(false);
  await expect(framed.locator('iframe')).toHaveCount(1);
});

test('with the network cut a trip is planned, its further answers worked out, and the search finds', async ({
  page,
  context,
  site,
}) => {
  await firstVisit(page, new URL('/checklists/', site.address).href);
  await cutOff(context, site);
  await page.goto(site.address);
  await page.getByLabel('Example trips').selectOption({ label: 'Petrol catamaran, a day out' });
  await expect(page.getByRole('heading', { name: 'Home with reserve' })).toBeVisible();
  await expect(
    page.getByRole('region', { name: 'Map of the route' }).getByRole('button', { name: /^Waypoint 2 / }),
  ).toBeVisible();
  // Parts and a worker that only load when they are asked for.
  await page.locator('#further > summary').press('Enter');
  const sure = page.locator('homeleg-further details.sure').first();
  await sure.locator('> summary').press('Enter');
  await expect(sure).toContainText(/in about \d\d of 100 such trips/);
  await page.goto(new URL('/search/?q=mayday', site.address).href);
  await expect(page.getByRole('main').getByRole('status')).toContainText('places about “mayday”');
});

test('an address without its slash and one that does not exist are answered offline', async ({
  page,
  context,
  site,
}) => {
  await firstVisit(page, site.address);
  await cutOff(context, site);
  await page.goto(new URL('/checklists', site.address).href);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Checklists');
  await page.goto(new URL('/no/such/page', site.address).href);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('No page at this address');
});

test('a new version waits until it is let in, and what was typed is still there', async ({ page, site }) => {
  await firstVisit(page, site.address);
  await page.getByLabel('Example trips').selectOption({ label: 'Petrol catamaran, a day out' });
  await expect(page.getByRole('heading', { name: 'Home with reserve' })).toBeVisible();
  let loads = 0;
  page.on('load', () => loads++);
  await site.anew('The second version.');
  await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
  const bar = page.getByText('A new version is ready.');
  await expect(bar).toBeVisible();
  expect(loads).toBe(0);
  await page.getByRole('button', { name: 'Use it now' }).click();
  await expect.poll(() => loads).toBe(1);
  await expect(page.getByRole('heading', { name: 'Home with reserve' })).toBeVisible();
  await expect(bar).toBeHidden();
  await page.goto(new URL('/method/', site.address).href);
  await expect(page.getByText('The second version.')).toBeVisible();
});

test('until then the version before is shown, and the bar can be put off', async ({ page, site }) => {
  await firstVisit(page, site.address);
  await site.anew('The second version.');
  await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
  await page.getByRole('button', { name: 'Later' }).click();
  await expect(page.getByText('A new version is ready.')).toBeHidden();
  await page.goto(new URL('/method/', site.address).href);
  await expect(page.getByText('The second version.')).toHaveCount(0);
  // Told again on the next page.
  await expect(page.getByText('A new version is ready.')).toBeVisible();
});

test('a page that does not keep what was typed says so before it is loaded again', async ({ page, site }) => {
  await firstVisit(page, new URL('/search/', site.address).href);
  await page.getByRole('main').getByRole('searchbox').fill('anchor');
  await site.anew('The second version.');
  await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
  await page.getByRole('button', { name: 'Use it now' }).click();
  await expect(page.getByText('This page does not keep what you typed.')).toBeVisible();
  await page.getByRole('button', { name: 'Later' }).click();
  await expect(page.getByRole('main').getByRole('searchbox')).toHaveValue('anchor');
});

test('another tab is not loaded again when the new version is let in', async ({ page, context, site }) => {
  await firstVisit(page, site.address);
  const other = await context.newPage();
  await firstVisit(other, new URL('/checklists/weather/', site.address).href);
  let loads = 0;
  other.on('load', () => loads++);
  await site.anew('The second version.');
  await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
  await page.getByRole('button', { name: 'Use it now' }).click();
  await expect(other.getByText('The new version is in use in another tab.')).toBeVisible();
  expect(loads).toBe(0);
});

test('a page of the version before still gets parts that the new one no longer has', async ({
  page,
  context,
  site,
}) => {
  await firstVisit(page, site.address);
  const other = await context.newPage();
  await firstVisit(other, new URL('/checklists/', site.address).href);
  const [part] = site.parts();
  expect(part).toBeDefined();
  await site.anew('The second version.', part);
  await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
  await page.getByRole('button', { name: 'Use it now' }).click();
  await expect(other.getByText('The new version is in use in another tab.')).toBeVisible();
  expect(await other.evaluate(async (file) => (await fetch(`/_astro/${file}`)).status, part)).toBe(200);
});

test('map pictures are not kept on the device unless somebody asks for it', async ({ page, site }) => {
  await page.route('https://tile.openstreetmap.org/**', (route) =>
    route.fulfill({ path: 'public/icons/192.png', contentType: 'image/png' }),
  );
  await firstVisit(page, site.address);
  await page.evaluate(() =>
    fetch('/favicon.svg').then(
      () =>
        new Promise((done) => {
          const tile = new Image();
          tile.onload = tile.onerror = done;
          tile.src = 'https://tile.openstreetmap.org/1/0/0.png';
        }),
    ),
  );
  const kept = await page.evaluate(async () => {
    const names = await caches.keys();
    const all = await Promise.all(
      names.map(async (name) => (await (await caches.open(name)).keys()).map(({ url }) => url)),
    );
    return all.flat();
  });
  expect(kept.length).toBeGreaterThan(100);
  expect(kept.filter((url) => !url.startsWith(site.address))).toEqual([]);
});

test('map pictures that were seen are there with the network cut, once that is ticked, and gone when it is not', async ({
  page,
  context,
  site,
}) => {
  let asked = 0;
  await context.route('https://tile.openstreetmap.org/**', (route) => {
    asked++;
    return route.fulfill({
      path: 'public/icons/192.png',
      contentType: 'image/png',
      headers: { 'Access-Control-Allow-Origin': '*', 'Cache-Control': 'max-age=0' },
    });
  });
  await firstVisit(page, site.address);
  const kept = () =>
    page.evaluate(async () =>
      (await caches.has('homeleg-map-pictures'))
        ? (await (await caches.open('homeleg-map-pictures')).keys()).length
        : 0,
    );
  const street = page.getByRole('button', { name: 'Street map' });
  const picture = page.locator('homeleg-route-map [data-pictures]');
  await street.click();
  await expect(picture).toHaveAttribute('data-pictures', 'shown');
  expect(await kept()).toBe(0);
  const choice = page.getByRole('checkbox', { name: /Keep the map pictures I see/ });
  await expect(choice).not.toBeChecked();
  await choice.check();
  await expect.poll(kept).toBeGreaterThan(2);
  expect(asked).toBeGreaterThan(2);

  await cutOff(context, site);
  await page.reload();
  await street.click();
  await expect(picture).toHaveAttribute('data-pictures', 'shown');
  await expect(choice).toBeChecked();
  await choice.uncheck();
  await expect.poll(kept).toBe(0);
  expect(await page.evaluate(() => caches.has('homeleg-map-pictures'))).toBe(false);
});

/** Looks for a new version, and comes back once what came of it is decided. */
function lookedForNew(page: Page): Promise<string> {
  return page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    const found = new Promise<ServiceWorker | null>((done) => {
      registration.addEventListener('updatefound', () => done(registration.installing), { once: true });
    });
    try {
      await registration.update();
    } catch {
      return 'not reached';
    }
    const worker = registration.installing ?? registration.waiting ?? (await found);
    if (!worker) return 'none';
    return new Promise<string>((done) => {
      const look = () => {
        if (worker.state !== 'installing') done(worker.state);
      };
      worker.addEventListener('statechange', look);
      look();
    });
  });
}

const paths = () =>
  builtPages('dist')
    .map(({ path }) => path)
    .filter((path) => path.endsWith('/') && !/^\/embed\/./.test(path));

/** Some pages: the versions of all of them have to be the same. */
async function versionsShown(page: Page, site: { address: string }): Promise<boolean[]> {
  const all = paths();
  const some = [0, 23, all.length - 1].map((i) => all[i % all.length]!);
  const shown: boolean[] = [];
  for (const path of some) {
    await page.goto(new URL(path, site.address).href);
    shown.push((await page.getByText('The second version.').count()) > 0);
  }
  return shown;
}

test.describe('a new version that is cut off while it is fetched leaves the one before whole, and comes at the next visit', () => {
  // All files of a version are fetched twice, which takes a busy machine its time.
  test.slow();
  const answersAt = (share: number) => 1 + Math.floor(share * paths().length);
  for (const [when, answers, fate] of [
    ['before its worker', 0, 'not reached'],
    ['right after its worker', answersAt(0), 'redundant'],
    ['half way', answersAt(0.5), 'redundant'],
    ['near its end', answersAt(0.95), 'redundant'],
  ] as const) {
    test(when, async ({ page, context, site }) => {
      await firstVisit(page, site.address);
      await page.getByLabel('Example trips').selectOption({ label: 'Petrol catamaran, a day out' });
      await expect(page.getByRole('heading', { name: 'Home with reserve' })).toBeVisible();
      await site.allAnew('The second version.');
      site.line.deadAfter(answers);
      expect(await lookedForNew(page)).toBe(fate);
      await expect(page.getByText('A new version is ready.')).toBeHidden();
      expect(new Set(await versionsShown(page, site))).toEqual(new Set([false]));
      await cutOff(context, site);
      await page.goto(site.address);
      await expect(page.getByRole('heading', { name: 'Home with reserve' })).toBeVisible();
      expect(new Set(await versionsShown(page, site))).toEqual(new Set([false]));

      site.back();
      await context.setOffline(false);
      await page.goto(site.address);
      expect(await lookedForNew(page)).toBe('installed');
      await page.getByRole('button', { name: 'Use it now' }).click();
      await expect(page.getByRole('heading', { name: 'Home with reserve' })).toBeVisible();
      await cutOff(context, site);
      expect(new Set(await versionsShown(page, site))).toEqual(new Set([true]));
    });
  }
});

test('a new version of which a page is still the old one on the host is not taken, nor mixed with the one before', async ({
  page,
  site,
}) => {
  test.slow();
  await firstVisit(page, site.address);
  await site.allAnew('The second version.');
  site.leftBehind('/checklists/');
  expect(await lookedForNew(page)).toBe('redundant');
  expect(new Set(await versionsShown(page, site))).toEqual(new Set([false]));
});

test.describe('a first visit that is cut off leaves nothing half, and the next one is whole', () => {
  test.slow();
  for (const answers of [0, 1, 3, 9, 40, 150]) {
    test(`after ${answers} files`, async ({ page, context, site }) => {
      site.line.deadAfter(answers);
      // A page of which the end never comes is never loaded.
      await page.goto(site.address, { waitUntil: 'commit' }).catch(() => undefined);
      await expect.poll(() => site.line.dead()).toBe(true);
      site.back();
      await firstVisit(page, site.address);
      await cutOff(context, site);
      await page.goto(site.address);
      await page.getByLabel('Example trips').selectOption({ label: 'Petrol catamaran, a day out' });
      await expect(page.getByRole('heading', { name: 'Home with reserve' })).toBeVisible();
      await page.goto(new URL('/hire/', site.address).href);
      await expect(page.getByRole('navigation', { name: 'Parts of the desk' })).toBeVisible();
    });
  }
});
