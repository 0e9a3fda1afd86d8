import { readFile } from 'node:fs/promises';
import AxeBuilder from '@axe-core/playwright';
import { expect, type Locator, type Page, test } from '@playwright/test';
import { PlannerPage } from './planner-page.ts';

/** The day out on screen, with the tender and a boat low on fuel saved to go along. */
async function threeBoats(page: Page): Promise<Locator> {
  const planner = new PlannerPage(page);
  await planner.open();
  const card = page.locator('homeleg-planner details#saved');
  await planner.example('Electric tender');
  await card.locator('> summary').click();
  await card.getByLabel('Name', { exact: true }).fill('Tender');
  await card.getByRole('button', { name: 'Save this trip' }).click();
  await expect(card.getByText('Saved as Tender.')).toBeVisible();
  await planner.example('Hire boat, three hours');
  await planner.card('aboard').getByRole('button', { name: 'Half' }).click();
  await card.getByLabel('Name', { exact: true }).fill('Half full');
  await card.getByRole('button', { name: 'Save this trip' }).click();
  await expect(card.getByText('Saved as Half full.')).toBeVisible();
  await planner.example('Hire boat, three hours');
  const company = card.locator('homeleg-company');
  await card
    .locator('summary')
    .filter({ hasText: /^Boats in company$/ })
    .click();
  await company.getByLabel('Half full').check();
  return company;
}

test('boats in company: who sets the pace, who runs short first, who can help whom, and one plan for all', async ({
  page,
}) => {
  const company = await threeBoats(page);
  await company.getByRole('button', { name: 'Work out' }).click();
  await expect(company).toContainText('Half full runs short of fuel first.');
  await expect(company.getByRole('table').first().getByRole('row')).toHaveCount(3);
  await expect(company.getByRole('table').nth(1).getByRole('row')).toHaveCount(3);

  await company.getByLabel('Tender').check();
  await expect(company.getByText('work it out again')).toBeVisible();
  await company.getByRole('button', { name: 'Work out' }).click();
  await expect(company).toContainText('Tender is the slowest');
  await expect(company.getByRole('table').nth(1).getByRole('row')).toHaveCount(7);

  const [download] = await Promise.all([
    page.waitForEvent('download'),
    company.getByRole('button', { name: 'Save it as text' }).click(),
  ]);
  const text = await readFile(await download.path(), 'utf8');
  for (const words of ['3 boats in company', 'Tender:', 'Half full:', 'say "boat overdue"', 'not for navigation']) {
    expect(text).toContain(words);
  }
});

for (const colorScheme of ['light', 'dark'] as const) {
  test(`boats in company are for everybody, ${colorScheme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme });
    const company = await threeBoats(page);
    await company.getByLabel('Tender').check();
    await company.getByRole('button', { name: 'Work out' }).click();
    await expect(company.getByRole('table')).toHaveCount(2);
    const found = await new AxeBuilder({ page }).include({ fromShadowDom: ['homeleg-planner', '#saved'] }).analyze();
    expect(found.violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
    await page.locator('homeleg-planner details#saved').screenshot({ path: test.info().outputPath('company.png') });
  });
}
