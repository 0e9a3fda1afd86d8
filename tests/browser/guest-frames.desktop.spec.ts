import { expect, test } from '@playwright/test';
import { clubPage, overheard } from './guest-page.ts';

const FRAMED = '<homeleg-planner keep="none" tell-size></homeleg-planner>';
/** What the documentation gives a host to paste. */
const HOST = `addEventListener('message', ({ data, source }) => {
  for (const frame of document.querySelectorAll('iframe')) {
    if (frame.contentWindow === source && data?.type === 'homeleg-size') frame.style.height = data.height + 'px';
  }
});`;

for (const sandbox of ['', 'sandbox="allow-scripts"']) {
  test(`in an iframe ${sandbox || 'of the same site'} the planner works and the frame grows with it`, async ({
    page,
  }) => {
    const { complaints } = overheard(page);
    await clubPage(page, FRAMED, { at: '/club/framed/', policy: "default-src 'self'" });
    await page.route('/club/host.js', (route) => route.fulfill({ contentType: 'text/javascript', body: HOST }));
    await page.route('/club/', (route) =>
      route.fulfill({
        contentType: 'text/html',
        body: `<!doctype html><html lang="en"><script src="/club/host.js"></script><iframe title="Planner" ${sandbox} width="900" src="/club/framed/"></iframe></html>`,
      }),
    );
    await page.goto('/club/');
    const inside = page.frameLocator('iframe');
    await expect(inside.getByRole('region', { name: 'Map of the route' })).toHaveClass(/leaflet-container/);
    const over = () =>
      page.frames()[1]!.evaluate(() => document.documentElement.scrollHeight - document.documentElement.clientHeight);
    await expect.poll(over).toBeLessThanOrEqual(1);
    const place = inside.getByLabel('Place: latitude and longitude');
    for (const typed of ['46.02, -32.01', '46.03, -32.02']) {
      await place.fill(typed);
      await place.press('Enter');
    }
    await expect(inside.locator('#answer').getByRole('heading', { level: 2 }).first()).not.toHaveText('No answer yet');
    await expect.poll(over).toBeLessThanOrEqual(1);
    expect(complaints).toEqual([]);
  });
}

test('one finger scrolls the page past the map, by touch', async ({ browser, baseURL }) => {
  const context = await browser.newContext({
    hasTouch: true,
    isMobile: true,
    viewport: { width: 390, height: 700 },
    baseURL: baseURL!,
  });
  const page = await context.newPage();
  await clubPage(page, '<homeleg-planner keep="none"></homeleg-planner>');
  await page.goto('/club/');
  const map = page.getByRole('region', { name: 'Map of the route' });
  await expect(map).toHaveClass(/leaflet-container/);
  await map.scrollIntoViewIfNeeded();
  const box = (await map.boundingBox())!;
  const before = await page.evaluate(() => scrollY);
  const cdp = await context.newCDPSession(page);
  const x = Math.round(box.x + box.width / 2);
  const y = Math.round(Math.min(box.y + box.height, 690) - 20);
  await cdp.send('Input.synthesizeScrollGesture', { x, y, yDistance: -200, gestureSourceType: 'touch' });
  await expect.poll(() => page.evaluate(() => scrollY)).toBeGreaterThan(before + 100);
  await expect(map.getByRole('button', { name: /^Waypoint/ })).toHaveCount(0);
  await context.close();
});
