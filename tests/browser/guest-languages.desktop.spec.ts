/** The pages for other sites and the elements on them, in the other languages, light and dark, and on right-to-left pages. */
import { readFileSync } from 'node:fs';
import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { clubPage } from './guest-page.ts';

const trip = JSON.parse(readFileSync('shared/trips/petrol-day.json', 'utf8'));
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** What axe finds in light and in dark, over the whole height of the page at once. */
async function found(
  page: Page,
  apart: readonly string[] = [],
  schemes: readonly ('light' | 'dark')[] = ['light', 'dark'],
): Promise<string[]> {
  const all: string[] = [];
  for (const colorScheme of schemes) {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    const height = await page.evaluate(() => document.documentElement.scrollHeight);
    await page.setViewportSize({ width: page.viewportSize()!.width, height });
    const axe = new AxeBuilder({ page }).withTags(TAGS);
    for (const one of apart) axe.exclude(one);
    const { violations, passes } = await axe.analyze();
    expect(passes.map((rule) => rule.id)).toContain('color-contrast');
    all.push(...violations.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${colorScheme} ${id}: ${target}`)));
  }
  return all;
}

for (const lang of ['de', 'fr', 'es']) {
  for (const path of ['embed', 'gallery', 'waters']) {
    test(`/${lang}/${path}/ can be read and used by everybody, in light and in dark`, async ({ page }) => {
      test.setTimeout(180_000);
      await page.goto(`/${lang}/${path}/`);
      await expect.poll(() => page.evaluate(() => document.querySelectorAll('main :not(:defined)').length)).toBe(0);
      await expect(page.locator('html')).toHaveAttribute('lang', lang);
      // The reference is in English and looked at there; framed pages are looked at by themselves.
      expect(await found(page, ['.reference', 'iframe'])).toEqual([]);
    });
  }
}

for (const dir of ['ltr', 'rtl']) {
  test(`a French planner and reserve check on a page that runs ${dir} can be used by everybody`, async ({ page }) => {
    test.setTimeout(180_000);
    const given = `<script type="application/json">${JSON.stringify({ trip })}</script>`;
    await clubPage(
      page,
      `<main><h1>Le club</h1><homeleg-planner keep="none">${given}</homeleg-planner>
       <homeleg-reserve-check></homeleg-reserve-check></main>`,
      { html: `lang="fr" dir="${dir}"`, head: '<meta name="color-scheme" content="light dark">' },
    );
    await page.goto('/club/');
    await page
      .locator('homeleg-reserve-check')
      .getByLabel(/^Poids/)
      .fill('80, 75');
    await expect.poll(() => page.evaluate(() => document.querySelector('homeleg-planner')?.plan?.verdict)).toBe('go');
    await page.waitForLoadState('networkidle');
    // In dark axe takes the ground of a page without a sheet for white; the gallery's pages are looked at in both.
    expect(await found(page, [], ['light'])).toEqual([]);
    const over = () => page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
    expect(await over()).toBe(0);
  });
}
