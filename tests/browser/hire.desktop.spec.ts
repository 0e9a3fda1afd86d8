import { readFileSync } from 'node:fs';
import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { DeskPage, MORNING, pagesOf, ZONE } from './desk-page.ts';

test.use({ timezoneId: ZONE });
test.beforeEach(async ({ context }) => {
  await context.clock.install({ time: MORNING });
});

async function download(page: Page, press: () => Promise<void>): Promise<string> {
  const [file] = await Promise.all([page.waitForEvent('download'), press()]);
  return readFileSync(await file.path(), 'utf8');
}

test('a day at the desk, from the morning to the log', async ({ page }) => {
  const on = new DeskPage(page);
  await on.open();
  const { desk } = on;
  await expect(desk.getByText('This morning has not been set yet.')).toBeVisible();
  await on.check();
  await expect(on.answer).toHaveText('Not sure enough');
  await expect(desk.getByText('The desk has not set today’s wind and water yet.')).toBeVisible();
  await on.setMorning();
  await expect(on.answer).toHaveText('You can go');

  await desk.getByLabel('Where').selectOption('Ward jetty and back');
  await expect(on.answer).toHaveText('You can go');
  await on.makeSlip();
  await expect(desk.getByText('8 points have not been shown yet.')).toBeVisible();
  await on.initial();
  await page.clock.fastForward('10:00');
  await on.leave();
  await expect(desk.getByText('Left at 09:10, due back at 11:10.')).toBeVisible();
  await expect(desk.getByRole('img', { name: 'QR code of this slip' })).toBeVisible();
  await desk.getByRole('button', { name: 'Done: next hirer' }).click();
  await expect(desk.getByLabel('Weights of everyone')).toHaveValue('');

  // The clock of the boat goes on while the page is closed.
  await page.reload();
  await on.show('Boats out (1)');
  await expect(desk.getByText(/due 11:10/)).toBeVisible();
  await page.clock.fastForward('02:05:00');
  await expect(desk.getByRole('alert')).toContainText('Open hull, 9.9 hp is overdue by 5 min');
  await expect(page).toHaveTitle(/^A boat is overdue/);
  await expect(desk.getByText('Look out over the area from the slip.')).toBeVisible();
  await expect(desk.getByText(/say “boat overdue”/)).toHaveCount(0);
  await page.clock.fastForward('01:00:00');
  await expect(desk.getByText(/say “boat overdue”/)).toBeVisible();

  await desk.getByRole('button', { name: 'Returned' }).click();
  await desk.getByLabel('Fuel filled in again').fill('1.7');
  await on.pick('The set route, as planned');
  await expect(desk.getByText('Counts as evidence of what this boat uses.')).toBeVisible();
  await desk.getByLabel('Note (damage').fill('=1+1 scratch');
  await desk.getByRole('button', { name: 'Note the return' }).click();
  await expect(desk.getByText('No boat is out.')).toBeVisible();
  await expect(desk.getByRole('alert')).toHaveCount(0);
  await expect(page).toHaveTitle(/^Hire desk/);

  await on.show('Day log');
  await expect(desk.getByRole('row')).toHaveCount(2);
  const csv = await download(page, () => desk.getByRole('button', { name: 'Save as CSV' }).click());
  expect(csv).toContain('Open hull, 9.9 hp');
  expect(csv).toContain("'=1+1 scratch");
  await on.show('Fleet and data');
  await expect(desk.getByText('one refill noted here')).toBeVisible();
  expect(on.complaints).toEqual([]);
});

test('more people than the plate names are refused, and weights that cannot be read are kept', async ({ page }) => {
  const on = new DeskPage(page);
  await on.open();
  await on.check('85 85 85 85 85 85');
  await expect(on.answer).toHaveText('Not like this');
  await expect(on.desk).toContainText('Too many people: the boat’s plate allows fewer.');
  await expect(on.desk.getByRole('button', { name: 'Make the slip' })).toBeDisabled();
  await on.desk.getByLabel('Weights of everyone').fill('85, heavy');
  await expect(on.desk.getByText('Type weights as numbers above 0')).toBeVisible();
  await expect(on.desk.getByLabel('Weights of everyone')).toHaveValue('85, heavy');
  await expect(on.answer).toHaveText('No answer yet');
});

