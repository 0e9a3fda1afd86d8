import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import type { PlanEvent } from '../../src/components/planner/planner-events.ts';
import { clubPage, overheard } from './guest-page.ts';

const demo = JSON.parse(readFileSync('shared/craft/hire-fleet.json', 'utf8'));
/** A club's own fleet: one boat, a route without waters of its own. */
const FLEET = {
  ...demo,
  name: 'Slip fleet',
  answers: 'The club',
  until: '2099-12-31',
  boats: demo.boats.slice(0, 2).map((boat: object, at: number) => ({ ...boat, id: `ours-${at}`, name: `Ours ${at}` })),
  routes: demo.routes.slice(0, 1).map((route: object) => ({ ...route, name: 'Round our island' })),
};
const desk = (page: Page) => page.locator('homeleg-reserve-check');

async function serveFleet(page: Page, fleet: object): Promise<void> {
  await page.route('/club/fleet.json', (route) => route.fulfill({ json: fleet }));
}

test('a wrong attribute of the reserve check is told on it and once in the console, with the fix', async ({ page }) => {
  const { complaints } = overheard(page);
  await clubPage(page, '<homeleg-reserve-check units="miles" reserve="plenty" boat="red"></homeleg-reserve-check>');
  await page.goto('/club/');
  await expect(desk(page)).toContainText('“miles” is not one of the values known here: nautical, metric, imperial.');
  await expect(desk(page)).toContainText('“plenty” is not a reserve rule');
  await expect(desk(page)).toContainText(`There is no boat “red”. Known here: ${demo.boats[0].id}`);
  await desk(page)
    .getByLabel(/weights/i)
    .fill('80, 75');
  await expect(desk(page).getByRole('heading', { level: 2 }).first()).toBeVisible();
  expect(complaints.map((line) => line.split(':')[0])).toEqual([
    '<homeleg-reserve-check> units',
    '<homeleg-reserve-check> reserve',
    '<homeleg-reserve-check> boat',
  ]);
  await desk(page).evaluate((element) => {
    element.setAttribute('units', 'nautical');
    element.setAttribute('reserve', '50 %');
    element.removeAttribute('boat');
  });
  await expect(desk(page).getByText('For the author of this page')).toHaveCount(0);
  await expect
    .poll(() => page.evaluate(() => document.querySelector('homeleg-reserve-check')!.plan?.reserveRule))
    .toEqual({ kind: 'share', share: 0.5 });
});

test('a desk that names its fleet has no invented boats, and says who answers for its own', async ({ page }) => {
  const { complaints } = overheard(page);
  await serveFleet(page, FLEET);
  await clubPage(
    page,
    '<homeleg-reserve-check fleet="/club/fleet.json" boat="ours-1" reserve="60 %"></homeleg-reserve-check>',
    { policy: "default-src 'none'; script-src 'self'; connect-src 'self'" },
  );
  await page.goto('/club/');
  await expect(desk(page)).toContainText('The club answers for boats, plates and routes, until December 31, 2099.');
  await expect(desk(page).getByText('are invented')).toHaveCount(0);
  expect(complaints).toEqual([]);
});

test('while its fleet is missing or past its date, nobody is sent out on an invented boat', async ({ page }) => {
  const { complaints } = overheard(page);
  await serveFleet(page, { ...FLEET, surveyed: '2019-04-01', until: '2020-01-01' });
  await clubPage(
    page,
    `<homeleg-reserve-check fleet="/club/fleet.json"></homeleg-reserve-check>
     <homeleg-reserve-check fleet="/club/none.json"></homeleg-reserve-check>`,
    { policy: "default-src 'none'; script-src 'self'; connect-src 'self'" },
  );
  await page.route('/club/none.json', (route) => route.fulfill({ status: 404, body: 'Not found' }));
  await page.goto('/club/');
  await expect(desk(page).first()).toContainText('could be relied on until 2020-01-01');
  await expect(desk(page).last()).toContainText('could not be loaded');
  for (const one of await desk(page).all()) {
    await expect(one).toContainText('nothing can be checked');
    await expect(one.getByRole('textbox')).toHaveCount(0);
  }
  expect(complaints.filter((line) => line.startsWith('<homeleg'))).toHaveLength(2);
});

test('a page hears of whole plans only, payload and tipping values with them', async ({ page }) => {
  await clubPage(page, '<homeleg-reserve-check></homeleg-reserve-check>');
  await page.goto('/club/');
  await desk(page).evaluate((element) => {
    const heard: boolean[] = [];
    element.addEventListener('homeleg-plan', (event) => {
      const { plan } = (event as PlanEvent).detail;
      heard.push(plan !== undefined && plan.payload.extra !== undefined && plan.tipping.length > 0);
    });
    Object.assign(globalThis, { heard });
  });
  await desk(page)
    .getByLabel(/weights/i)
    .fill('80, 75');
  await expect.poll(() => page.evaluate(() => (globalThis as { heard?: boolean[] }).heard)).toEqual([true]);
});
