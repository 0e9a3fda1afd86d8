/** What the description says can be styled from outside: each part is there, takes a page's style, and none is left unsaid. */
import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import type { CustomElement } from 'custom-elements-manifest/schema';
import { elementsManifest } from '../../scripts/package/manifest.ts';
import { clubPage } from './guest-page.ts';

const elements = elementsManifest().modules.flatMap(
  ({ declarations = [] }) => declarations as unknown as (CustomElement & { tagName: string })[],
);
const trip = JSON.parse(readFileSync('shared/trips/petrol-day.json', 'utf8'));
/** Elements that show nothing of theirs before they are given a trip. */
const GIVEN = /planner|fuel|result|curve|deck|checklist/;
/** A wrong attribute, so that the part for the author of the page shows. */
const WRONG: Readonly<Record<string, string>> = {
  'homeleg-hire-desk': 'view="attic"',
  'homeleg-suit': 'units="miles"',
  'homeleg-trials': 'units="miles"',
};
/** The second planner of the test cannot load its waters, which is one of the notes. */
const EXTRA: Readonly<Record<string, string>> = {
  'homeleg-planner': 'waters="/club/none.geojson"',
  'homeleg-checklist': 'list="before-launch"',
};

async function shown(page: Page, tag: string, parts: readonly string[]): Promise<void> {
  await page.route('/club/parts.css', (route) =>
    route.fulfill({
      contentType: 'text/css',
      body: parts.map((part) => `${tag}::part(${part}) { outline: 3px solid rgb(1, 2, 3); }`).join('\n'),
    }),
  );
  await page.route('/club/none.geojson', (route) => route.fulfill({ status: 404, body: 'Not found' }));
  await clubPage(page, `<${tag} keep="none" ${WRONG[tag] ?? 'theme="pink"'} ${EXTRA[tag] ?? ''}></${tag}>`, {
    head: `<link rel="stylesheet" href="/club/parts.css">
      <script type="module" src="/embed/${tag.replace('homeleg-', '')}.js"></script>`,
    policy: "default-src 'none'; script-src 'self'; style-src 'self'; connect-src 'self'; worker-src 'self'",
  });
  await page.goto('/club/');
  await page.evaluate((name) => customElements.whenDefined(name), tag);
  const element = page.locator(tag);
  await expect.poll(() => element.evaluate((each) => each.shadowRoot?.childElementCount ?? 0)).toBeGreaterThan(0);
  if (GIVEN.test(tag)) {
    await element.evaluate((each, given) => {
      if (each.localName === 'homeleg-planner') void (each as HTMLElementTagNameMap['homeleg-planner']).loadTrip(given);
      else Object.assign(each, { trip: given });
    }, trip);
  }
  if (tag === 'homeleg-reserve-check') {
    await element.getByLabel(/weights/i).fill('80, 75');
    // Without a set route there is a note on what nobody has checked.
    await element.getByRole('combobox').nth(1).selectOption('');
  }
  await element.evaluate((each) => {
    for (const details of each.shadowRoot!.querySelectorAll('details')) details.open = true;
  });
}

for (const { tagName: tag, cssParts = [] } of elements) {
  const parts = cssParts.map(({ name }) => name);
  test(`${tag}: every part of it takes a style of the page, and none is without a word on it`, async ({ page }) => {
    // The strip of the planner stands at the foot of small screens only.
    await page.setViewportSize({ width: 390, height: 844 });
    await shown(page, tag, parts);
    const element = page.locator(tag);
    /** Parts that are seen, and whether the page's style reached each piece of them. */
    const seen = () =>
      element.evaluate((each) => {
        const found: Record<string, boolean> = {};
        const pieces = [...each.shadowRoot!.querySelectorAll('[part]')].map((piece) => ({
          piece,
          names: [...piece.part],
        }));
        // What an inner element hands on of its own.
        for (const inner of each.shadowRoot!.querySelectorAll('[exportparts]')) {
          const names = inner.getAttribute('exportparts')!.split(/,\s*/);
          for (const piece of inner.shadowRoot!.querySelectorAll('[part]')) {
            pieces.push({ piece, names: names.filter((name) => piece.part.contains(name)) });
          }
        }
        for (const { piece, names } of pieces) {
          if (!piece.checkVisibility()) continue;
          const { outlineColor, outlineStyle, outlineWidth } = getComputedStyle(piece);
          const reached = `${outlineWidth} ${outlineStyle} ${outlineColor}` === '3px solid rgb(1, 2, 3)';
          for (const name of names) found[name] = (found[name] ?? true) && reached;
        }
        return found;
      });
    await expect.poll(seen, { timeout: 30_000 }).toEqual(Object.fromEntries(parts.map((name) => [name, true])));
    /** Text, fields and pieces in the element's own tree that no part holds. */
    const bare = await element.evaluate((each) => {
      const found: string[] = [];
      for (const piece of each.shadowRoot!.querySelectorAll('*')) {
        const said = [...piece.childNodes].some((node) => node instanceof Text && node.data.trim() !== '');
        const own = said || piece.localName.includes('-') || piece.matches('input, select, button, svg');
        if (!own || piece.closest('[part], slot') || !piece.checkVisibility()) continue;
        if (piece.getBoundingClientRect().width > 1) found.push(`${piece.localName}.${piece.className}`);
      }
      return found;
    });
    expect(bare).toEqual([]);
  });
}
