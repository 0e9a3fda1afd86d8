import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { clubPage } from './guest-page.ts';

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

const trip = JSON.parse(readFileSync('shared/trips/petrol-day.json', 'utf8'));
const given = `<script type="application/json">${JSON.stringify({ trip })}</script>`;
const map = (page: Page) => page.getByRole('region', { name: 'Map of the route' });
const scrolled = (page: Page) => page.evaluate(() => Math.round(scrollY));
/** Where the first waypoint is on the screen, measured from the map's corner. */
async function ground(page: Page): Promise<{ x: number; y: number }> {
  const [pin, frame] = [
    await map(page)
      .getByRole('button', { name: /^Waypoint 1 of/ })
      .boundingBox(),
    await map(page).boundingBox(),
  ];
  return { x: Math.round(pin!.x - frame!.x), y: Math.round(pin!.y - frame!.y) };
}

async function atMap(page: Page): Promise<{ x: number; y: number }> {
  await clubPage(page, `<main><p>Above</p><homeleg-planner keep="none">${given}</homeleg-planner></main>`);
  await page.goto('/club/');
  await expect(map(page)).toHaveClass(/leaflet-container/);
  await map(page).evaluate((frame) => frame.scrollIntoView({ block: 'center' }));
  const box = (await map(page).boundingBox())!;
  return { x: Math.round(box.x + box.width / 2), y: Math.round(box.y + box.height / 2) };
}

test('two fingers move the map and leave the page where it is; arrows move it too', async ({ page }) => {
  const at = await atMap(page);
  const cdp = await page.context().newCDPSession(page);
  const [before, ground0] = [await scrolled(page), await ground(page)];
  const fingers = (y: number) => [
    { x: at.x - 40, y: at.y + y, id: 0 },
    { x: at.x + 40, y: at.y + y, id: 1 },
  ];
  await cdp.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: fingers(0) });
  for (let y = 10; y <= 80; y += 10) {
    await cdp.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: fingers(y) });
  }
  await cdp.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  await expect.poll(async () => Math.abs((await ground(page)).y - ground0.y)).toBeGreaterThan(30);
  expect(Math.abs((await scrolled(page)) - before)).toBeLessThan(5);
  const ground1 = await ground(page);
  await page.locator('homeleg-planner').getByRole('button', { name: 'Move the map north' }).click();
  await expect.poll(() => ground(page)).not.toEqual(ground1);
});
