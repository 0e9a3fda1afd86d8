/** The place on the page is not there yet when the planner is: too small to show anything, then grown. */
import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { clubPage, overheard } from './guest-page.ts';

const trip = JSON.parse(readFileSync('shared/trips/petrol-day.json', 'utf8'));
const given = `<script type="application/json">${JSON.stringify({ trip })}</script>`;
const map = (page: Page) => page.locator('homeleg-planner').getByRole('region', { name: 'Map of the route' });

const PLACES: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  'one pixel wide': { width: '1px', overflow: 'hidden' },
  'of no height': { height: '0', overflow: 'hidden' },
  'of no width and no height': { width: '0', height: '0', overflow: 'hidden' },
  'not displayed': { display: 'none' },
  'folded to nothing by a scale': { transform: 'scale(0)', height: '0', overflow: 'hidden' },
};

/** How the map fills its place: its drawing against its frame, and waypoints that lie outside of it. */
function filled(page: Page) {
  return map(page).evaluate((frame) => {
    const box = frame.getBoundingClientRect();
    const drawing = frame.querySelector('.leaflet-overlay-pane svg')!.getBoundingClientRect();
    const pins = [...frame.querySelectorAll('[aria-label^="Waypoint"]')].map((pin) => pin.getBoundingClientRect());
    const outside = pins.filter(
      ({ x, y, width, height }) =>
        x + width / 2 < box.left ||
        x + width / 2 > box.right ||
        y + height / 2 < box.top ||
        y + height / 2 > box.bottom,
    );
    return {
      covered: drawing.width >= box.width - 1 && drawing.height >= box.height - 1,
      pins: pins.length,
      outside: outside.length,
      // A route drawn for a map one pixel wide lies all on one spot.
      spread: Math.max(...pins.map(({ x }) => x)) - Math.min(...pins.map(({ x }) => x)) > box.width / 8,
    };
  });
}

for (const [name, styles] of Object.entries(PLACES)) {
  test(`in a place that is first ${name} and then grows, the planner gets the right size everywhere`, async ({
    page,
  }) => {
    const { complaints } = overheard(page);
    await clubPage(page, `<section><homeleg-planner keep="none">${given}</homeleg-planner></section>`);
    await page.addInitScript((small) => {
      document.addEventListener('DOMContentLoaded', () => {
        const place = document.querySelector<HTMLElement>('body > section')!;
        for (const [key, value] of Object.entries(small)) place.style.setProperty(key, value);
      });
    }, styles);
    await page.goto('/club/');
    await page.evaluate(async () => {
      await customElements.whenDefined('homeleg-planner');
      await document.querySelector('homeleg-planner')!.updateComplete;
    });
    await expect.poll(() => page.evaluate(() => document.querySelector('homeleg-planner')!.plan?.verdict)).toBe('go');
    await page.waitForLoadState('networkidle');
    await page.evaluate(() => document.querySelector('body > section')!.removeAttribute('style'));
    await map(page).evaluate((frame) => frame.scrollIntoView({ block: 'center' }));
    await expect(map(page)).toHaveClass(/leaflet-container/);
    await expect.poll(() => filled(page)).toMatchObject({ covered: true, outside: 0, spread: true });
    expect((await filled(page)).pins).toBeGreaterThan(1);
    // Nothing else kept the size of the small place: the planner is as wide as its place, the curve as its card.
    const over = () =>
      page.evaluate(() => document.scrollingElement!.scrollWidth - document.scrollingElement!.clientWidth);
    expect(await over()).toBe(0);
    const planner = page.locator('homeleg-planner');
    const width = (await page.locator('body > section').boundingBox())!.width;
    expect((await planner.boundingBox())!.width).toBeCloseTo(width, 0);
    for (const part of ['bar', 'curve']) {
      const card = planner.locator(`[part~="${part}"]`).first();
      await card.scrollIntoViewIfNeeded();
      await expect(card.locator('svg').first()).toBeVisible();
      const shares = () =>
        card.evaluate((element) => {
          const deep = (root: ParentNode): Element[] =>
            [...root.querySelectorAll('*')].flatMap((each) => [
              each,
              ...(each.shadowRoot ? deep(each.shadowRoot) : []),
            ]);
          const drawings = [element, ...deep(element.shadowRoot ?? element)].filter(
            ({ localName }) => localName === 'svg',
          );
          const widest = Math.max(...drawings.map((each) => each.getBoundingClientRect().width));
          return widest / element.getBoundingClientRect().width;
        });
      await expect.poll(shares, part).toBeGreaterThan(0.6);
      expect(await shares(), part).toBeLessThanOrEqual(1.01);
    }
    expect(complaints).toEqual([]);
  });
}
