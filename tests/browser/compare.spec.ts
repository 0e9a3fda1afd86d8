import { readFileSync } from 'node:fs';
import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { writeProfile } from '../../src/core/files/profile-file.ts';
import { parametersOf } from '../../src/core/trials/parameters.ts';
import { catamaran, crewOf, planned, sailed, trialsOf } from '../core/trials/made-trials.ts';

const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

async function openEngines(page: Page) {
  await page.goto('/engines/', { waitUntil: 'networkidle' });
  const table = page.locator('homeleg-load-table');
  await expect(table.getByRole('heading', { name: 'Loads against engines' })).toBeVisible();
  return table;
}

async function openSuit(page: Page) {
  await page.goto('/suit/');
  const suit = page.locator('homeleg-suit');
  await expect(suit.getByRole('heading', { level: 2 })).toHaveText(/of these boats/);
  return suit;
}

/** Everything opened, so that all of it is looked at. */
async function violations(page: Page): Promise<readonly string[]> {
  const closed = page.locator('main details:not([open]) > summary');
  for (let left = await closed.count(); left > 0; left--) await closed.first().click();
  const height = await page.evaluate(() => document.documentElement.scrollHeight);
  await page.setViewportSize({ width: page.viewportSize()!.width, height });
  const found = await new AxeBuilder({ page }).withTags(RULES).analyze();
  return found.violations.flatMap((rule) =>
    rule.nodes.map((node) => `${rule.id}: ${node.target} ${node.failureSummary}`),
  );
}

/** A boat that planes more easily than its kind. */
function easyBoat(): string {
  const runs = [crewOf(['helm']), crewOf(['helm', 'seat-fore-port', 'seat-fore-starboard'])].flatMap((crew, i) =>
    [2, 5, 6, 7, 8, 9].map((speed) => planned(`${i} ${speed}`, crew, speed, { day: '2026-06-14' })),
  );
  const trials = trialsOf(catamaran, runs, { measuredBy: 'the club' });
  const better: Record<string, number> = { kd: 0.9, kp: 0.85, kh: 0.5 };
  const truth = parametersOf(trials).list.map(({ factor, mean }) => better[factor] ?? mean);
  const measured = sailed(trials, truth);
  return writeProfile({ format: 'homeleg-profile', version: 1, name: 'Club boat', usual: 'usual', trials: measured });
}