test('a slip past its time lets nobody leave, and a morning past its time makes no plain go', async ({ page }) => {
  const on = new DeskPage(page);
  await on.open();
  await on.setMorning();
  await on.check();
  await on.makeSlip();
  await page.clock.fastForward('31:00');
  await expect(on.desk.getByText('The slip was good until 09:30.')).toBeVisible();
  await expect(on.desk.getByRole('button', { name: 'They leave now' })).toHaveCount(0);
  await on.desk.getByRole('button', { name: 'Check again' }).click();
  await expect(on.answer).toHaveText('You can go');
  await page.clock.fastForward('15:00:00');
  await expect(on.desk.getByText(/ran out at/).first()).toBeVisible();
  await expect(on.answer).not.toHaveText('You can go');
});

test('a computer that slept through the due time says so as soon as it wakes', async ({ page }) => {
  const on = new DeskPage(page);
  await on.open();
  await on.setMorning();
  await on.check();
  await on.makeSlip();
  await on.leave();
  await page.clock.pauseAt(new Date(MORNING.getTime() + 10 * 60_000));
  await expect(on.desk.getByRole('alert')).toHaveCount(0);
  // The clock jumps and no timer has run yet.
  await page.clock.setSystemTime(new Date(MORNING.getTime() + 5 * 3_600_000));
  await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
  await expect(on.desk.getByRole('alert')).toContainText(/overdue by 3.h/);
});

test('two tabs are one desk', async ({ page, context }) => {
  const [on, other] = [new DeskPage(page), new DeskPage(await context.newPage())];
  await on.open();
  await other.open();
  await on.setMorning();
  await expect(other.desk.getByText('Set for today until 23:59')).toBeVisible();
  await on.check();
  await on.makeSlip();
  await other.show('Boats out');
  await other.desk.getByRole('button', { name: 'Open' }).click();
  await on.desk.getByLabel('Your initials').fill('KM');
  await other.desk.getByLabel('Your initials').fill('RS');
  await on.desk.getByRole('checkbox', { name: /Kill cord/ }).check();
  await other.desk.getByRole('checkbox', { name: /life jacket/ }).check();
  for (const each of [on, other]) {
    await expect(each.desk.getByRole('checkbox', { name: /Kill cord.*KM/ })).toBeChecked();
    await expect(each.desk.getByRole('checkbox', { name: /life jacket.*RS/ })).toBeChecked();
  }
  // Both at once: it leaves once.
  const press = (each: DeskPage) => each.desk.getByRole('button', { name: 'They leave now' }).click({ timeout: 5000 });
  await Promise.allSettled([press(on), press(other)]);
  await other.show('Day log');
  await expect(other.desk.getByRole('row')).toHaveCount(2);
  await on.show('Boats out (1)');
  await on.desk.getByRole('button', { name: 'Returned' }).click();
  await on.desk.getByRole('button', { name: 'Note the return' }).click();
  await other.show('Boats out');
  await expect(other.desk.getByText('No boat is out.')).toBeVisible();
  expect([...on.complaints, ...other.complaints]).toEqual([]);
});

test('everything at the counter works with the network cut', async ({ page, context }) => {
  const on = new DeskPage(page);
  await on.open();
  await page.waitForLoadState('networkidle');
  await context.setOffline(true);
  await on.setMorning();
  await on.check();
  await on.desk.getByLabel('Where').selectOption('Ward jetty and back');
  await expect(on.answer).toHaveText('You can go');
  await on.makeSlip();
  await expect(on.desk.getByText('Holds this slip as plain text.')).toBeVisible();
  await on.leave();
  await on.show('Day log');
  const csv = await download(page, () => on.desk.getByRole('button', { name: 'Save as CSV' }).click());
  expect(csv).toContain('Ward jetty and back');
  await on.show('Season card');
  await on.desk.getByRole('button', { name: 'Work out the card' }).click();
  await expect(on.desk.getByRole('button', { name: 'Print the card' })).toBeVisible();
});

