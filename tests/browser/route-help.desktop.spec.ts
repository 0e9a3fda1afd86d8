import { expect, type Page, test } from '@playwright/test';
import { PlannerPage } from './planner-page.ts';

/** A leg that crosses an island of the invented estuary. */
const ACROSS = ['45.992, -32.045', '45.992, -31.985'];

async function typed(page: Page, places: readonly string[]): Promise<void> {
  const table = page.locator('homeleg-waypoint-table');
  for (const place of places) {
    await table.getByLabel('Place: latitude and longitude').fill(place);
    await table.getByRole('button', { name: 'Add', exact: true }).click();
  }
}

test('a leg across land is taken round it from the reason that says so, and undo takes that back', async ({ page }) => {
  const planner = new PlannerPage(page);
  await planner.open();
  const table = page.locator('homeleg-waypoint-table');
  await typed(page, ACROSS);
  await expect(planner.answer).toContainText('Ward Island');
  await planner.answer.getByRole('button', { name: 'Take me round' }).first().click();
  await expect(table.getByText('Leg 1 now goes round, 50 m off')).toBeInViewport();
  await expect.poll(() => planner.reasons()).not.toContain('crosses-land');
  const rows = await table.locator('tbody tr').count();
  expect(rows).toBeGreaterThan(2);
  await table.getByRole('button', { name: 'Undo' }).click();
  await expect(table.locator('tbody tr')).toHaveCount(2);
  expect(await planner.reasons()).toContain('crosses-land');
  await table.getByRole('button', { name: 'Redo' }).click();
  await expect(table.locator('tbody tr')).toHaveCount(rows);
  expect(planner.complaints).toEqual([]);
});

test('another distance starts from the route as drawn, by keys alone', async ({ page }) => {
  const planner = new PlannerPage(page);
  await planner.open();
  const table = page.locator('homeleg-waypoint-table');
  await typed(page, ACROSS);
  const button = table.getByRole('button', { name: 'Take me round' });
  await button.press('Enter');
  await expect(table.getByText('50 m off')).toBeVisible();
  const near = (await planner.plan()).distance;
  await table.getByLabel('Distance to keep off').selectOption('200');
  await button.press('Enter');
  await expect(table.getByText('200 m off')).toBeVisible();
  await expect.poll(async () => (await planner.plan()).distance).toBeGreaterThan(near * 1.02);
  await expect.poll(async () => (await planner.plan()).distance).toBeLessThan(near * 1.5);
});

test('a waypoint on land is named, and nothing is changed', async ({ page }) => {
  const planner = new PlannerPage(page);
  await planner.open();
  const table = page.locator('homeleg-waypoint-table');
  await typed(page, ['45.992, -32.045', '45.995, -32.012']);
  await table.getByRole('button', { name: 'Take me round' }).click();
  await expect(table.getByText('Leg 1 stays as it is: waypoint 2 lies on land.')).toBeVisible();
  await expect(table.locator('tbody tr')).toHaveCount(2);
});

test('an opened example is no step to undo', async ({ page }) => {
  const planner = new PlannerPage(page);
  await planner.open();
  await planner.example('Petrol catamaran, a day out');
  await expect(page.locator('homeleg-waypoint-table').getByRole('button', { name: 'Undo' })).toHaveAttribute(
    'aria-disabled',
    'true',
  );
  await expect(page.locator('homeleg-route-map').getByRole('button', { name: 'Undo' })).toHaveAttribute(
    'aria-disabled',
    'true',
  );
});