test.describe('loads and engines', () => {
  test('sets crews of one to four against three engines, plate and planing first', async ({ page }) => {
    const table = await openEngines(page);
    await expect(table.getByRole('columnheader')).toHaveCount(4 + 7);
    const four = table.getByRole('row', { name: /^4 people/ });
    await expect(four.getByRole('cell').first()).toContainText('Does not plane');
    await table
      .getByLabel('Engine', { exact: true })
      .first()
      .selectOption({ label: 'Petrol outboard, 40 hp, four-stroke' });
    await expect(four.getByRole('cell').first()).toContainText("The engine is stronger than the boat's plate allows");
    await expect(four.getByRole('cell').first()).toContainText("The engine is heavier than the boat's plate allows");
  });

  test('takes another load with its weights, says when they cannot be read, and drops it again', async ({ page }) => {
    const table = await openEngines(page);
    await table.getByRole('button', { name: 'Add another load' }).click();
    const typed = table.getByLabel('Another load', { exact: true });
    await expect(typed).toBeFocused();
    await typed.fill('85, heavy');
    await expect(table.getByText('Type weights as numbers above 0')).toBeVisible();
    await typed.fill('85, 32');
    await expect(table.getByRole('row', { name: /^Load of 85 \+ 32/ })).toBeVisible();
    await typed.fill('Family: 85, 32');
    await expect(table.getByRole('row', { name: /^Family/ })).toBeVisible();
    await table.getByLabel('Units').selectOption('imperial');
    await expect(typed).toHaveValue('Family: 187, 70.5');
    await table.getByRole('button', { name: /^Remove: Family/ }).click();
    await expect(table.getByRole('row', { name: /^Family/ })).toHaveCount(0);
    await expect(table.getByRole('button', { name: 'Add another load' })).toBeFocused();
  });

  test('can be worked with the keyboard alone', async ({ page }) => {
    const table = await openEngines(page);
    await table.getByLabel('Boat', { exact: true }).focus();
    await page.keyboard.press('End');
    await expect(table.locator('.boat-name')).toHaveText('Displacement launch, 4.9 m');
    await expect(
      table
        .getByRole('row', { name: /^1 person/ })
        .getByRole('cell')
        .first(),
    ).toContainText('Does not plane');
    await page.keyboard.press('Tab');
    await expect(table.getByRole('button', { name: 'Open a measured boat' })).toBeFocused();
    await table.getByRole('button', { name: 'Add an engine' }).focus();
    await page.keyboard.press('Enter');
    await expect(table.getByRole('group', { name: 'Engine 4' })).toBeVisible();
    await table.getByRole('button', { name: 'Remove: Engine 4' }).focus();
    await page.keyboard.press('Enter');
    await expect(table.getByRole('group', { name: 'Engine 4' })).toHaveCount(0);
    await expect(table.getByRole('button', { name: 'Add an engine' })).toBeFocused();
  });

  test('saves what it shows as CSV', async ({ page }) => {
    const table = await openEngines(page);
    const waiting = page.waitForEvent('download');
    await table.getByRole('button', { name: 'Save as CSV' }).click();
    const download = await waiting;
    expect(download.suggestedFilename()).toBe('Inflatable-catamaran-3-6-m-loads.csv');
    const text = readFileSync(await download.path(), 'utf8');
    expect(text.split('\r\n')).toHaveLength(1 + 12 + 1);
    expect(text).toContain('2 people,"Petrol outboard, 15 hp, four-stroke",9.5,"Portable tank, 25 L"');
  });

  test('prints the table with its cautions and without the questions', async ({ page }) => {
    const table = await openEngines(page);
    await page.emulateMedia({ media: 'print' });
    await expect(table.getByRole('table').first()).toBeVisible();
    await expect(table.getByText('not for navigation')).toBeVisible();
    await expect(table.getByRole('button', { name: 'Save as CSV' })).toBeHidden();
    await expect(table.getByLabel('Boat', { exact: true })).toBeHidden();
  });

  test('opens a measured boat: narrower bands, and no file that is none', async ({ page }) => {
    const table = await openEngines(page);
    const picker = table.locator('input[type=file]');
    const file = (text: string) => ({ name: 'boat.json', mimeType: 'application/json', buffer: Buffer.from(text) });
    await picker.setInputFiles(file('{"format":"homeleg-profile","version":7}'));
    await expect(table.getByRole('alert').first()).toContainText('nothing was changed');
    await expect(table.getByText('only version 1 can be read here')).toBeVisible();
    const four = table.getByRole('row', { name: /^4 people/ });
    await expect(four.getByRole('cell').nth(1)).toContainText('May just plane');
    await picker.setInputFiles(file(easyBoat()));
    await expect(table.getByText('Club boat: measured, 12 runs count, by the club, last on 2026-06-14')).toBeVisible();
    await expect(table.getByRole('alert')).toHaveCount(0);
    await expect(four.getByRole('cell')).toHaveCount(1);
    await expect(four.getByRole('cell').first()).toContainText('Planes');
    // Nobody has said what the plate of this boat says.
    await expect(four.getByRole('cell').first()).toContainText('not known without a plate');
    await table.getByRole('button', { name: 'Back to the examples' }).click();
    await expect(four.getByRole('cell').nth(1)).toContainText('May just plane');
  });

  test('looks closer: propeller from measured revs, and what tricks change', async ({ page }) => {
    const look = (await openEngines(page)).locator('homeleg-closer-look');
    await look.getByLabel('Measured at full throttle').fill('4500');
    await expect(look.getByText('Too much pitch for this load')).toBeVisible();
    await expect(look.getByText('200 to 300 rpm an inch')).toBeVisible();
    const foil = look.getByRole('row', { name: /^A foil plate on the leg/ });
    await expect(foil).toContainText('Disputed');
    const forward = look.getByRole('row', { name: /^Everybody sits 0.30? m further forward/ });
    const before = await forward.textContent();
    await look.getByLabel('Everybody moves by').fill('0.6');
    await expect(look.getByRole('row', { name: /^Everybody sits 0.60? m further forward/ })).not.toHaveText(before!);
  });

  for (const colorScheme of ['light', 'dark'] as const) {
    test(`can be used by everybody, ${colorScheme}, with all of it open`, async ({ page }) => {
      await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
      const table = await openEngines(page);
      await table.getByRole('button', { name: 'Add another load' }).click();
      await table.getByLabel('Another load', { exact: true }).fill('85, x');
      await table.getByRole('radio', { name: 'As I read it' }).check({ force: true });
      await table.getByRole('radio', { name: 'One for all' }).check({ force: true });
      expect(await violations(page)).toEqual([]);
    });
  }

  test('fits its width on a phone of 320 px, each load a card for each engine', async ({ page }) => {
    await page.setViewportSize({ width: 320, height: 700 });
    const table = await openEngines(page);
    const spare = () =>
      page.evaluate(() => document.documentElement.clientWidth - document.documentElement.scrollWidth);
    expect(await spare()).toBe(0);
    const cells = table.getByRole('row', { name: /^2 people/ }).getByRole('cell');
    await expect(cells).toHaveCount(3);
    const [first, second] = [await cells.nth(0).boundingBox(), await cells.nth(1).boundingBox()];
    expect(second!.y).toBeGreaterThan(first!.y + first!.height - 1);
    expect(first!.x + first!.width).toBeLessThanOrEqual(320);
    await table.getByRole('button', { name: 'To the table' }).click();
    await expect(table.getByRole('heading', { name: 'Loads against engines' })).toBeInViewport();
  });
});

