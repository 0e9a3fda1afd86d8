import { expect, test } from '@playwright/test';

test('a word typed at the foot of a page leads to the points about it', async ({ page }) => {
  await page.goto('/hire/');
  await page.getByRole('contentinfo').getByRole('searchbox', { name: 'Search these pages' }).fill('kill cord');
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL('/search/?q=kill%20cord');
  await expect(page.getByRole('status').first()).toHaveText(/^\d+ places about “kill cord”\.$/);
  const first = page.getByRole('main').getByRole('listitem').first();
  await expect(first).toContainText(/kill cord/i);
  await first.getByRole('link').click();
  await expect(page).toHaveURL(/\/checklists\/[a-z-]+\/#[a-z-]+$/);
  const id = new URL(page.url()).hash;
  await expect(page.locator(id)).toBeInViewport();
  await page.goBack();
  await expect(page.getByRole('main').getByRole('searchbox')).toHaveValue('kill cord');
});

test('places are found while typing, by the start of a word, with a slip of the pen, and by words of other harbours', async ({
  page,
}) => {
  await page.goto('/search/');
  const field = page.getByRole('main').getByRole('searchbox', { name: 'Words to look for' });
  await expect(field).toBeFocused();
  const status = page.getByRole('main').getByRole('status');
  for (const asked of ['ventil', 'ventilaton', 'gasoline', 'PFD', 'savitsky']) {
    await field.fill(asked);
    await expect(status).toHaveText(new RegExp(`^(\\d+ places|One place) about “${asked}”`));
  }
});

test('nothing found is said, with all pages to choose from; markup that is typed stays text', async ({ page }) => {
  await page.goto(`/search/?q=${encodeURIComponent('<zzqqxx onload=qqzz>')}`);
  await expect(page.getByRole('main').getByRole('status')).toContainText('Nothing on these pages about “<zzqqxx');
  await expect(page.locator('main zzqqxx')).toHaveCount(0);
  await page.getByRole('main').getByRole('link', { name: 'Cold water' }).click();
  await expect(page).toHaveURL('/checklists/cold-water/');
});

test('Enter goes to the first place, by keyboard alone', async ({ page }) => {
  await page.goto('/search/?q=cold+shock');
  await expect(page.getByRole('main').getByRole('status')).toContainText('about “cold shock”');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('main').locator('.found a').first()).toBeFocused();
});

test('texts that cannot be loaded are told, and the pages still named', async ({ page }) => {
  await page.route('**/search.json', (route) => route.abort());
  await page.goto('/search/?q=oars');
  await expect(page.getByRole('main').getByRole('status')).toContainText('could not be loaded');
  await expect(page.getByRole('main').getByRole('link', { name: 'Weather, go or not' })).toBeVisible();
});

test('search engines and previews are told what a page is, and where all of them are', async ({ page, request }) => {
  const map = await (await request.get('/sitemap.xml')).text();
  const paths = [...map.matchAll(/<loc>([^<]+)<\/loc>/g)].map(([, address]) => new URL(address!).pathname);
  expect(paths).toEqual(expect.arrayContaining(['/', '/method/', '/hire/', '/checklists/overdue/']));
  expect(paths.filter((path) => /404|fuel-or/.test(path))).toEqual([]);
  expect(await (await request.get('/robots.txt')).text()).toContain('/sitemap.xml');
  const titles = new Set<string>();
  const descriptions = new Set<string>();
  for (const path of paths) {
    await page.goto(path, { waitUntil: 'commit' });
    const content = (selector: string) => page.locator(selector).getAttribute('content');
    titles.add(await page.title());
    descriptions.add((await content('meta[name="description"]'))!);
    expect(new URL((await page.locator('link[rel="canonical"]').getAttribute('href'))!).pathname).toBe(path);
    const picture = new URL((await content('meta[property="og:image"]'))!).pathname;
    expect((await request.get(picture)).headers()['content-type']).toBe('image/png');
  }
  expect(titles.size).toBe(paths.length);
  expect(descriptions.size).toBe(paths.length);
  for (const text of descriptions) expect(text.length, text).toBeGreaterThan(50);
});
