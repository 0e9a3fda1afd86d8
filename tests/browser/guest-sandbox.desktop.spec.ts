import { expect, test } from '@playwright/test';
import { clubPage, overheard } from './guest-page.ts';

test('in a sandboxed frame, whose storage throws, the planner plans and says that nothing is kept', async ({
  page,
}) => {
  const { complaints } = overheard(page);
  // A frame without an origin may load modules only from a host that lets everybody.
  await page.route('/embed/**', async (route) => {
    const response = await route.fetch();
    await route.fulfill({ response, headers: { ...response.headers(), 'access-control-allow-origin': '*' } });
  });
  await clubPage(
    page,
    '<homeleg-planner keep="club"></homeleg-planner><homeleg-checklist list="weather"></homeleg-checklist>',
    {
      at: '/club/framed/',
      policy: "default-src 'self'",
      head: '<script type="module" src="/embed/checklist.js"></script>',
    },
  );
  await page.route('/club/', (route) =>
    route.fulfill({
      contentType: 'text/html',
      body: '<!doctype html><html lang="en"><iframe title="Planner" width="1000" height="700" sandbox="allow-scripts allow-forms" src="/club/framed/"></iframe></html>',
    }),
  );
  await page.goto('/club/');
  const inside = page.frameLocator('iframe');
  const planner = inside.locator('homeleg-planner');
  const frame = page.frames()[1]!;
  const blocked = await frame.evaluate(() => {
    try {
      return String(localStorage.length);
    } catch (error) {
      return (error as Error).name;
    }
  });
  expect(blocked).toBe('SecurityError');
  const place = planner.getByLabel('Place: latitude and longitude');
  for (const typed of ['46.02, -32.01', '46.03, -32.02']) {
    await place.fill(typed);
    await place.press('Enter');
  }
  await expect(planner.locator('#answer').getByRole('heading', { level: 2 }).first()).not.toHaveText('No answer yet');
  await expect
    .poll(() => planner.locator('[part="note"]').allInnerTexts())
    .toContainEqual(expect.stringContaining('does not let the page keep anything'));
  await expect(planner.getByRole('region', { name: 'Map of the route' })).toHaveClass(/leaflet-container/);
  for (const card of ['passage', 'further', 'saved']) await planner.locator(`#${card} > summary`).click();
  await expect(planner.locator('#passage').getByRole('button').first()).toBeVisible();
  await expect(planner.locator('#further').getByRole('heading').first()).toBeVisible();
  await expect(planner.locator('#saved').getByRole('button').first()).toBeVisible();
  await inside.locator('homeleg-checklist').getByRole('checkbox').first().check();
  expect(complaints).toEqual([]);
});
