import { readdirSync, readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { printsOnOneA4 } from './one-page.ts';

const before = '/checklists/before-launch/';
const fuel = '/checklists/fuel/';
const engine = '/checklists/engine-and-propeller/';
const lists = readdirSync('shared/checklists')
  .filter((file) => file.endsWith('.json'))
  .map((file) => `/checklists/${file.replace('.json', '')}/`);

/** As the planner leaves it on the device. */
async function keepTrip(
  page: Page,
  file: string,
  change: (trip: Record<string, never>) => void = () => {},
): Promise<void> {
  const trip = JSON.parse(readFileSync(`shared/trips/${file}`, 'utf8'));
  change(trip);
  await page.addInitScript((text) => localStorage.setItem('homeleg-trip', text), JSON.stringify({ trip, origin: {} }));
}

const anchor = (page: Page) => page.getByRole('checkbox', { name: /^Anchor/ });
const done = (page: Page, text: string | RegExp) => expect(page.locator('[data-count]')).toHaveText(text);

test('ticks are counted and still there after a reload', async ({ page }) => {
  await page.goto(before);
  const points = await page.getByRole('checkbox').count();
  await done(page, `0 of ${points} done`);
  await anchor(page).check();
  await page.getByRole('checkbox', { name: 'Drain plugs in' }).check();
  await done(page, `2 of ${points} done`);
  await page.reload();
  await expect(anchor(page)).toBeChecked();
  await done(page, `2 of ${points} done`);
});

test('lists do not share their ticks', async ({ page }) => {
  await page.goto(before);
  await anchor(page).check();
  await page.goto(fuel);
  await done(page, /^0 of/);
});

test('clearing all can be taken back, and else stays', async ({ page }) => {
  await page.goto(before);
  await anchor(page).check();
  await page.getByRole('button', { name: 'Clear all' }).click();
  await expect(anchor(page)).not.toBeChecked();
  await page.getByRole('button', { name: 'Take back' }).click();
  await expect(anchor(page)).toBeChecked();
  await page.getByRole('button', { name: 'Clear all' }).click();
  await expect(page.getByRole('status')).toHaveText('All ticks cleared.');
  await page.reload();
  await expect(anchor(page)).not.toBeChecked();
});

test('without a trip every point is shown, and none is marked', async ({ page }) => {
  await page.goto(engine);
  await done(page, /^0 of/);
  await expect(page.getByRole('checkbox')).toHaveCount(await page.locator('.columns li').count());
  await expect(page.getByText('for your trip').filter({ visible: true })).toHaveCount(0);
  await expect(page.getByRole('button', { name: /concern/ })).toHaveCount(0);
});

test('the list follows the trip in the planner, and shows the rest on request', async ({ page }) => {
  await keepTrip(page, 'petrol-day.json');
  await page.goto(engine);
  const plug = page.getByRole('checkbox', { name: /^Plugs dry/ });
  const cooling = page.getByRole('checkbox', { name: /^Cooling water/ });
  await expect(plug).toBeHidden();
  await expect(page.getByRole('heading', { name: 'Electric motor' })).toBeHidden();
  await expect(cooling).toHaveAccessibleName(/for your trip/);
  await expect(page.getByText('Fitted to the trip in the planner: petrol')).toBeVisible();
  const fitted = await page.getByRole('checkbox').count();
  await done(page, `0 of ${fitted} done`);
  await page.getByRole('button', { name: /^Show \d+ points that concern other trips/ }).click();
  await expect(plug).toBeVisible();
  await expect(plug).not.toHaveAccessibleName(/for your trip/);
  await done(page, `0 of ${await page.locator('.columns li').count()} done`);
  await page.getByRole('button', { name: 'Only the points for your trip' }).click();
  await expect(plug).toBeHidden();
});

test('what the trip does not tell takes nothing off the list', async ({ page }) => {
  await keepTrip(page, 'petrol-day.json', (trip) => {
    for (const name of ['wind', 'stream', 'departure', 'waterTemperatureC'])
      Reflect.deleteProperty(trip.conditions as unknown as object, name);
  });
  await page.goto('/checklists/weather/');
  await expect(page.getByText(/The trip does not tell: .*stream.*4 Beaufort or more/)).toBeVisible();
  for (const id of ['wind-against-stream', 'fresh-wind', 'cold', 'dark', 'flow-and-weirs']) {
    await expect(page.locator(`#${id}`)).toBeVisible();
  }
});

test('a link to a point for other trips shows it all the same', async ({ page }) => {
  await keepTrip(page, 'petrol-day.json');
  await page.goto(`${engine}#plug-locked`);
  await expect(page.locator('#plug-locked')).toBeInViewport();
});

test('a trip drawn in another tab is heeded at once; a damaged one counts as none', async ({ page, context }) => {
  await page.goto(engine);
  const planner = await context.newPage();
  await planner.goto(before);
  const put = (text: string) => planner.evaluate((kept) => localStorage.setItem('homeleg-trip', kept), text);
  const trip = readFileSync('shared/trips/electric-tender.json', 'utf8');
  await put(`{"trip":${trip}}`);
  await expect(page.locator('#cooling-water')).toBeHidden();
  await put('{"trip":');
  await expect(page.locator('#cooling-water')).toBeVisible();
});

test('old links to the list that became three still arrive', async ({ page }) => {
  await page.goto('/checklists/fuel-or-battery/#spills');
  await expect(page).toHaveURL('/checklists/fuel/#spills');
  await page.goto('/checklists/fuel-or-battery/#connectors');
  await expect(page).toHaveURL('/checklists/battery/#connectors');
});

test('old ticks are told apart from those of today', async ({ page }) => {
  await page.clock.setFixedTime('2031-05-04T08:00:00');
  await page.goto(before);
  await anchor(page).check();
  await page.clock.setFixedTime('2031-05-04T15:00:00');
  await page.reload();
  await expect(page.getByRole('status')).toBeEmpty();
  await page.clock.setFixedTime('2031-05-06T08:00:00');
  await page.reload();
  await expect(page.getByRole('status')).toContainText('These ticks are from May 4, 2031');
});

test('whatever lies in the storage, the list works', async ({ page }) => {
  await page.goto(before);
  for (const junk of ['{', 'null', '[]', '{"ticked":{}}', '{"ticked":[3],"at":1}', '{"ticked":["a"],"at":null}']) {
    await page.evaluate((text) => localStorage.setItem('homeleg-checklist-before-launch', text), junk);
    await page.reload();
    await anchor(page).check();
    await done(page, /^1 of/);
  }
});

test('with the storage blocked the list still ticks, and says that ticks are not kept', async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'localStorage', {
      get() {
        throw new DOMException('blocked', 'SecurityError');
      },
    });
  });
  await page.goto(before);
  await anchor(page).check();
  await done(page, /^1 of/);
  await expect(page.getByRole('status')).toContainText('does not let the page keep ticks');
});