test.describe('what would suit', () => {
  test('finds boats that plane with everybody and says what each has to show for it', async ({ page }) => {
    const suit = await openSuit(page);
    const cards = suit.locator('li.fits');
    await expect(cards.first()).toContainText('Planes with everybody at 21.6');
    await expect(cards.first()).toContainText('within the plate');
    await expect(suit.getByText('not for navigation')).toBeVisible();
    await expect(suit).toContainText('Read the one on the boat');
  });

  test('drops what cannot be carried and finds electric boats for a slow short trip', async ({ page }) => {
    const suit = await openSuit(page);
    const heading = suit.getByRole('heading', { level: 2 });
    await suit.getByRole('radio', { name: 'By hand' }).check({ force: true });
    await expect(heading).toHaveText('None of these boats suits');
    await suit.getByText('Inflatable catamaran, 2.9 m:').click();
    await expect(suit).toContainText('too heavy to carry');
    await suit.getByRole('radio', { name: 'No matter' }).check({ force: true });
    await suit.getByRole('radio', { name: 'Electric', exact: true }).check({ force: true });
    await suit.getByRole('radio', { name: 'Flat' }).check({ force: true });
    await suit.getByLabel('Out and home together').fill('8');
    await expect(heading).toHaveText(/suit$/);
    await expect(suit.locator('li.fits').first()).toContainText('Electric outboard');
  });

  test('names what cannot be read beside the field, and keeps it', async ({ page }) => {
    const suit = await openSuit(page);
    const weights = suit.getByLabel('Weights of everyone');
    await weights.fill('85, somebody');
    await expect(suit.getByText('Type up to twelve weights')).toBeVisible();
    await expect(weights).toHaveValue('85, somebody');
    await expect(suit.getByText('Type the weights and the length of the trip')).toBeVisible();
  });

  test('says the same weights in other units', async ({ page }) => {
    const suit = await openSuit(page);
    const count = await suit.getByRole('heading', { level: 2 }).textContent();
    await suit.getByLabel('Units').selectOption('imperial');
    await expect(suit.getByLabel('Weights of everyone')).toHaveValue('187, 165');
    await expect(suit.locator('li.fits').first()).toContainText('13.4\u00a0mph');
    await expect(suit.getByRole('heading', { level: 2 })).toHaveText(count!);
  });

  for (const colorScheme of ['light', 'dark'] as const) {
    test(`can be used by everybody, ${colorScheme}, with all of it open`, async ({ page }) => {
      await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
      const suit = await openSuit(page);
      await suit.getByLabel('Out and home together').fill('45');
      await expect(suit.locator('li.doubtful').first()).toBeVisible();
      await suit
        .getByRole('button', { name: /^Show \d+ more/ })
        .first()
        .click();
      await suit.getByRole('radio', { name: 'By hand' }).check({ force: true });
      await suit.getByLabel('One person may carry').fill('150');
      await expect(suit.locator('li.doubtful').first()).toBeVisible();
      expect(await violations(page)).toEqual([]);
    });
  }

  test('fits its width on a phone of 320 px and leads to its answer', async ({ page }) => {
    await page.setViewportSize({ width: 320, height: 700 });
    const suit = await openSuit(page);
    const spare = () =>
      page.evaluate(() => document.documentElement.clientWidth - document.documentElement.scrollWidth);
    expect(await spare()).toBe(0);
    await suit.getByRole('button', { name: /suit: see which/ }).click();
    await expect(suit.getByRole('heading', { level: 2 })).toBeInViewport();
  });
});