test('a browser that keeps nothing is told of, and the desk works all the same', async ({ page }) => {
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('blocked', 'SecurityError');
    };
  });
  const on = new DeskPage(page);
  await on.open();
  await expect(on.desk.getByText('This browser keeps nothing here')).toBeVisible();
  await on.setMorning();
  await on.check();
  await on.makeSlip();
  await on.leave();
  await on.show('Boats out (1)');
  await expect(on.desk.locator('homeleg-out-list').getByText('Open hull, 9.9 hp')).toBeVisible();
});

test('storage that becomes full loses nothing that the page knows', async ({ page }) => {
  const on = new DeskPage(page);
  await on.open();
  await on.setMorning();
  await page.evaluate(() => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
  });
  await on.check();
  await on.makeSlip();
  await expect(on.desk.getByText('This browser keeps nothing here')).toBeVisible();
  await expect(on.desk.getByText('Set for today until 23:59')).toBeVisible();
});

test('all of it can be saved, cleared and loaded again', async ({ page }) => {
  const on = new DeskPage(page);
  const { desk } = on;
  await on.open();
  await on.setMorning();
  await on.check();
  await on.makeSlip();
  await desk.getByLabel('How to reach them').fill('+00 123');
  await on.leave();
  await on.show('Fleet and data');
  const kept = await download(page, () => desk.getByRole('button', { name: 'Save all as one file' }).click());
  expect(kept).toContain('+00 123');

  await desk.getByRole('button', { name: 'Clear the hires' }).click();
  await expect(desk.getByText('One boat is still out')).toBeVisible();
  await desk.getByRole('button', { name: 'Clear them for good' }).click();
  await expect(desk.getByText('Cleared.')).toBeVisible();
  await expect(desk.getByRole('button', { name: 'Boats out', exact: true })).toBeVisible();
  await page.reload();
  const left = await page.evaluate(async () => {
    const names = await indexedDB.databases();
    const open = indexedDB.open(names[0]!.name!);
    await new Promise((done) => (open.onsuccess = done));
    const all = open.result.transaction('hires').objectStore('hires').getAll();
    await new Promise((done) => (all.onsuccess = done));
    open.result.close();
    return all.result.length;
  });
  expect(left).toBe(0);

  await on.show('Fleet and data');
  const file = { name: 'desk.json', mimeType: 'application/json', buffer: Buffer.from(kept) };
  await desk.getByLabel('Load such a file').setInputFiles(file);
  await desk.getByRole('button', { name: 'Replace everything' }).click();
  await expect(desk.getByRole('button', { name: 'Boats out (1)' })).toBeVisible();
  await desk.getByLabel('Load such a file').setInputFiles({ ...file, buffer: Buffer.from(kept.slice(0, 400)) });
  await expect(desk.getByText(/The file ends too early|not valid JSON/)).toBeVisible();
  await expect(desk.getByRole('button', { name: 'Boats out (1)' })).toBeVisible();
});

