/** Clocks that jump, pages put away, frozen or thrown away, and tabs beside each other: nothing entered is lost. */
import { expect, type Page, test } from '@playwright/test';
import { boatOut, DeskPage, MORNING, ZONE } from './desk-page.ts';
import { PlannerPage } from './planner-page.ts';

test.use({ timezoneId: ZONE });

const HOUR = 3_600_000;
const at = (hours: number) => new Date(MORNING.getTime() + hours * HOUR);

async function life(page: Page, state: 'frozen' | 'active'): Promise<void> {
  const session = await page.context().newCDPSession(page);
  await session.send('Page.setWebLifecycleState', { state });
}

/** As the browser tells a page that it is shown again. */
function looked(page: Page): Promise<unknown> {
  return page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
}

test.describe('the clock of the desk', () => {
  test('put back while a boat is out is told with how far, and again after a reload', async ({ page }) => {
    await page.clock.install({ time: MORNING });
    const on = await boatOut(page);
    await expect(on.desk.getByText('Left at 09:00')).toBeVisible();
    await page.clock.setSystemTime(at(-1));
    await looked(page);
    const alert = on.desk.getByRole('alert');
    await expect(alert).toContainText(/clock was put back by 1.h/);
    await on.show('Boats out (1)');
    await expect(on.desk.getByText(/due 11:00/)).toBeVisible();
    // Having looked at it does not make the times right: the boat still left in the future.
    await on.desk.getByRole('button', { name: 'Looked at' }).press('Enter');
    await expect(on.desk.getByRole('button', { name: 'Looked at' })).toHaveCount(0);
    await expect(alert).toContainText('put back by');
    await page.reload();
    await expect(alert).toContainText(/clock was put back by 1.h/);
    await on.show('Boats out (1)');
    await on.desk.getByRole('button', { name: 'Returned' }).press('Enter');
    await on.desk.getByRole('button', { name: 'Note the return' }).press('Enter');
    await expect(alert).toHaveCount(0);
  });

  test('put back a little less than the boat has been out is told until somebody has looked', async ({ page }) => {
    await page.clock.install({ time: MORNING });
    const on = await boatOut(page);
    await page.clock.fastForward('01:30:00');
    await page.clock.setSystemTime(at(0.5));
    await looked(page);
    const alert = on.desk.getByRole('alert');
    await expect(alert).toContainText(/clock was put back by 1.h/);
    await on.desk.getByRole('button', { name: 'Looked at' }).press('Enter');
    await expect(alert).toHaveCount(0);
  });

  test('set by a few seconds is nothing to tell', async ({ page }) => {
    await page.clock.install({ time: MORNING });
    const on = await boatOut(page);
    await page.clock.fastForward('00:30:00');
    await page.clock.setSystemTime(new Date(at(0.5).getTime() - 20_000));
    await looked(page);
    await expect(on.desk.getByText('Left at 09:00')).toBeVisible();
    await expect(on.desk.getByRole('alert')).toHaveCount(0);
  });
});

for (const [how, hours] of [
  ['forward past its departure', 30],
  ['back by a day', -24],
] as const) {
  test(`a clock that jumps ${how} changes neither the trip on screen nor its plan`, async ({ page }) => {
    await page.clock.install({ time: MORNING });
    const planner = new PlannerPage(page);
    await planner.open();
    await planner.example('Petrol catamaran, a day out');
    const trip = () =>
      page.evaluate(() => (document.querySelector('homeleg-planner') as unknown as { trip: object }).trip);
    // It departs in an hour.
    await page.evaluate((departure) => {
      const planner = document.querySelector('homeleg-planner') as unknown as {
        trip: { conditions: object };
        editTrip(trip: object): void;
      };
      planner.editTrip({ ...planner.trip, conditions: { ...planner.trip.conditions, departure } });
    }, at(1).toISOString());
    await expect.poll(async () => JSON.stringify(await trip())).toContain(at(1).toISOString());
    const [before, plan] = [await trip(), await planner.gist()];
    await page.clock.setSystemTime(at(hours));
    await looked(page);
    await page.clock.fastForward('00:01:00');
    expect(await trip()).toEqual(before);
    expect(await planner.gist()).toEqual(plan);
    await page.reload();
    await expect.poll(() => planner.gist().catch(() => undefined)).toEqual(plan);
    expect(await trip()).toEqual(before);
  });
}

test.describe('a page that was frozen', () => {
  test('has the trip as it was, and the next change is planned and kept', async ({ page }) => {
    const planner = new PlannerPage(page);
    await planner.open();
    await planner.example('Petrol catamaran, a day out');
    const mine = await planner.gist();
    await life(page, 'frozen');
    await life(page, 'active');
    expect(await planner.gist()).toEqual(mine);
    await planner.example('Electric tender');
    const next = await planner.gist();
    await page.reload();
    await expect.poll(() => planner.gist().catch(() => undefined)).toEqual(next);
  });

  test('shows what another tab of the desk did meanwhile', async ({ page, context }) => {
    await context.clock.install({ time: MORNING });
    const on = await boatOut(page);
    await on.show('Boats out (1)');
    const other = new DeskPage(await context.newPage());
    await other.open();
    await life(page, 'frozen');
    await other.show('Boats out (1)');
    await other.desk.getByRole('button', { name: 'Returned' }).press('Enter');
    await other.desk.getByRole('button', { name: 'Note the return' }).press('Enter');
    await expect(other.desk.getByText('No boat is out.')).toBeVisible();
    await life(page, 'active');
    await expect(on.desk.getByText('No boat is out.')).toBeVisible();
  });
});

