import { readdirSync } from 'node:fs';
import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';

const checklists = readdirSync('shared/checklists')
  .filter((file) => file.endsWith('.json'))
  .map((file) => `/checklists/${file.replace('.json', '')}/`);
const pages = [
  '/',
  '/engines/',
  '/suit/',
  '/trials/',
  '/hire/',
  '/waters/',
  '/method/',
  '/search/',
  '/embed/',
  '/gallery/',
  '/changes/',
  '/checklists/',
  ...checklists,
  '/de/',
  '/de/hire/',
  '/de/checklists/',
];

/** Everything a browser complains about, and every address asked for, from now on. */
function listen(page: Page): { complaints: string[]; asked: string[] } {
  const complaints: string[] = [];
  const asked: string[] = [];
  page.on('console', (message) => {
    // The runner's own word, for it keeps the worker out of these tests.
    if (message.text().startsWith('Service Worker registration blocked')) return;
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(String(error)));
  page.on('requestfailed', (request) => complaints.push(`${request.url()} failed`));
  page.on('request', (request) => asked.push(request.url()));
  return { complaints, asked };
}

for (const path of pages) {
  test.describe(path, () => {
    test('loads without complaint and asks nobody else', async ({ page, baseURL }) => {
      const { complaints, asked } = listen(page);
      const answer = await page.goto(path, { waitUntil: 'networkidle' });
      expect(answer?.status()).toBe(200);
      expect(complaints).toEqual([]);
      expect(asked.length).toBeGreaterThan(1);
      expect(asked.filter((url) => new URL(url).origin !== baseURL)).toEqual([]);
    });

    for (const colorScheme of ['light', 'dark'] as const) {
      test(`can be read and used by everybody, ${colorScheme}`, async ({ page }) => {
        await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
        await page.goto(path, { waitUntil: 'networkidle' });
        // The whole page at once: a bar that stays in view covers different things at every height of scrolling.
        const height = await page.evaluate(() => document.documentElement.scrollHeight);
        await page.setViewportSize({ width: page.viewportSize()!.width, height });
        const { violations, passes } = await new AxeBuilder({ page })
          .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
          .analyze();
        expect(passes.map((rule) => rule.id)).toContain('color-contrast');
        const found = violations.flatMap((rule) =>
          rule.nodes.map((node) => `${rule.id}: ${node.target} ${node.failureSummary}`),
        );
        expect(found).toEqual([]);
      });
    }

    test('gives the cautions, and one main heading', async ({ page }) => {
      await page.goto(path);
      const foot = page.getByRole('contentinfo');
      const said = path.startsWith('/de/')
        ? ['nicht zum Navigieren', 'Plakette', 'Regeln vor Ort', 'Schein', 'Es gilt der englische Wortlaut']
        : ['not for navigation', 'plate', 'local rules', 'licensed'];
      for (const words of said) await expect(foot).toContainText(words);
      await expect(page.getByRole('heading', { level: 1 })).toHaveCount(1);
    });

    test('fits its width, down to 320 px and with text twice as large', async ({ page }) => {
      await page.goto(path, { waitUntil: 'networkidle' });
      const spare = () =>
        page.evaluate(() => document.documentElement.clientWidth - document.documentElement.scrollWidth);
      expect(await spare()).toBe(0);
      await page.setViewportSize({ width: 320, height: 640 });
      expect(await spare()).toBe(0);
      await page.setViewportSize({ width: 640, height: 800 });
      await page.evaluate(() => {
        document.documentElement.style.fontSize = '200%';
      });
      expect(await spare()).toBe(0);
    });
  });
}

test('the skip link is the first stop and leads past the navigation', async ({ page }) => {
  await page.goto('/checklists/');
  await page.keyboard.press('Tab');
  const skip = page.getByRole('link', { name: 'Skip to the content' });
  await expect(skip).toBeFocused();
  await expect(skip).toBeInViewport();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('main')).toBeFocused();
  await page.keyboard.press('Tab');
  await expect(page.getByRole('main').getByRole('link').first()).toBeFocused();
});

test('every link within the site leads somewhere', async ({ page, request }) => {
  const seen = new Set<string>();
  for (const path of pages) {
    await page.goto(path);
    const links = await page
      .locator('a[href]')
      .evaluateAll((all) => all.map((link) => (link as HTMLAnchorElement).href));
    for (const href of links) {
      const { hash, origin, pathname } = new URL(href);
      expect(origin, href).toBe(new URL(page.url()).origin);
      if (hash && pathname === new URL(page.url()).pathname) {
        await expect(page.locator(`[id="${hash.slice(1)}"]`), href).toHaveCount(1);
      }
      seen.add(pathname);
    }
  }
  for (const path of seen) expect((await request.get(path)).status(), path).toBe(200);
});

test('a wrong address says so, with a way back', async ({ page }) => {
  const answer = await page.goto('/no/such/page');
  expect(answer?.status()).toBe(404);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('No page at this address');
  await page.getByRole('link', { name: 'Back to the planner' }).click();
  await expect(page).toHaveURL('/');
});
