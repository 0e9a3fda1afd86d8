import { expect, type Page, test } from '@playwright/test';

const before = '/checklists/before-launch/';
const fuel = '/checklists/fuel-or-battery/';
const lists = [before, fuel, '/checklists/on-the-water/'];

const anchor = (page: Page) => page.getByRole('checkbox', { name: /^Anchor/ });
const done = (page: Page, text: string | RegExp) => expect(page.locator('[data-count]')).toHaveText(text);

test('ticks are counted and still there after a reload', async ({ page }) => {
  await page.goto(before);
  const points = await page.getByRole('checkbox').count();
  await done(page, `0 of ${points} done`);
  await anchor(page).check();
  await page.getByRole('checkbox', { name: 'Drain plugs in' }).check();
  await done(page, `2 of ${points} done`);
  await page.reload();
  await expect(anchor(page)).toBeChecked();
  await done(page, `2 of ${points} done`);
});

test('lists do not share their ticks', async ({ page }) => {
  await page.goto(before);
  await anchor(page).check();
  await page.goto(fuel);
  await done(page, /^0 of/);
});

test('clearing all can be taken back, and else stays', async ({ page }) => {
  await page.goto(before);
  await anchor(page).check();
  await page.getByRole('button', { name: 'Clear all' }).click();
  await expect(anchor(page)).not.toBeChecked();
  await page.getByRole('button', { name: 'Take back' }).click();
  await expect(anchor(page)).toBeChecked();
  await page.getByRole('button', { name: 'Clear all' }).click();
  await expect(page.getByRole('status')).toHaveText('All ticks cleared.');
  await page.reload();
  await expect(anchor(page)).not.toBeChecked();
});

test('a petrol boat sees no battery points, and the choice is kept', async ({ page }) => {
  await page.goto(fuel);
  const charger = page.getByRole('checkbox', { name: /charger/ });
  const all = await page.getByRole('checkbox').count();
  await expect(charger).toBeVisible();
  await page.getByRole('radio', { name: 'Petrol' }).check();
  await expect(charger).toBeHidden();
  await expect(page.getByRole('heading', { name: 'Battery', exact: true })).toBeHidden();
  const petrol = await page.getByRole('checkbox').count();
  expect(petrol).toBeLessThan(all);
  await done(page, `0 of ${petrol} done`);
  await page.reload();
  await expect(charger).toBeHidden();
});

test('old ticks are told apart from those of today', async ({ page }) => {
  await page.clock.setFixedTime('2031-05-04T08:00:00');
  await page.goto(before);
  await anchor(page).check();
  await page.clock.setFixedTime('2031-05-04T15:00:00');
  await page.reload();
  await expect(page.getByRole('status')).toBeEmpty();
  await page.clock.setFixedTime('2031-05-06T08:00:00');
  await page.reload();
  await expect(page.getByRole('status')).toContainText('These ticks are from May 4, 2031');
});

test('whatever lies in the storage, the list works', async ({ page }) => {
  await page.goto(before);
  for (const junk of ['{', 'null', '[]', '{"ticked":{}}', '{"ticked":[3],"drive":"steam","at":1e99}']) {
    await page.evaluate((text) => localStorage.setItem('homeleg-checklist-before-launch', text), junk);
    await page.reload();
    await anchor(page).check();
    await done(page, /^1 of/);
  }
});

test('with the storage blocked the list still ticks, and says that ticks are not kept', async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'localStorage', {
      get() {
        throw new DOMException('blocked', 'SecurityError');
      },
    });
  });
  await page.goto(before);
  await anchor(page).check();
  await done(page, /^1 of/);
  await expect(page.getByRole('status')).toContainText('does not let the page keep ticks');
});

test('a link to one point leads to it', async ({ page }) => {
  await page.goto(`${before}#anchor`);
  await expect(anchor(page)).toBeInViewport();
  const own = page.getByRole('link', { name: /^Link to this point: Anchor/ });
  await expect(own).toHaveAttribute('href', '#anchor');
});

test('points can be ticked by touch and by keyboard, on a large enough target', async ({ page, hasTouch }) => {
  await page.goto(before);
  const label = page.locator('#drain-plugs label');
  const box = await label.boundingBox();
  expect(box?.height).toBeGreaterThanOrEqual(44);
  if (hasTouch) await label.tap();
  else {
    await page.getByRole('checkbox', { name: 'Drain plugs in' }).focus();
    await page.keyboard.press('Space');
  }
  await expect(page.getByRole('checkbox', { name: 'Drain plugs in' })).toBeChecked();
});

test.describe('without script', () => {
  test.use({ javaScriptEnabled: false });

  test('a list ticks, clears and chooses the engine', async ({ page }) => {
    await page.goto(fuel);
    const amount = page.getByRole('checkbox', { name: /^Amount read/ });
    await amount.check();
    await page.getByRole('radio', { name: 'Electric' }).check();
    await expect(page.getByRole('checkbox', { name: /^Spills/ })).toBeHidden();
    await expect(page.getByRole('button', { name: 'Print' })).toBeHidden();
    await page.getByRole('button', { name: 'Clear all' }).click();
    await expect(amount).not.toBeChecked();
  });
});

for (const path of lists) {
  test(`${path} prints on one A4 page`, async ({ page }) => {
    await page.goto(path);
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
    expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
    // A4 in points, to the rounding of the browser.
    const [, width, height] = pdf.match(/\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)/)!;
    expect(Number(width)).toBeCloseTo(595.3, -1);
    expect(Number(height)).toBeCloseTo(841.9, -1);
  });

  test(`${path} leaves out on paper what only works on a screen, and keeps the cautions`, async ({ page }) => {
    await page.goto(path);
    await page.emulateMedia({ media: 'print' });
    await expect(page.getByRole('button', { name: 'Clear all' })).toBeHidden();
    await expect(page.getByRole('navigation')).toBeHidden();
    await expect(page.getByText('Local law comes first.')).toBeVisible();
    await expect(page.getByText('not for navigation')).toBeVisible();
    await expect(page.getByRole('checkbox').first()).toBeVisible();
  });
}
