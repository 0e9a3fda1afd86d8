/** Pages that the browser really puts away when another is opened, and brings back whole when somebody goes back. */
import { test as base, expect, type Page } from '@playwright/test';
import { boatOut, DeskPage, MORNING, ZONE } from './desk-page.ts';
import { PlannerPage } from './planner-page.ts';

/** With what the runner forbids a browser otherwise. */
const test = base.extend<object, object>({
  launchOptions: [
    ({ launchOptions }, use) => use({ ...launchOptions, ignoreDefaultArgs: ['--disable-back-forward-cache'] }),
    { scope: 'worker' },
  ],
});

test.use({ timezoneId: ZONE });

/** To the checklists and back, with something done meanwhile; whether this page was put away whole. */
async function thereAndBack(page: Page, meanwhile: () => Promise<void> = async () => {}): Promise<boolean> {
  await page.evaluate(() => {
    const marks = globalThis as unknown as { putAway?: boolean };
    window.addEventListener('pageshow', ({ persisted }) => {
      marks.putAway = persisted;
    });
  });
  await page.getByRole('banner').getByRole('link', { name: 'Checklists' }).click();
  await page.waitForURL(/checklists/);
  await meanwhile();
  // Not the runner's own way back, which waits for a load that never comes.
  await page.evaluate(() => {
    setTimeout(() => history.back());
  });
  await expect(page).toHaveURL(/^(?!.*checklists)/);
  return page.evaluate(() => (globalThis as unknown as { putAway?: boolean }).putAway === true);
}

test('a planner that was put away goes on with its trip: the next change is planned and kept', async ({ page }) => {
  const planner = new PlannerPage(page);
  await planner.open();
  await planner.example('Petrol catamaran, a day out');
  const mine = await planner.gist();
  expect(await thereAndBack(page)).toBe(true);
  expect(await planner.gist()).toEqual(mine);
  await planner.example('Electric tender');
  const next = await planner.gist();
  expect(next).not.toEqual(mine);
  await page.reload();
  await expect.poll(() => planner.gist().catch(() => undefined)).toEqual(next);
});

test('a desk that was left shows what another tab did meanwhile, put away whole or, once the other told of it, made anew', async ({
  page,
  context,
}) => {
  await context.clock.install({ time: MORNING });
  const on = await boatOut(page);
  await on.show('Boats out (1)');
  const other = new DeskPage(await context.newPage());
  await other.open();
  await thereAndBack(page, async () => {
    await other.show('Boats out (1)');
    await other.desk.getByRole('button', { name: 'Returned' }).press('Enter');
    await other.desk.getByRole('button', { name: 'Note the return' }).press('Enter');
    await expect(other.desk.getByText('No boat is out.')).toBeVisible();
  });
  await on.show('Boats out');
  await expect(on.desk.getByText('No boat is out.')).toBeVisible();
});
