import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { clubPage } from './guest-page.ts';

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

const trip = JSON.parse(readFileSync('shared/trips/petrol-day.json', 'utf8'));
const given = `<script type="application/json">${JSON.stringify({ trip })}</script>`;
const map = (page: Page) => page.getByRole('region', { name: 'Map of the route' });
const scrolled = (page: Page) => page.evaluate(() => Math.round(scrollY));
/** Where the first waypoint is on the screen, measured from the map's corner: both at one moment, as the page may scroll. */
function ground(page: Page): Promise<{ x: number; y: number }> {
  return map(page).evaluate((frame) => {
    const pins = [...frame.querySelectorAll('[aria-label]')];
    const pin = pins
      .find((one) => one.getAttribute('aria-label')!.startsWith('Waypoint 1 of'))!
      .getBoundingClientRect();
    const corner = frame.getBoundingClientRect();
    return { x: Math.round(pin.x - corner.x), y: Math.round(pin.y - corner.y) };
  });
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

/** A place on the map, in the page's pixels, where there is no waypoint, button or other handle within a finger's reach. */
async function bareGround(page: Page): Promise<{ x: number; y: number }> {
  const found = await map(page).evaluate((frame) => {
    const { left, top, width, height } = frame.getBoundingClientRect();
    const root = frame.getRootNode() as ShadowRoot;
    const bare = (x: number, y: number) =>
      [-24, 0, 24].every((dx) =>
        [-24, 0, 24].every((dy) => {
          const there = root.elementFromPoint(x + dx, y + dy);
          return there !== null && frame.contains(there) && !there.closest('button, .handle, [role="button"]');
        }),
      );
    for (let y = top + height / 2; y < top + height - 30; y += 8) {
      for (let x = left + 30; x < left + width - 30; x += 8) if (bare(x, y)) return { x, y };
    }
    return undefined;
  });
  expect(found, 'a bare place on the map').toBeDefined();
  return found!;
}

/** A finger put down there, drawn upwards by 160 px as one scrolls down a page, and lifted. */
async function oneFinger(page: Page, { x, y }: { x: number; y: number }): Promise<void> {
  const cdp = await page.context().newCDPSession(page);
  await cdp.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [{ x, y }] });
  for (let up = 10; up <= 160; up += 10) {
    await cdp.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: [{ x, y: y - up }] });
  }
  await cdp.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  await page.evaluate(() => new Promise((next) => requestAnimationFrame(() => requestAnimationFrame(next))));
}

/** A page that a finger threw goes on for a while. */
async function atRest(page: Page): Promise<void> {
  await page.waitForFunction(async () => {
    const before = scrollY;
    for (let frame = 0; frame < 5; frame++) await new Promise(requestAnimationFrame);
    return scrollY === before;
  });
}

test('one finger on the map scrolls the page past it, and leaves the map and the route as they are', async ({
  page,
}) => {
  await atMap(page);
  const route = () => page.evaluate(() => JSON.stringify(document.querySelector('homeleg-planner')!.trip.route));
  const [ground0, route0] = [await ground(page), await route()];
  const before = await scrolled(page);
  await oneFinger(page, await bareGround(page));
  await expect.poll(async () => (await scrolled(page)) - before).toBeGreaterThan(100);
  expect(await ground(page)).toEqual(ground0);
  expect(await route()).toBe(route0);
  // The same finger on a map that keeps every touch for itself goes nowhere: this is what the first part rules out.
  await map(page).evaluate((frame) => {
    frame.style.touchAction = 'none';
    frame.scrollIntoView({ block: 'center' });
  });
  await atRest(page);
  const trapped = await scrolled(page);
  await oneFinger(page, await bareGround(page));
  expect(Math.abs((await scrolled(page)) - trapped)).toBeLessThan(10);
});

test('one finger that starts on a waypoint moves the waypoint, not the page', async ({ page }) => {
  await atMap(page);
  const pin = map(page).getByRole('button', { name: /^Waypoint 1 of/ });
  await pin.evaluate((handle) => handle.scrollIntoView({ block: 'center' }));
  const at = (await pin.boundingBox())!;
  const route = () => page.evaluate(() => JSON.stringify(document.querySelector('homeleg-planner')!.trip.route));
  const [route0, before] = [await route(), await scrolled(page)];
  await oneFinger(page, { x: at.x + at.width / 2, y: at.y + at.height / 2 });
  expect(Math.abs((await scrolled(page)) - before)).toBeLessThan(10);
  await expect.poll(route).not.toBe(route0);
});
