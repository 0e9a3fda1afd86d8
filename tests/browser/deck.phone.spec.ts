import { expect, test } from '@playwright/test';
import { DeckPage } from './deck-page.ts';

test('a person is dragged by touch, the figures following, and the drawing stays where it is', async ({
  page,
  context,
}) => {
  const deck = new DeckPage(page);
  await deck.begin();
  const mate = await deck.middle('Mate');
  const helm = await deck.middle('Skipper');
  const drawing = page.getByRole('group', { name: 'The boat from above' });
  const top = (await drawing.boundingBox())!.y;
  const session = await context.newCDPSession(page);
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', at?: { x: number; y: number }) =>
    session.send('Input.dispatchTouchEvent', { type, touchPoints: at ? [at] : [] });
  await touch('touchStart', mate);
  for (let i = 1; i <= 8; i++) {
    await touch('touchMove', { x: mate.x + ((helm.x - mate.x) * i) / 8, y: mate.y + ((helm.y + 50 - mate.y) * i) / 8 });
  }
  await expect(deck.figure('heel')).toContainText('to starboard');
  await touch('touchEnd');
  await expect(deck.figure('heel')).toContainText('to starboard');
  expect(await deck.station(page, 'Mate')).not.toBe('seat-fore-port');
  // To a pixel: what grows or shrinks above it does not push it about.
  expect(Math.abs((await drawing.boundingBox())!.y - top)).toBeLessThanOrEqual(1);
  expect(deck.complaints).toEqual([]);
});

test('a person changes place by two taps, and the load fits its width', async ({ page }) => {
  const deck = new DeckPage(page);
  await deck.begin();
  const mate = await deck.middle('Mate');
  await page.touchscreen.tap(mate.x, mate.y);
  await expect(page.getByText('Now tap its place on the boat')).toBeVisible();
  const again = await deck.middle('Mate');
  await page.touchscreen.tap(again.x, again.y + 90);
  await expect.poll(() => deck.station(page, 'Mate')).not.toBe('seat-fore-port');
  await deck.load.scrollIntoViewIfNeeded();
  await expect(deck.advice.locator('.says')).not.toBeEmpty();
  const wide = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  expect(wide).toBeLessThanOrEqual(0);
});
