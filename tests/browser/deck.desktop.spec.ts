import AxeBuilder from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import { DeckPage } from './deck-page.ts';

test('heel, trim, edge and speeds follow a person dragged with the mouse, before they are put down', async ({
  page,
}) => {
  const deck = new DeckPage(page);
  await deck.begin();
  const before = await deck.figures();
  const mate = await deck.middle('Mate');
  const helm = await deck.middle('Skipper');
  await page.mouse.move(mate.x, mate.y);
  await page.mouse.down();
  // Beside the helm and a little further aft.
  await page.mouse.move(helm.x, helm.y + 60, { steps: 10 });
  await expect(deck.figure('heel')).toContainText('to starboard');
  await expect(deck.figure('planes')).not.toHaveText(before[4]!);
  await page.mouse.up();
  await expect(deck.figure('heel')).toContainText('to starboard');
  expect(await deck.station(page, 'Mate')).not.toBe('seat-fore-port');
  expect(deck.complaints).toEqual([]);
});

test('a drag broken off with Escape leaves everything as it was', async ({ page }) => {
  const deck = new DeckPage(page);
  await deck.begin();
  const before = await deck.figures();
  const mate = await deck.middle('Mate');
  await page.mouse.move(mate.x, mate.y);
  await page.mouse.down();
  await page.mouse.move(mate.x + 90, mate.y + 120, { steps: 6 });
  await expect(deck.figure('heel')).not.toHaveText('upright');
  await page.keyboard.press('Escape');
  await expect(deck.figure('heel')).toHaveText('upright');
  await page.mouse.up();
  expect(await deck.figures()).toEqual(before);
  expect(await deck.station(page, 'Mate')).toBe('seat-fore-port');
});

test('a person moved by keys changes the same figures as one dragged', async ({ page }) => {
  const deck = new DeckPage(page);
  await deck.begin();
  const piece = deck.piece('Mate');
  await piece.focus();
  // Over to the other side: 1.4 m in steps of 0.25 m.
  for (let i = 0; i < 4; i++) await page.keyboard.press('Shift+ArrowRight');
  await expect(deck.figure('heel')).toContainText('to starboard');
  await page.keyboard.press('Escape');
  await expect(deck.figure('heel')).toHaveText('upright');
  await piece.focus();
  await page.keyboard.press('n');
  await expect.poll(() => deck.station(page, 'Mate')).not.toBe('seat-fore-port');
  expect(deck.complaints).toEqual([]);
});

test('the tank moved forward by keys lowers the bow', async ({ page }) => {
  const deck = new DeckPage(page);
  await deck.begin();
  const trim = await deck.figure('rest').textContent();
  const running = await deck.figure('running').textContent();
  await deck.piece('Portable tank, 12 L').focus();
  for (let i = 0; i < 9; i++) await page.keyboard.press('Shift+ArrowUp');
  await expect(deck.figure('rest')).not.toHaveText(trim ?? '');
  const degrees = (text: string | null) => Number.parseFloat(text ?? '') || 0;
  expect(degrees(await deck.figure('rest').textContent())).toBeLessThan(degrees(trim));
  expect(degrees(await deck.figure('running').textContent())).toBeLessThanOrEqual(degrees(running));
});

test('the advice for where to sit is taken with one press, and taken back with another', async ({ page }) => {
  const deck = new DeckPage(page);
  await deck.begin();
  // Both aft and to the same side: nobody would.
  await deck.piece('Mate').focus();
  for (let i = 0; i < 4; i++) await page.keyboard.press('Shift+ArrowDown');
  await deck.advice.scrollIntoViewIfNeeded();
  await expect(deck.advice).toContainText('least power over the hump');
  await expect(deck.advice).toContainText('Mate to');
  await expect(deck.advice).toContainText('As you sit now, that costs');
  await deck.advice.getByRole('button', { name: 'Seat them so' }).click();
  await expect.poll(() => deck.station(page, 'Mate')).toBe('seat-fore-port');
  await expect(deck.advice).toContainText('Everybody sits well for this already');
  await deck.advice.getByRole('button', { name: 'Take back' }).click();
  await expect.poll(() => deck.station(page, 'Mate')).toBeUndefined();
  for (const purpose of ['Lying level', 'Range', 'Rough water', 'Tiller extension']) {
    await deck.advice.getByRole('radio', { name: purpose }).check({ force: true });
    await expect(deck.advice.locator('[role=status]')).toHaveAttribute('aria-busy', 'false');
    await expect(deck.advice.locator('.says')).not.toBeEmpty();
  }
  expect(deck.complaints).toEqual([]);
});

test('the plate leads what the boat may carry, and monohull rules are said not to cover it', async ({ page }) => {
  const deck = new DeckPage(page);
  await deck.begin();
  const capacity = page.locator('homeleg-capacity-table');
  await capacity.scrollIntoViewIfNeeded();
  await expect(capacity.locator('tr.leads')).toContainText("The boat's plate");
  await expect(capacity).toContainText('Published rules that do not cover your boat: US weight capacity');
  await expect(capacity).toContainText('11.2 kW, the plate allows 15.0 kW');
});

test('safe payload is drawn over way and speed with what sets the limit, and read as a table', async ({ page }) => {
  const deck = new DeckPage(page);
  await deck.begin();
  const plot = page.locator('homeleg-payload-plot');
  await plot.scrollIntoViewIfNeeded();
  await expect(plot.locator('li').first()).toContainText('NM to');
  await expect(plot).toContainText('reserve');
  await plot.getByRole('radio', { name: 'Planned speed' }).check({ force: true });
  await expect(plot.locator('li').first()).toContainText('kn to');
  await plot.getByText('As a table').click();
  await expect(plot.locator('tbody tr')).toHaveCount(18);
});

test('leaving one behind and one more person are answered', async ({ page }) => {
  const deck = new DeckPage(page);
  await deck.begin();
  const asked = page.locator('homeleg-load-questions');
  await asked.scrollIntoViewIfNeeded();
  await expect(asked).toContainText('With one more of 85');
  await asked.getByLabel('Leave behind').selectOption({ label: 'Mate, 85\u00a0kg' });
  await expect(asked).toContainText('Without Mate');
  await asked.getByLabel('Water in the bilge').fill('60');
  await asked.getByLabel('Water in the bilge').press('Tab');
  await expect(asked.locator('tbody tr')).toHaveCount(4);
  await expect(asked.locator('tbody')).toContainText('At the turn, changed');
});

for (const colorScheme of ['light', 'dark'] as const) {
  test(`everybody can use the load, ${colorScheme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme });
    const deck = new DeckPage(page);
    await deck.begin();
    await deck.load.scrollIntoViewIfNeeded();
    await expect(deck.advice.locator('.says')).not.toBeEmpty();
    await expect(page.locator('homeleg-payload-plot li').first()).toBeVisible();
    const { violations } = await new AxeBuilder({ page }).include('homeleg-planner').analyze();
    expect(
      violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`),
    ).toEqual([]);
  });
}
