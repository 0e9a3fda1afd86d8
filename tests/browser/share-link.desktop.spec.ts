import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { PlannerPage } from './planner-page.ts';

async function linkOf(page: Page): Promise<string> {
  const card = page.locator('homeleg-planner details#passage');
  if ((await card.getAttribute('open')) === null) await card.locator('> summary').click();
  const field = card.getByLabel('Link', { exact: true });
  await expect(field).toHaveValue(/#trip=1\./);
  return field.inputValue();
}

test('a link opens exactly the same plan on another device, without the names', async ({ page, browser }) => {
  const planner = new PlannerPage(page);
  await planner.open();
  await planner.example('Petrol catamaran, a day out');
  await expect(planner.verdict).not.toBeEmpty();
  const link = await linkOf(page);
  expect(link.length).toBeLessThan(2000);
  const plan = await planner.plan();

  const elsewhere = await browser.newContext();
  const other = new PlannerPage(await elsewhere.newPage());
  await other.page.goto(link);
  await expect(other.page.getByText('This trip came with the link.')).toBeVisible();
  await expect.poll(() => other.plan()).toEqual(plan);
  expect(other.page.url()).not.toContain('trip=');
  expect(
    await other.page
      .locator('homeleg-planner')
      .evaluate((el) => JSON.stringify((el as unknown as { trip: unknown }).trip)),
  ).not.toContain('Skipper');
  expect(planner.complaints.concat(other.complaints)).toEqual([]);
  await elsewhere.close();
});

test('the trip somebody had before opening a link comes back, even after a reload', async ({ page }) => {
  const planner = new PlannerPage(page);
  await planner.open();
  await planner.example('Petrol catamaran, a day out');
  const link = await linkOf(page);
  await planner.example('Electric tender');
  await expect.poll(async () => (await planner.plan()).need.median).toBeGreaterThan(1e5);
  await expect(page.locator('homeleg-planner [data-part="details"]:not(.unsettled)')).toBeVisible();
  const mine = await planner.plan();
  // Left for another page first, so that the device keeps it.
  await page.goto('/method/');
  await page.goto(link);
  await expect(page.getByText('The one you had before is kept.')).toBeVisible();
  await page.getByRole('button', { name: 'Take back' }).click();
  await expect.poll(() => planner.plan()).toEqual(mine);

  await page.goto('/method/');
  await page.goto(link);
  await expect(page.getByText('The one you had before is kept.')).toBeVisible();
  await page.reload();
  await page.getByRole('button', { name: 'Back to it' }).click();
  await expect.poll(() => planner.plan()).toEqual(mine);
  await page.reload();
  await expect(planner.verdict).not.toBeEmpty();
  await expect(page.getByRole('button', { name: 'Back to it' })).toHaveCount(0);
});

test('a damaged link, or one of a newer page, says so and changes nothing', async ({ page }) => {
  const planner = new PlannerPage(page);
  await planner.open();
  await planner.example('Petrol catamaran, a day out');
  const link = await linkOf(page);
  const plan = await planner.plan();
  for (const [address, says] of [
    [link.slice(0, -3), 'This link is damaged'],
    [link.replace('trip=1.', 'trip=2.'), 'newer version'],
  ] as const) {
    await page.evaluate((hash) => {
      location.hash = hash;
    }, new URL(address).hash);
    await expect(page.getByText(says)).toBeVisible();
    expect(await planner.plan()).toEqual(plan);
  }
  expect(planner.complaints).toEqual([]);
});

test('every change of the trip can be undone and done again, by button and by key', async ({ page }) => {
  const planner = new PlannerPage(page);
  await planner.open();
  await planner.example('Petrol catamaran, a day out');
  const start = await planner.gist();
  const history = page.getByRole('group', { name: 'Steps back and on' });
  await planner.card('aboard').getByRole('button', { name: 'Half' }).click();
  await expect.poll(async () => (await planner.plan()).reasons.length).not.toBe(start.reasons.length);
  const half = await planner.gist();
  await history.getByRole('button', { name: 'Undo' }).click();
  await expect.poll(() => planner.gist()).toEqual(start);
  await history.getByRole('button', { name: 'Redo' }).click();
  await expect.poll(() => planner.gist()).toEqual(half);
  // Ctrl+Z in a text field belongs to the field.
  await page.keyboard.press('Control+z');
  await expect.poll(() => planner.gist()).toEqual(start);
  await page.keyboard.press('Control+Shift+z');
  await expect.poll(() => planner.gist()).toEqual(half);
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+z');
  await expect(planner.answer).toContainText('Draw a route with at least two points');
});

for (const colorScheme of ['light', 'dark'] as const) {
  test(`the link and the steps back are for everybody, ${colorScheme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme });
    const planner = new PlannerPage(page);
    await planner.open();
    await planner.example('Petrol catamaran, a day out');
    await linkOf(page);
    const found = await new AxeBuilder({ page }).include('homeleg-planner').analyze();
    expect(found.violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
  });
}
