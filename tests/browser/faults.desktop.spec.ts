import { readFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { writeShareLink } from '../../src/core/files/share-link.ts';
import type { Trip } from '../../src/core/trip/shapes.ts';
import { OPEN_WATER, PlannerPage } from './planner-page.ts';

const day: Trip = JSON.parse(readFileSync(new URL('../../shared/trips/petrol-day.json', import.meta.url), 'utf8'));

test.describe('pictures of the map', () => {
  const answers: readonly [string, Parameters<import('@playwright/test').Page['route']>[1]][] = [
    ['never come', () => {}],
    ['are nonsense', (route) => route.fulfill({ contentType: 'image/png', body: 'not a picture' })],
    [
      'are a page instead',
      (route) => route.fulfill({ contentType: 'text/html', body: '<script>homelegRan = 1</script>' }),
    ],
  ];
  for (const [how, answer] of answers) {
    test(`that ${how} hold up nothing: a route is drawn and planned`, async ({ page }) => {
      const planner = new PlannerPage(page);
      await page.route('https://tile.openstreetmap.org/**', answer);
      await planner.open();
      await page.getByRole('button', { name: 'Street map' }).click();
      for (const place of OPEN_WATER.slice(0, 2)) {
        const { x, y } = await planner.spot(place);
        await page.mouse.click(x, y);
      }
      await expect(planner.verdict).toHaveText('Not sure enough');
      expect(await page.evaluate(() => 'homelegRan' in globalThis)).toBe(false);
    });
  }
});

test('storage that is blocked altogether is told, and the trip is planned', async ({ page }) => {
  await page.addInitScript(() => {
    const refuse = () => {
      throw new DOMException('blocked', 'SecurityError');
    };
    for (const name of ['localStorage', 'indexedDB']) Object.defineProperty(globalThis, name, { get: refuse });
  });
  const planner = new PlannerPage(page);
  await planner.open();
  await planner.example('Petrol catamaran, a day out');
  await expect(planner.verdict).toHaveText('Home with reserve');
  await expect(page.getByText('a reload loses what you enter').first()).toBeVisible();
});

test('storage that is full is told; what is on screen stays', async ({ page }) => {
  await page.addInitScript(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
  });
  const planner = new PlannerPage(page);
  await planner.open();
  await planner.example('Petrol catamaran, a day out');
  await expect(page.getByText('a reload loses what you enter').first()).toBeVisible();
  await expect(planner.verdict).toHaveText('Home with reserve');
});

for (const [when, instant] of [
  ['decades slow', '1990-01-01T00:00:00Z'],
  ['decades fast', '2060-01-01T00:00:00Z'],
] as const) {
  test(`a clock that is ${when} changes no plan`, async ({ page, browser }) => {
    const planner = new PlannerPage(page);
    await planner.open();
    await planner.example('Petrol catamaran, a day out');
    const right = await planner.gist();
    const elsewhere = await browser.newContext({ serviceWorkers: 'block' });
    const other = new PlannerPage(await elsewhere.newPage());
    await other.page.clock.setFixedTime(new Date(instant));
    await other.open();
    await other.example('Petrol catamaran, a day out');
    await expect.poll(() => other.gist()).toEqual(right);
    await elsewhere.close();
  });
}

test('a page thrown away right after a change comes back with the change', async ({ page, context }) => {
  const planner = new PlannerPage(page);
  await planner.open();
  await planner.example('Electric tender');
  const mine = await planner.gist();
  // Closed as a browser short of memory does it: with nothing but the page hidden before.
  await page.close({ runBeforeUnload: false });
  const again = new PlannerPage(await context.newPage());
  await again.open();
  await expect.poll(() => again.gist()).toEqual(mine);
});

test('two tabs: neither loses what is on its screen, and the trip changed last is kept', async ({ page, context }) => {
  const one = new PlannerPage(page);
  await one.open();
  await one.example('Petrol catamaran, a day out');
  const two = new PlannerPage(await context.newPage());
  await two.open();
  await two.example('Electric tender');
  const second = await two.gist();
  const first = await one.gist();
  expect(first).not.toEqual(second);
  await expect.poll(() => one.page.evaluate(() => localStorage.getItem('homeleg-trip'))).toContain('lectric');
  await two.page.reload();
  // There is no plan at once after a reload.
  await expect.poll(() => two.gist().catch(() => undefined)).toEqual(second);
  expect(await one.gist()).toEqual(first);
});

test('a connection cut while the page loads leaves it readable, and the next load is whole', async ({ page }) => {
  let cut = true;
  let passed = 0;
  await page.route('**/*.js', (route) => (cut && ++passed > 3 ? route.abort() : route.continue()));
  await page.goto('/');
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  cut = false;
  const planner = new PlannerPage(page);
  await planner.open();
  await planner.example('Petrol catamaran, a day out');
  await expect(planner.verdict).toHaveText('Home with reserve');
});

/** Names that a page which trusts text would run or follow. */
const NAMES = [
  '<script>globalThis.homelegRan = 1</script>',
  '<img src=x onerror="globalThis.homelegRan = 1">',
  '"><svg onload=globalThis.homelegRan=1>',
  'javascript:globalThis.homelegRan=1',
  '<a href="https://elsewhere.example" id=trap>here</a>',
  '<iframe src="https://elsewhere.example"></iframe>',
];

for (const name of NAMES) {
  test(`a name is only ever text: ${name}`, async ({ page, baseURL }) => {
    const strays: string[] = [];
    page.on('request', (request) => {
      if (new URL(request.url()).origin !== baseURL) strays.push(request.url());
    });
    page.on('framenavigated', (frame) => {
      if (new URL(frame.url()).origin !== baseURL) strays.push(frame.url());
    });
    page.on('dialog', (dialog) => strays.push(dialog.message()));
    const trip: Trip = {
      ...day,
      name,
      craft: {
        ...day.craft,
        hull: { ...day.craft.hull, name },
        drive: { ...day.craft.drive, name },
      },
      load: { ...day.load, items: day.load.items.map((item) => ({ ...item, name })) },
      route: { ...day.route, waypoints: day.route.waypoints.map((spot) => ({ ...spot, name })) },
    };
    const link = writeShareLink(trip, '/', { names: true });
    if (!link.ok) throw new Error('the trip makes a link');
    const planner = new PlannerPage(page);
    await page.goto(link.value);
    await expect(page.getByText('This trip came with the link.')).toBeVisible();
    await expect(planner.verdict).not.toBeEmpty();
    // All cards open, so that every place that shows a name does.
    for (const card of await page.locator('homeleg-planner details').all()) {
      if ((await card.getAttribute('open')) === null && (await card.isVisible())) {
        await card.locator('> summary').first().click();
      }
    }
    await expect(page.getByText(name, { exact: false }).first()).toBeAttached();
    expect(await page.evaluate(() => 'homelegRan' in globalThis)).toBe(false);
    await expect(page.locator('#trap, iframe, img[src="x"]')).toHaveCount(0);
    expect(strays).toEqual([]);
    // A script that was tried and stopped by the policy would complain.
    expect(planner.complaints).toEqual([]);
  });
}
