import { readFile } from 'node:fs/promises';
import AxeBuilder from '@axe-core/playwright';
import { expect, type Locator, type Page, test } from '@playwright/test';
import { PlannerPage } from './planner-page.ts';

async function opened(page: Page): Promise<Locator> {
  const card = page.locator('homeleg-planner details#saved');
  if ((await card.getAttribute('open')) === null) await card.locator('> summary').click();
  await expect(card.getByRole('button', { name: 'Save this trip' })).toBeVisible();
  return card;
}

test('trips and boats are saved, renamed, duplicated, deleted and put back, and are there after a reload', async ({
  page,
}) => {
  const planner = new PlannerPage(page);
  await planner.open();
  await planner.example('Petrol catamaran, a day out');
  const day = await planner.gist();
  let card = await opened(page);
  await card.getByLabel('Name', { exact: true }).fill('Day out');
  await card.getByRole('button', { name: 'Save this trip' }).click();
  await expect(card.getByText('Saved as Day out.')).toBeVisible();
  await card.getByRole('button', { name: 'Save this boat' }).click();
  await expect(card.getByRole('listitem')).toHaveCount(2);

  await card.getByRole('button', { name: 'Duplicate: Day out' }).click();
  await expect(card.getByRole('listitem')).toHaveCount(3);
  await card.getByRole('button', { name: 'Rename: Day out 2' }).click();
  await card.getByLabel('New name of Day out 2').fill('Longer day');
  await card.getByRole('button', { name: 'Keep name' }).click();
  await expect(card.getByRole('button', { name: 'Open: Longer day' })).toBeVisible();
  await card.getByRole('button', { name: 'Delete: Longer day' }).click();
  await expect(card.getByRole('listitem')).toHaveCount(2);
  await card.getByRole('button', { name: 'Put it back' }).click();
  await expect(card.getByRole('listitem')).toHaveCount(3);

  await planner.example('Electric tender');
  await page.reload();
  card = await opened(page);
  await card.getByRole('button', { name: 'Open: Day out', exact: true }).click();
  await expect.poll(() => planner.gist()).toEqual(day);
  await page.getByRole('button', { name: 'Take back' }).click();
  await expect.poll(async () => (await planner.plan()).need.median).toBeGreaterThan(1e5);
  expect(planner.complaints).toEqual([]);
});

test('all that is saved goes to a file and comes back from it on another device', async ({ page, browser }) => {
  const planner = new PlannerPage(page);
  await planner.open();
  await planner.example('Petrol catamaran, a day out');
  const card = await opened(page);
  await card.getByRole('button', { name: 'Save this trip' }).click();
  await card.getByRole('button', { name: 'Save this boat' }).click();
  await expect(card.getByRole('listitem')).toHaveCount(2);
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    card.getByRole('button', { name: 'Save all as a file' }).click(),
  ]);
  const text = await readFile(await download.path(), 'utf8');

  const elsewhere = await browser.newContext();
  const other = await elsewhere.newPage();
  await new PlannerPage(other).open();
  const theirs = await opened(other);
  const bring = theirs.getByLabel('Bring in a file');
  await bring.setInputFiles({ name: 'saved.json', mimeType: 'application/json', buffer: Buffer.from(text) });
  await expect(theirs.getByText('2 entries brought in.')).toBeVisible();
  await expect(theirs.getByRole('listitem')).toHaveCount(2);
  // Once is enough.
  await bring.setInputFiles({ name: 'saved.json', mimeType: 'application/json', buffer: Buffer.from(text) });
  await expect(theirs.getByText('0 entries brought in.')).toBeVisible();
  await bring.setInputFiles({ name: 'x.json', mimeType: 'application/json', buffer: Buffer.from('{"a":1}') });
  await expect(theirs.getByText('nothing was changed')).toBeVisible();
  await expect(theirs.getByRole('listitem')).toHaveCount(2);
  await elsewhere.close();
});

test('two plans stand side by side', async ({ page }) => {
  const planner = new PlannerPage(page);
  await planner.open();
  await planner.example('Petrol catamaran, a day out');
  const card = await opened(page);
  await card.getByLabel('Name', { exact: true }).fill('Full');
  await card.getByRole('button', { name: 'Save this trip' }).click();
  await expect(card.getByRole('listitem')).toHaveCount(1);
  await planner.card('aboard').getByRole('button', { name: 'Half' }).click();
  await card.getByText('Two plans side by side', { exact: true }).click();
  const answers = card.getByRole('row', { name: /^Answer/ });
  await expect(answers.getByRole('cell').nth(1)).toHaveText('Home with reserve');
  await expect(answers.getByRole('cell').nth(0)).not.toHaveText('Home with reserve');
});

test('a browser that keeps nothing says so, and offers a file instead', async ({ page }) => {
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('no', 'SecurityError');
    };
  });
  const planner = new PlannerPage(page);
  await planner.open();
  await planner.example('Petrol catamaran, a day out');
  const card = await opened(page);
  await expect(card.getByRole('alert')).toContainText('does not let the page keep anything');
  await card.getByRole('button', { name: 'Save this trip' }).click();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    card.getByRole('button', { name: 'Save it as a file instead' }).click(),
  ]);
  expect(JSON.parse(await readFile(await download.path(), 'utf8')).entries).toHaveLength(1);
});

for (const colorScheme of ['light', 'dark'] as const) {
  test(`saved trips are for everybody, ${colorScheme}`, async ({ page }) => {
    await page.setViewportSize({ width: 320, height: 700 });
    await page.emulateMedia({ colorScheme });
    const planner = new PlannerPage(page);
    await planner.open();
    await planner.example('Petrol catamaran, a day out');
    const card = await opened(page);
    await card.getByRole('button', { name: 'Save this trip' }).click();
    await card.getByText('Two plans side by side', { exact: true }).click();
    await expect(card.getByRole('table')).toBeVisible();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
    const found = await new AxeBuilder({ page }).include({ fromShadowDom: ['homeleg-planner', '#saved'] }).analyze();
    expect(found.violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
    await card.screenshot({ path: test.info().outputPath('saved.png') });
  });
}