test('a fleet comes from a file, with the place of what is wrong in it, or is typed', async ({ page }) => {
  const on = new DeskPage(page);
  const { desk } = on;
  await on.open();
  await on.show('Fleet and data');
  await expect(desk.getByText('This fleet is invented.')).toBeVisible();
  const text = await download(page, () => desk.getByRole('button', { name: 'Save the fleet as a file' }).click());
  const fleet = JSON.parse(text);
  const load = (change: object) =>
    desk.getByLabel('Load a fleet file').setInputFiles({
      name: 'fleet.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify({ ...fleet, ...change })),
    });
  await load({ boats: [{ ...fleet.boats[0], speed: 'fast' }] });
  await expect(desk.getByText('Boat 1 (Open hull, 9.9 hp): The speed of boat 1 must be a number')).toBeVisible();
  await expect(desk.getByText('at boats.0.speed')).toBeVisible();
  await load({ name: 'Pond hire', until: '2027-06-01' });
  await expect(desk.getByText(/Nobody answers for this fleet after/)).toBeVisible();
  await on.setMorning();
  await on.check();
  await expect(on.answer).toHaveText('Not sure enough');
  await expect(desk.getByText('its survey is past its date')).toBeVisible();

  await on.show('Fleet and data');
  await desk.getByRole('button', { name: 'Add a boat' }).click();
  await desk.getByLabel('Name on the boat').fill('Number seven');
  await desk.getByRole('button', { name: 'Keep this boat' }).click();
  await expect(desk.getByText('Own figures', { exact: false })).toBeVisible();
  await on.show('Check');
  await expect(desk.getByLabel('Boat', { exact: true })).toContainText('Number seven');
});

test('slip and season card are one page each on A5, A4 and Letter', async ({ page }) => {
  const on = new DeskPage(page);
  await on.open();
  await on.setMorning();
  await on.check();
  await on.desk.getByLabel('Where').selectOption('Gut cove and back');
  await on.makeSlip();
  await on.initial();
  await expect(on.desk.getByRole('img', { name: 'QR code of this slip' })).toBeVisible();
  const margin = { top: '9mm', bottom: '9mm', left: '9mm', right: '9mm' };
  const sizes = [
    { width: '148mm', height: '210mm' },
    { width: '210mm', height: '297mm' },
    { width: '215.9mm', height: '279.4mm' },
  ];
  for (const size of sizes) expect(pagesOf(await page.pdf({ ...size, margin }))).toBe(1);
  await on.show('Season card');
  await on.desk.locator('homeleg-season-card').getByLabel('Boat', { exact: true }).selectOption('Electric launch');
  await on.desk.getByRole('button', { name: 'Work out the card' }).click();
  await expect(on.desk.getByRole('button', { name: 'Print the card' })).toBeVisible();
  for (const size of sizes) expect(pagesOf(await page.pdf({ ...size, margin }))).toBe(1);
});

for (const colorScheme of ['light', 'dark'] as const) {
  test(`every part of the desk can be read and used by everybody, ${colorScheme}`, async ({ page }) => {
    const on = new DeskPage(page);
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    await on.open();
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    const audit = async (state: string) => {
      const { violations } = await new AxeBuilder({ page })
        .include('homeleg-hire-desk')
        .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
        .analyze();
      const found = violations.flatMap((rule) =>
        rule.nodes.map((node) => `${rule.id}: ${node.target} ${node.failureSummary}`),
      );
      expect(found, state).toEqual([]);
      const wide = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(wide, state).toBe(0);
    };
    await page.setViewportSize({ width: 320, height: 900 });
    await on.setMorning();
    await on.show('This morning');
    await audit('morning');
    await on.show('Check');
    await on.check();
    await audit('check');
    await on.makeSlip();
    await on.initial();
    await audit('handover');
    await on.leave();
    await page.clock.fastForward('02:40:00');
    await on.show('Boats out');
    await on.desk.getByRole('button', { name: 'Returned' }).click();
    await audit('overdue, return');
    await on.show('Day log');
    await audit('log');
    await on.show('Season card');
    await on.desk.getByRole('button', { name: 'Work out the card' }).click();
    await expect(on.desk.getByRole('button', { name: 'Print the card' })).toBeVisible();
    await audit('card');
    await on.show('Fleet and data');
    await on.desk.getByRole('button', { name: 'Change Electric launch' }).click();
    await on.desk.getByRole('button', { name: 'Clear the hires' }).click();
    await audit('fleet');
  });
}
