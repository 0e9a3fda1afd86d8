import AxeBuilder from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import { PlannerPage } from './planner-page.ts';

test('how far from here is drawn and told once asked for, and follows the plan', async ({ page }) => {
  const planner = new PlannerPage(page);
  await planner.open();
  const table = page.locator('homeleg-waypoint-table');
  for (const place of ['45.985, -32.07', '45.962, -32.07']) {
    await table.getByLabel('Place: latitude and longitude').fill(place);
    await table.getByRole('button', { name: 'Add', exact: true }).click();
  }
  const panel = page.locator('homeleg-outline-panel');
  await expect(panel).toHaveCount(0);
  const toggle = page.getByRole('button', { name: 'How far from here' });
  await toggle.focus();
  await page.keyboard.press('Enter');
  await expect(toggle).toHaveAttribute('aria-pressed', 'true');
  await expect(panel.getByRole('row')).toHaveCount(9);
  await expect(planner.map.locator('path.reach')).toHaveCount(2);
  const west = panel.getByRole('row').filter({ hasText: 'West' }).last();
  await expect(west).toContainText('NM');
  const before = await west.textContent();
  const aboard = planner.card('aboard');
  await aboard.getByRole('button', { name: 'Full' }).click();
  await expect.poll(() => west.textContent()).not.toBe(before);
  await panel.getByRole('button', { name: 'Show all of it' }).click();
  await panel.getByLabel('Look round from').selectOption({ index: 1 });
  await expect(panel).toContainText('The way to waypoint 2 and back to the start is taken off.');
  const { violations } = await new AxeBuilder({ page }).include('homeleg-planner').analyze();
  expect(violations).toEqual([]);
  await toggle.click();
  await expect(panel).toHaveCount(0);
  await expect(planner.map.locator('path.reach')).toHaveCount(0);
  expect(planner.complaints).toEqual([]);
});
