import { readFile } from 'node:fs/promises';
import AxeBuilder from '@axe-core/playwright';
import { type Download, expect, type Locator, type Page, test } from '@playwright/test';
import ICAL from 'ical.js';
import { PlannerPage } from './planner-page.ts';

async function opened(page: Page): Promise<Locator> {
  const planner = new PlannerPage(page);
  await planner.open();
  await planner.example('Petrol catamaran, a day out');
  const card = page.locator('homeleg-planner details#passage');
  await card.locator('> summary').click();
  await expect(card.getByRole('button', { name: 'Print passage plan' })).toBeVisible();
  return card;
}

async function saved(page: Page, press: Locator): Promise<{ name: string; text: string }> {
  const [download] = await Promise.all([page.waitForEvent('download') as Promise<Download>, press.click()]);
  return { name: download.suggestedFilename(), text: await readFile(await download.path(), 'utf8') };
}

test('the passage plan tells the contact when to worry: sheet, calendar, text and files of the route', async ({
  page,
}) => {
  const card = await opened(page);
  await card.getByLabel('Shore contact and phone').fill('Runa 0555 0111');
  await card.getByLabel('Who is aboard').fill('Edda, 44; Ole, 9, asthma');
  await card.getByText('What it says').click();
  const sheet = card.locator('.preview homeleg-sheet-paper');
  await expect(sheet).toContainText('Plan good if under way by');
  await expect(sheet).toContainText('Edda, 44');
  await expect(sheet).toContainText('say "boat overdue"');
  await expect(sheet.getByRole('row')).toHaveCount(30);

  const ics = await saved(page, card.getByRole('button', { name: 'Calendar file' }));
  expect(ics.name).toBe('passage-plan-2027-06-19.ics');
  const event = new ICAL.Event(new ICAL.Component(ICAL.parse(ics.text)).getFirstSubcomponent('vevent')!);
  // Planned back 12:54 on a clock two hours behind UTC, and a quarter of an hour later on a full five minutes.
  expect(event.startDate.toJSDate().toISOString()).toBe('2027-06-19T15:10:00.000Z');
  expect(ics.text).not.toMatch(/Edda|Runa/);
  await card.getByLabel('Send what I typed along').check();
  expect((await saved(page, card.getByRole('button', { name: 'Calendar file' }))).text).toContain('Edda');

  const text = await saved(page, card.getByRole('button', { name: 'Save as text' }));
  expect(text.text).toContain('not for navigation');
  const gpx = await saved(page, card.getByRole('button', { name: 'Route as GPX' }));
  expect(gpx.text.match(/<rtept/g)).toHaveLength(29);
  const geo = JSON.parse((await saved(page, card.getByRole('button', { name: 'Route as GeoJSON' }))).text);
  expect(geo.features[0].geometry.coordinates).toHaveLength(29);
});

test('what was typed stays on the device, and is there again after a reload', async ({ page }) => {
  const card = await opened(page);
  await card.getByLabel('Phone and radio aboard').fill('0555 0100');
  await card.getByLabel('Send what I typed along').check();
  await page.reload();
  await card.locator('> summary').click();
  await expect(card.getByLabel('Phone and radio aboard')).toHaveValue('0555 0100');
  await expect(card.getByLabel('Send what I typed along')).not.toBeChecked();
});

test('the message is copied without names, and goes to the share sheet where there is one', async ({
  page,
  context,
}) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.addInitScript(() => {
    Object.assign(navigator, {
      share: async (message: ShareData) => {
        document.documentElement.dataset.sent = message.text;
      },
    });
  });
  const card = await opened(page);
  await card.getByLabel('Who is aboard').fill('Edda');
  await card.getByRole('button', { name: 'Copy as message' }).click();
  await expect(card.getByText('Copied.')).toBeVisible();
  const copied = await page.evaluate(() => navigator.clipboard.readText());
  expect(copied).toContain('at the latest 13:10');
  expect(copied).not.toContain('Edda');
  await card.getByRole('button', { name: 'Send as message' }).click();
  await expect(page.locator('html')).toHaveAttribute('data-sent', copied);
});

for (const format of ['A4', 'Letter'] as const) {
  test(`the passage plan prints alone on one page of ${format}`, async ({ page }) => {
    await page.addInitScript(() => {
      globalThis.print = () => document.documentElement.setAttribute('data-printed', '');
    });
    const card = await opened(page);
    for (const label of ['Shore contact', 'Whom the contact', 'Phone and radio', 'Car or trailer']) {
      await card.getByLabel(label).fill('Runa Invented, 0555 0111');
    }
    await card.getByLabel('Who is aboard').fill('Edda, 44\nOle, 9, asthma');
    await expect(card.getByText('Working out how late')).toHaveCount(0);
    await card.getByRole('button', { name: 'Print passage plan' }).click();
    await expect(page.locator('html[data-printed]')).toBeAttached();
    await page.emulateMedia({ media: 'print' });
    await expect(page.locator('body > homeleg-sheet-paper')).toBeVisible();
    await expect(page.locator('homeleg-planner')).toBeHidden();
    await page.emulateMedia({ media: null });
    const pdf = await page.pdf({ format, path: test.info().outputPath('passage-plan.pdf') });
    expect(pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
    // Printing is over: the page is itself again.
    await expect(page.locator('body > homeleg-sheet-paper')).toHaveCount(0);
    await expect(page.locator('homeleg-planner')).toBeVisible();
  });
}

test("the browser's own print has the least aboard and the passage plan, though neither was opened", async ({
  page,
}) => {
  const planner = new PlannerPage(page);
  await planner.open();
  await planner.example('Petrol catamaran, a day out');
  await page.waitForFunction(() => customElements.get('homeleg-passage-plan') !== undefined);
  await page.evaluate(() => globalThis.dispatchEvent(new Event('beforeprint')));
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('homeleg-minimums table')).toBeVisible();
  await expect(page.getByRole('heading', { name: 'If we are not back' })).toBeVisible();
  await expect(page.getByRole('button', { name: 'Print passage plan' })).toBeHidden();
});

for (const colorScheme of ['light', 'dark'] as const) {
  test(`the passage plan is for everybody, ${colorScheme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme });
    const card = await opened(page);
    await card.getByText('What it says').click();
    const found = await new AxeBuilder({ page }).include({ fromShadowDom: ['homeleg-planner', '#passage'] }).analyze();
    expect(found.violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
    await card.screenshot({ path: test.info().outputPath('card.png') });
  });
}

test('the passage plan fits its width at 320 px', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 700 });
  const card = await opened(page);
  await card.getByText('What it says').click();
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
  await card.screenshot({ path: test.info().outputPath('phone.png') });
});