test('a desk that was put away and is shown again looks what was kept meanwhile', async ({ page, context }) => {
  await context.clock.install({ time: MORNING });
  // As a page that was put away, this one hears nothing of the others.
  await page.addInitScript(() => {
    Reflect.deleteProperty(globalThis, 'BroadcastChannel');
  });
  const on = await boatOut(page);
  await on.show('Boats out (1)');
  const other = new DeskPage(await context.newPage());
  await other.open();
  await other.show('Boats out (1)');
  await other.desk.getByRole('button', { name: 'Returned' }).press('Enter');
  await other.desk.getByRole('button', { name: 'Note the return' }).press('Enter');
  await expect(other.desk.getByText('No boat is out.')).toBeVisible();
  await expect(on.desk.getByRole('button', { name: 'Boats out (1)' })).toBeVisible();
  await page.evaluate(() => dispatchEvent(new PageTransitionEvent('pageshow', { persisted: true })));
  await expect(on.desk.getByText('No boat is out.')).toBeVisible();
});

test.describe('a page thrown away right after a change', () => {
  test('has the waters that were being drawn', async ({ page, context }) => {
    await page.goto('/waters/');
    await page.getByRole('button', { name: 'Take the invented estuary' }).press('Enter');
    await expect(page.getByText('Kept on this device as you draw.')).toBeVisible();
    await page.close({ runBeforeUnload: false });
    const again = await context.newPage();
    await again.goto('/waters/');
    await expect(again.locator('homeleg-waters-editor').getByRole('listitem').first()).toBeVisible();
  });

  test('has the trials', async ({ page, context }) => {
    await page.goto('/trials/');
    await page.getByRole('button', { name: 'Load a sample' }).press('Enter');
    await expect(page.getByText('Sample loaded')).toBeVisible();
    const rows = await page.locator('homeleg-trials #runs').getByRole('row').count();
    await page.close({ runBeforeUnload: false });
    const again = await context.newPage();
    await again.goto('/trials/');
    await expect(again.locator('homeleg-trials #runs').getByRole('row')).toHaveCount(rows);
  });

  test('has the hire that was just let go', async ({ page, context }) => {
    await context.clock.install({ time: MORNING });
    await boatOut(page);
    await page.close({ runBeforeUnload: false });
    const on = new DeskPage(await context.newPage());
    await on.open();
    await expect(on.desk.getByRole('button', { name: 'Boats out (1)' })).toBeVisible();
  });
});

test('two tabs save trips: each keeps its own, both are in both once looked at, and one deleted stays deleted', async ({
  page,
  context,
}) => {
  const cards = [];
  for (const each of [page, await context.newPage()]) {
    const planner = new PlannerPage(each);
    await planner.open();
    await planner.example('Petrol catamaran, a day out');
    const card = each.locator('homeleg-planner details#saved');
    await card.locator('> summary').press('Enter');
    await expect(card.getByText('Nothing saved yet.')).toBeVisible();
    cards.push(card);
  }
  const [one, two] = [cards[0]!, cards[1]!];
  const names = ['By the first', 'By the second'];
  await Promise.all(cards.map((card, i) => card.getByLabel('Name', { exact: true }).fill(names[i]!)));
  await Promise.all(cards.map((card) => card.getByRole('button', { name: 'Save this trip' }).press('Enter')));
  await Promise.all(cards.map((card, i) => expect(card.getByText(`Saved as ${names[i]}.`)).toBeVisible()));
  for (const card of cards) {
    await looked(card.page());
    for (const name of names) await expect(card.getByRole('button', { name: `Open: ${name}` })).toBeVisible();
  }
  await one.getByRole('button', { name: 'Delete: By the second' }).press('Enter');
  await expect(one.getByRole('listitem')).toHaveCount(1);
  await looked(two.page());
  await expect(two.getByRole('listitem')).toHaveCount(1);
  await expect(two.getByRole('button', { name: 'Open: By the first' })).toBeVisible();
});

test('a desk whose page is read anew still knows what a waiting hirer said, until it is cleared', async ({
  page,
  context,
}) => {
  await context.clock.install({ time: MORNING });
  const on = new DeskPage(page);
  await on.open();
  const weights = on.desk.getByLabel('Weights of everyone');
  const hours = on.desk.getByRole('textbox', { name: 'Hours' });
  await on.check('85, 70');
  await hours.fill('3.5');
  await on.pick('First time');
  await expect(on.answer).toBeVisible();
  const told = await on.answer.textContent();
  await page.reload();
  await expect(weights).toHaveValue('85, 70');
  await expect(hours).toHaveValue('3.5');
  await expect(on.desk.getByRole('radio', { name: 'First time' })).toBeChecked();
  await expect(on.answer).toHaveText(told!);
  // In another tab of the same desk nobody reads it.
  const other = new DeskPage(await context.newPage());
  await other.open();
  await expect(other.desk.getByLabel('Weights of everyone')).toHaveValue('');
  await on.show('Fleet and data');
  await on.desk.getByRole('button', { name: 'Clear the hires' }).press('Enter');
  await on.desk.getByRole('button', { name: 'Clear them for good' }).press('Enter');
  await expect(on.desk.getByText('Cleared.')).toBeVisible();
  await page.reload();
  await on.show('Check');
  await expect(weights).toHaveValue('');
});

test('a desk that finds nonsense where its half-typed questions were kept asks them anew', async ({ page }) => {
  const on = new DeskPage(page);
  await page.addInitScript(() => {
    sessionStorage.setItem('homeleg-half-asked', '{"weightsText":{"toString":1},"due":null}');
  });
  await on.open();
  await expect(on.desk.getByLabel('Weights of everyone')).toHaveValue('');
  expect(on.complaints).toEqual([]);
});
