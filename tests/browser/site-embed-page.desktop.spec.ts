import { readFileSync } from 'node:fs';
import AxeBuilder from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import { overheard } from './guest-page.ts';

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

test('a framed page tells its height, as the page about it says', async ({ page }) => {
  await page.goto('/embed/');
  const [framed, framing] = await page.locator('#frame ~ pre').allTextContents();
  const put = (path: string, type: string, body: string) =>
    page.route(path, (route) => route.fulfill({ contentType: type, body }));
  await put('/framed.js', 'text/javascript', framed!);
  await put('/framing.js', 'text/javascript', framing!);
  await put(
    '/framed/',
    'text/html',
    '<!doctype html><script type="module" src="/framed.js"></script><p>Tall</p><br><br>',
  );
  const frame = '<iframe title="Trip planner" src="/framed/" height="10"></iframe><iframe title="Other"></iframe>';
  await put('/club/', 'text/html', `<!doctype html>${frame}<script type="module" src="/framing.js"></script>`);
  await page.goto('/club/');
  const inner = page.frameLocator('[title="Trip planner"]').locator('html');
  await inner.evaluate((html) => {
    html.style.height = '731px';
  });
  await expect(page.getByTitle('Trip planner')).toHaveCSS('height', '731px');
  await expect(page.getByTitle('Other')).not.toHaveCSS('height', '731px');
});

test('the gallery starts each element when it comes near, as its page would', async ({ page }) => {
  await page.goto('/gallery/');
  for (const [id, tag, text] of [
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

for (const { path, width } of [
  { path: '/gallery/', width: 1280 },
  { path: '/gallery/', width: 320 },
  { path: '/de/gallery/', width: 390 },
]) {
  test(`${path} frames whole pages of a club and a hire desk, each as high as it needs, ${width} px`, async ({
    page,
  }) => {
    const { complaints } = overheard(page);
    await page.setViewportSize({ width, height: 800 });
    await page.route('/club-trip.json', (route) =>
      route.fulfill({ json: JSON.parse(readFileSync('shared/trips/petrol-day.json', 'utf8')) }),
    );
    await page.goto(path);
    for (const [id, tag] of [
      ['club', 'homeleg-planner'],
      ['desk', 'homeleg-reserve-check'],
    ] as const) {
      await page.locator(`#${id} .framed`).scrollIntoViewIfNeeded();
      const inside = page.frameLocator(`#${id} iframe`);
      await expect(inside.locator(tag).getByRole('combobox').first()).toBeVisible();
      /** How much of the page inside would have to be scrolled, down and sideways. */
      const hidden = () =>
        inside
          .locator('html')
          .evaluate((html) => [html.scrollHeight - html.clientHeight, html.scrollWidth - html.clientWidth]);
      await expect.poll(hidden).toEqual([0, 0]);
      // Nor is it much too high: below the last line is only the page's own margin.
      const spare = () =>
        inside
          .locator('.invented')
          .evaluate((last) => last.ownerDocument.documentElement.clientHeight - last.getBoundingClientRect().bottom);
      await expect.poll(spare).toBeLessThan(60);
    }
    // The planner grows while it is used, and its frame with it.
    const planner = page.frameLocator('#club iframe');
    const before = (await page.locator('#club iframe').boundingBox())!.height;
    await planner.locator('homeleg-planner').evaluate(async (element) => {
      const asked = await fetch('/club-trip.json');
      return (element as HTMLElementTagNameMap['homeleg-planner']).loadTrip(await asked.text());
    });
    await expect
      .poll(async () => Math.abs((await page.locator('#club iframe').boundingBox())!.height - before))
      .toBeGreaterThan(50);
    await expect.poll(() => planner.locator('html').evaluate((html) => html.scrollHeight - html.clientHeight)).toBe(0);
    const rule = await planner
      .locator('homeleg-planner')
      .evaluate((element) => (element as HTMLElementTagNameMap['homeleg-planner']).plan?.reserveRule);
    expect(rule).toEqual({ kind: 'share', share: 0.5 });
    // The runner's own word, for it keeps the worker out of these tests.
    expect(complaints.filter((text) => !text.startsWith('Service Worker registration blocked'))).toEqual([]);
  });
}

test('the framed hire desk books once there is an answer, and its page opens alone', async ({ page }) => {
  await page.goto('/gallery/');
  await page.locator('#desk .framed').scrollIntoViewIfNeeded();
  const desk = page.frameLocator('#desk iframe');
  const weights = desk.getByLabel(/weights/i);
  await expect(weights).toBeVisible();
  await desk.getByRole('button', { name: 'Book this boat' }).press('Enter');
  await expect(desk.getByRole('status').last()).toHaveText('');
  await expect(weights).toBeFocused();
  await weights.fill('80, 75');
  await expect(desk.getByRole('heading', { level: 2 }).first()).not.toHaveText('No answer yet');
  await desk.getByRole('button', { name: 'Book this boat' }).press('Enter');
  await expect(desk.locator('form > [role="status"]')).toContainText(
    'nothing was sent. Your own server would now get: trip={',
  );
  await page.getByRole('link', { name: 'Boats for hire: the page alone' }).press('Enter');
  await expect(page).toHaveURL('/guests/desk.html');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Boats for hire');
});

for (const colorScheme of ['light', 'dark'] as const) {
  for (const path of [
    '/guests/club.html',
    '/guests/desk.html',
    '/de/guests/desk.html',
    '/fr/guests/desk.html',
    '/es/guests/desk.html',
  ]) {
    test(`${path} can be read and used by everybody, ${colorScheme}`, async ({ page }) => {
      await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
      await page.goto(path, { waitUntil: 'networkidle' });
      const { violations, passes } = await new AxeBuilder({ page }).analyze();
      expect(passes.map((rule) => rule.id)).toContain('color-contrast');
      expect(violations.flatMap((rule) => rule.nodes.map((node) => `${rule.id}: ${node.target}`))).toEqual([]);
    });
  }
}
