import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { VERSION } from '../../src/components/version.ts';

const OLDER = '0.0.9';
const PAGE = `<!doctype html><html lang="en"><head><title>A club</title>
  <script type="module" src="/first/homeleg.js"></script><script type="module" src="/second/homeleg.js"></script></head>
  <body><main><h1>Our boats</h1><homeleg-planner keep="none" waters="none"></homeleg-planner>
  <homeleg-reserve-check></homeleg-reserve-check></main></body></html>`;

const marked = (version: string) => `-v${version.replaceAll('.', '-')}`;

/** The one script as this build made it, and as an older version would have been. */
function script(version: string): string {
  const text = readFileSync('dist-package/standalone/homeleg.js', 'utf8');
  return text.replaceAll(VERSION, version).replaceAll(marked(VERSION), marked(version));
}

/** Tags of ours inside the planner and the reserve check, at any depth. */
function innerTags(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const found = new Set<string>();
    const look = (root: ShadowRoot | null) => {
      for (const element of root?.querySelectorAll('*') ?? []) {
        if (element.localName.startsWith('homeleg-')) found.add(element.localName);
        look(element.shadowRoot);
      }
    };
    for (const element of document.querySelectorAll('homeleg-planner, homeleg-reserve-check')) look(element.shadowRoot);
    return [...found];
  });
}

for (const [first, second] of [
  [OLDER, VERSION],
  [VERSION, OLDER],
] as const) {
  test(`one script of version ${first}, then one of ${second} on a page: each uses only its own parts`, async ({
    page,
  }) => {
    const complaints: string[] = [];
    page.on('console', (message) => {
      if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text());
    });
    page.on('pageerror', (error) => complaints.push(String(error)));
    await page.route('http://club.test/**', (route) => {
      const { pathname } = new URL(route.request().url());
      const version = { '/first/homeleg.js': first, '/second/homeleg.js': second }[pathname];
      if (version) return route.fulfill({ contentType: 'text/javascript', body: script(version) });
      return pathname === '/'
        ? route.fulfill({ contentType: 'text/html', body: PAGE })
        : route.fulfill({ status: 204, body: '' });
    });
    await page.goto('http://club.test/');
    const planner = page.locator('homeleg-planner');
    const place = planner.getByLabel('Place: latitude and longitude');
    for (const typed of ['46.02, -32.01', '46.03, -32.02']) {
      await place.fill(typed);
      await place.press('Enter');
    }
    await expect.poll(() => page.evaluate(() => document.querySelector('homeleg-planner')?.plan?.verdict)).toBeTruthy();
    await page
      .locator('homeleg-reserve-check')
      .getByLabel(/weights/i)
      .fill('80, 75');
    await expect(page.locator('homeleg-reserve-check').getByRole('heading', { level: 2 }).first()).toBeVisible();
    const tags = await innerTags(page);
    expect(tags.length).toBeGreaterThan(8);
    expect(tags.filter((tag) => !tag.endsWith(marked(first)))).toEqual([]);
    // One line says what the page's author should mend; nothing fails.
    expect(complaints).toEqual([expect.stringMatching(/registered by version .*Load one version on a page/)]);
  });
}
