import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { clubPage } from './guest-page.ts';

const trip = JSON.parse(readFileSync('shared/trips/petrol-day.json', 'utf8'));
const DEPARTURE = '2027-06-05T09:00:00+02:00';

/** Keeps what homeleg-trip told the page; nothing is printed, and the share sheet takes all it is given. */
async function listening(page: Page): Promise<() => Promise<string[]>> {
  await page.addInitScript(() => {
    const told: string[] = [];
    Object.assign(globalThis, { told, print: () => {} });
    Object.defineProperty(Navigator.prototype, 'share', { value: async () => {}, configurable: true });
    addEventListener('homeleg-trip', (event) => {
      const { detail } = event as HTMLElementEventMap['homeleg-trip'];
      const same = JSON.stringify(JSON.parse(detail.text)) === JSON.stringify(detail.trip);
      told.push(same ? detail.way : `${detail.way}, and another trip in its text`);
    });
  });
  return () => page.evaluate(() => (globalThis as unknown as { told: string[] }).told.splice(0));
}

test('the page hears of every way a trip leaves the planner', async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  const told = await listening(page);
  const given = { ...trip, conditions: { ...trip.conditions, departure: DEPARTURE } };
  await clubPage(
    page,
    `<homeleg-planner keep="none"><script type="application/json">${JSON.stringify({ trip: given })}</script></homeleg-planner>`,
  );
  await page.goto('/club/');
  const planner = page.locator('homeleg-planner');
  await planner.locator('#passage > summary').click();
  const press = async (name: string, within = planner.locator('#passage')) => {
    const button = within.getByRole('button', { name, exact: true });
    await button.click();
  };
  await expect(
    planner.locator('#passage').getByRole('button', { name: 'Calendar file: overdue', exact: true }),
  ).toBeVisible();
  expect(await told()).toEqual([]);
  for (const [name, way] of [
    ['Print passage plan', 'print'],
    ['Send as message', 'message'],
    ['Copy as message', 'message'],
    ['Calendar file: overdue', 'calendar'],
    ['Save as text', 'text'],
    ['Route as GPX', 'gpx'],
    ['Route as GeoJSON', 'geojson'],
    ['Copy link', 'link'],
    ['Send link', 'link'],
  ] as const) {
    await press(name);
    await expect.poll(told, name).toEqual([way]);
  }
  const tools = planner.locator('[part="tools"]');
  await tools.locator('summary').click();
  await press('Save trip', tools);
  await expect.poll(told).toEqual(['file']);
  await press('Print', tools);
  await expect.poll(told).toEqual(['print']);
  await planner.evaluate((element) => (element as HTMLElementTagNameMap['homeleg-planner']).print());
  expect(await told()).toEqual(['print']);
});

test('the page hears when the answer of a reserve check is printed', async ({ page }) => {
  const told = await listening(page);
  await clubPage(page, '<homeleg-reserve-check></homeleg-reserve-check>');
  await page.goto('/club/');
  const check = page.locator('homeleg-reserve-check');
  await check.getByLabel(/weights/i).fill('80, 75');
  await check.getByRole('button', { name: 'Print' }).click();
  expect(await told()).toEqual(['print']);
});
