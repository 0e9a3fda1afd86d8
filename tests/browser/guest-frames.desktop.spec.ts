import { expect, test } from '@playwright/test';
import { clubPage, overheard } from './guest-page.ts';

const FRAMED = '<homeleg-planner keep="none" tell-size></homeleg-planner>';
/** What the documentation gives a host to paste. */
const HOST = `addEventListener('message', ({ data, source }) => {
  for (const frame of document.querySelectorAll('iframe')) {
    if (frame.contentWindow === source && data?.type === 'homeleg-size') frame.style.height = data.height + 'px';
  }
});`;

test('in an iframe of the same site the planner works and the frame grows with it', async ({ page }) => {
  const { complaints } = overheard(page);
  await clubPage(page, FRAMED, { at: '/club/framed/', policy: "default-src 'self'" });
  await page.route('/club/host.js', (route) => route.fulfill({ contentType: 'text/javascript', body: HOST }));
  await page.route('/club/', (route) =>
    route.fulfill({
      contentType: 'text/html',
      body: '<!doctype html><html lang="en"><script src="/club/host.js"></script><iframe title="Planner" width="900" src="/club/framed/"></iframe></html>',
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
