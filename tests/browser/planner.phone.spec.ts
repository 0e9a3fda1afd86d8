import { expect, test } from '@playwright/test';
import { OPEN_WATER, PlannerPage } from './planner-page.ts';

test('a route is tapped on a phone and the answer stays in sight', async ({ page }) => {
  const planner = new PlannerPage(page);
  await planner.open();
  for (const place of OPEN_WATER) {
    const { x, y } = await planner.spot(place);
    await page.touchscreen.tap(x, y);
  }
  await expect(planner.waypoint(3)).toBeVisible();
  const strip = page.locator('homeleg-answer[compact]');
  await expect(strip).toContainText('Not sure enough');
  await expect(strip).toBeInViewport();
  await strip.tap();
  await expect(planner.verdict).toBeInViewport();
  expect(planner.complaints).toEqual([]);
});

test('a waypoint is moved by two taps, without dragging', async ({ page }) => {
  const planner = new PlannerPage(page);
  await planner.open();
  for (const place of OPEN_WATER.slice(0, 2)) {
    const { x, y } = await planner.spot(place);
    await page.touchscreen.tap(x, y);
  }
  await expect(planner.waypoint(2)).toBeVisible();
  const before = (await planner.plan()).need.median;
  await planner.waypoint(2).tap();
  const { x, y } = await planner.spot([0.5, 0.95]);
  await page.touchscreen.tap(x, y);
  await expect.poll(async () => (await planner.plan()).need.median).toBeGreaterThan(before);
  await expect(planner.map.getByRole('button', { name: /^Waypoint 2 of 2/ })).toBeVisible();
});

test('the page is not wider than the phone, with every card open', async ({ page }) => {
  const planner = new PlannerPage(page);
  await planner.open();
  await planner.example('Petrol catamaran, a day out');
  for (const card of ['boat', 'aboard', 'day', 'kept'] as const) {
    const summary = planner.card(card).locator('> summary');
    if (!(await planner.card(card).evaluate((details: HTMLDetailsElement) => details.open))) await summary.tap();
  }
  await expect(page.locator('homeleg-reserve-form')).toBeVisible();
  const [inner, outer] = await page.evaluate(() => [document.documentElement.scrollWidth, window.innerWidth]);
  expect(inner).toBeLessThanOrEqual(outer);
});
