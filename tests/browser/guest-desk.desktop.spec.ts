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
const WATERS = JSON.parse(readFileSync('shared/waters/haven.geojson', 'utf8'));
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

test('a desk with its own fleet and waters checks a hire from the boat to the answer', async ({ page }) => {
  const { complaints } = overheard(page);
  const { waters: _, ...rest } = FLEET;
  const routes = demo.routes.slice(0, 2).map((each: object, at: number) => ({ ...each, name: `Our route ${at}` }));
  await serveFleet(page, { ...rest, routes, localWaters: WATERS });
  await clubPage(page, '<homeleg-reserve-check fleet="/club/fleet.json"></homeleg-reserve-check>', {
    policy: "default-src 'none'; script-src 'self'; connect-src 'self'; worker-src 'self'",
  });
  await page.goto('/club/');
  const check = desk(page);
  const plan = () => page.evaluate(() => document.querySelector('homeleg-reserve-check')!.plan);
  const trip = () => page.evaluate(() => document.querySelector('homeleg-reserve-check')!.trip);
  const verdict = check.getByRole('heading', { level: 2 }).first();
  const [boat, route] = [check.getByRole('combobox').nth(0), check.getByRole('combobox').nth(1)];
  const hours = check.getByRole('textbox', { name: 'Time allowed' });

  // Boat, weights and route: the desk's own, and nothing is answered before they are typed.
  await expect(boat.getByRole('option')).toHaveText(['Ours 0', 'Ours 1']);
  await boat.selectOption('Ours 0');
  await expect(route.getByRole('option')).toHaveText(['Our route 0', 'Our route 1', /No set route/]);
  await expect(check).toContainText('Type the weights of everyone aboard');
  expect(await plan()).toBeUndefined();
  const weights = check.getByLabel(/weights/i);
  await weights.fill('80, many');
  await expect(check).toContainText('Type weights as numbers above 0');
  expect(await plan()).toBeUndefined();
  await weights.fill('80, 75');
  await expect.poll(async () => (await trip())?.name).toBe('Ours 0: Our route 0');

  // As long as fuel, wind and stream are not known, it is no better than doubtful.
  await expect(verdict).toHaveText('Not sure enough');
  await check.getByRole('button', { name: 'Full', exact: true }).press('Enter');
  for (const [group, value] of [
    ['Wind', 'Calm'],
    ['Stream', 'Slack'],
    ['Sea', 'Flat'],
  ] as const) {
    await check
      .getByRole('group', { name: group, exact: true })
      .getByRole('radio', { name: value, exact: true })
      .check();
  }
  await expect.poll(async () => (await plan())?.verdict).not.toBe('no-go');
  const first = await plan();
  expect((await trip())!.load.fill).toBe(1);
  await expect(check).toContainText('Back within 3 h 00 min');
  // Land and depth were checked on the desk's own waters.
  await expect(check.getByText('nobody has checked land')).toHaveCount(0);

  // The other route is longer, the other boat another hull.
  await route.selectOption('Our route 1');
  await expect.poll(async () => (await trip())?.name).toBe('Ours 0: Our route 1');
  await expect.poll(async () => (await plan())?.distance).not.toBe(first?.distance);
  await boat.selectOption('Ours 1');
  await expect.poll(async () => (await trip())?.craft.hull.length).toBeCloseTo(3.6, 1);

  // Too heavy for its plate, too late back, and too little in the tank: not like this, each with its reason.
  await weights.fill('130, 130, 130, 130');
  await expect(verdict).toHaveText('Not like this');
  await weights.fill('80, 75');
  await expect(verdict).not.toHaveText('Not like this');
  await hours.fill('0.3');
  await expect(verdict).toHaveText('Not like this');
  await hours.fill('13');
  await expect(check).toContainText('more than 0 and at most 12');
  expect(await plan()).toBeUndefined();
  await hours.fill('3');
  await expect(verdict).not.toHaveText('Not like this');
  await check.getByLabel('Share of full').fill('4');
  await expect(verdict).toHaveText('Not like this');
  await check.getByRole('button', { name: 'Full', exact: true }).press('Enter');

  // Without a set route nobody has checked the land, and it says so.
  await route.selectOption({ index: 2 });
  await expect(check).toContainText('Without a set route nobody has checked land');

  // The next hirer begins anew; the boat, the route and the day stay.
  await check.getByRole('button', { name: 'Next hirer' }).press('Enter');
  await expect(weights).toHaveValue('');
  await expect.poll(plan).toBeUndefined();
  await expect(check.getByRole('radio', { name: 'Calm', exact: true })).toBeChecked();
  expect(complaints).toEqual([]);
});

test('what is wrong with a fleet file is told with its place in the file, and no boat of it goes out', async ({
  page,
}) => {
  const { complaints } = overheard(page);
  const spoilt = structuredClone(FLEET) as typeof demo;
  spoilt.boats[1].plate.maxLoad = -5;
  spoilt.routes[0].waypoints[2].lat = 'north';
  await serveFleet(page, spoilt);
  await clubPage(page, '<homeleg-reserve-check fleet="/club/fleet.json"></homeleg-reserve-check>', {
    policy: "default-src 'none'; script-src 'self'; connect-src 'self'",
  });
  await page.goto('/club/');
  const told = desk(page).locator('[part="problem"]');
  await expect(told).toContainText('boats.1.plate.maxLoad');
  await expect(told).toContainText('routes.0.waypoints.2.lat');
  await expect(desk(page)).toContainText('nothing can be checked');
  await expect(desk(page).getByRole('textbox')).toHaveCount(0);
  expect(complaints).toHaveLength(1);
});