test('a link to one point leads to it', async ({ page }) => {
  await page.goto(`${before}#anchor`);
  await expect(anchor(page)).toBeInViewport();
  const own = page.getByRole('link', { name: /^Link to this point: Anchor/ });
  await expect(own).toHaveAttribute('href', '#anchor');
});

test('points can be ticked by touch and by keyboard, on a large enough target', async ({ page, hasTouch }) => {
  await page.goto(before);
  const label = page.locator('#drain-plugs label');
  const box = await label.boundingBox();
  expect(box?.height).toBeGreaterThanOrEqual(44);
  if (hasTouch) await label.tap();
  else {
    await page.getByRole('checkbox', { name: 'Drain plugs in' }).focus();
    await page.keyboard.press('Space');
  }
  await expect(page.getByRole('checkbox', { name: 'Drain plugs in' })).toBeChecked();
});

test.describe('without script', () => {
  test.use({ javaScriptEnabled: false });

  test('a list shows every point, ticks and clears', async ({ page }) => {
    await page.goto(engine);
    const clamps = page.getByRole('checkbox', { name: /^Clamps tight/ });
    await clamps.check();
    await expect(page.getByRole('checkbox', { name: /^Plugs dry/ })).toBeVisible();
    await expect(page.getByText('for your trip').filter({ visible: true })).toHaveCount(0);
    await expect(page.getByRole('button', { name: 'Print' })).toBeHidden();
    await page.getByRole('button', { name: 'Clear all' }).click();
    await expect(clamps).not.toBeChecked();
  });
});

for (const path of lists) {
  test(`${path} prints on one A4 page`, ({ page }) => printsOnOneA4(page, path));
}

for (const path of lists) {
  test(`${path} leaves out on paper what only works on a screen, and keeps the cautions`, async ({ page }) => {
    await page.goto(path);
    await page.emulateMedia({ media: 'print' });
    await expect(page.getByRole('button', { name: 'Clear all' })).toBeHidden();
    await expect(page.getByRole('navigation')).toBeHidden();
    await expect(page.getByText('Local law comes first.')).toBeVisible();
    await expect(page.getByText('not for navigation')).toBeVisible();
    await expect(page.getByRole('checkbox').first()).toBeVisible();
  });
}
