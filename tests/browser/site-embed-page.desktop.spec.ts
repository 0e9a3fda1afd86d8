import { expect, test } from '@playwright/test';

test('an element is chosen, seen, heard and copied', async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.goto('/embed/');
  const live = page.locator('[data-live]');
  const markup = page.locator('[data-markup]');
  await expect(live.locator('homeleg-planner')).toContainText('No answer yet');
  await page.locator('[name="element"]').selectOption('homeleg-checklist');
  await expect(live.locator('homeleg-checklist')).toContainText('There is no list');
  const list = page.locator('[data-for="homeleg-checklist"] [data-attribute="list"]');
  await list.fill('fuel');
  await list.press('Enter');
  await page.locator('[name="lang"]').selectOption('de');
  await page.locator('[name="scheme"]').selectOption('dark');
  await expect(markup).toHaveText(
    '<script type="module" src="/embed/checklist.js"></script>\n<homeleg-checklist list="fuel" lang="de"></homeleg-checklist>',
  );
  await expect(page.locator('[data-sheet]')).toHaveText(/color-scheme: dark;/);
  const box = live.getByRole('checkbox').first();
  await box.check();
  await expect(page.locator('[data-told]')).toContainText('homeleg-checklist-change');
  await page.getByRole('button', { name: 'Copy' }).first().click();
  await expect(page.getByText('Copied.')).toBeVisible();
  expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(await markup.textContent());
});

test('a copied snippet works on a page of another site', async ({ page }) => {
  await page.goto('/embed/');
  await page.locator('[name="element"]').selectOption('homeleg-load-table');
  const snippet = page.locator('[data-markup]');
  await expect(snippet).toContainText('load-table.js');
  const body = `<!doctype html><html lang="en"><title>A yard</title><main>${await snippet.textContent()}</main></html>`;
  await page.route('/yard/', (route) => route.fulfill({ contentType: 'text/html', body }));
  await page.goto('/yard/');
  await expect(page.locator('homeleg-load-table').getByRole('table').first()).toBeVisible();
});

test('a framed page tells its height, as the page about it says', async ({ page, baseURL }) => {
  await page.goto('/embed/');
  const codes = await page.locator('#frame ~ pre').allTextContents();
  const [framed, framing] = codes.map((code) =>
    code.replaceAll(/https:\/\/(club|boats)\.example/g, baseURL!).replace('/planner/"', '/framed/"'),
  );
  const put = (path: string, type: string, body: string) =>
    page.route(path, (route) => route.fulfill({ contentType: type, body }));
  await put('/framed.js', 'text/javascript', framed!);
  await put('/framing.js', 'text/javascript', framing!);
  await put(
    '/framed/',
    'text/html',
    '<!doctype html><script type="module" src="/framed.js"></script><p>Tall</p><br><br>',
  );
  const frame = '<iframe id="planner" title="Trip planner" src="/framed/" height="10"></iframe>';
  await put('/club/', 'text/html', `<!doctype html>${frame}<script type="module" src="/framing.js"></script>`);
  await page.goto('/club/');
  const inner = page.frameLocator('#planner').locator('html');
  await inner.evaluate((html) => {
    html.style.height = '731px';
  });
  await expect(page.locator('#planner')).toHaveCSS('height', '731px');
});

test('the gallery starts each element when it comes near, as its page would', async ({ page }) => {
  await page.goto('/gallery/');
  for (const [id, tag, text] of [
    ['club', 'homeleg-planner', 'Route'],
    ['desk', 'homeleg-reserve-check', 'Weights'],
    ['dealer', 'homeleg-load-table', 'Loads'],
    ['dark', 'homeleg-suit', 'Aboard'],
    ['narrow', 'homeleg-checklist', 'Before launch'],
  ] as const) {
    const place = page.locator(`#${id} .place`);
    await place.scrollIntoViewIfNeeded();
    await expect(place.locator(tag), text).toBeVisible();
    await expect(
      place.locator(tag).getByRole('heading').or(place.locator(tag).getByRole('combobox')).first(),
    ).toBeVisible();
  }
});
