import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { clubPage, overheard } from './guest-page.ts';

const trip = JSON.parse(readFileSync('shared/trips/petrol-day.json', 'utf8'));
const given = `<script type="application/json">${JSON.stringify({ trip })}</script>`;
const planner = (page: Page) => page.locator('homeleg-planner');
const map = (page: Page) => planner(page).getByRole('region', { name: 'Map of the route' });

/** The map fills its frame: its drawing reaches at least as far as the frame does, and the route is in sight. */
async function expectDrawn(page: Page): Promise<void> {
  await map(page).scrollIntoViewIfNeeded();
  await expect(map(page)).toHaveClass(/leaflet-container/);
  const covered = () =>
    map(page).evaluate((frame) => {
      const svg = frame.querySelector('.leaflet-overlay-pane svg, svg.leaflet-zoom-animated');
      return svg && frame.clientWidth > 200 ? svg.getBoundingClientRect().width / frame.clientWidth : 0;
    });
  await expect.poll(covered).toBeGreaterThan(0.99);
  await map(page)
    .getByRole('button', { name: /^Waypoint 1 of/ })
    .click({ trial: true });
}

for (const [place, hidden, shown] of [
  ['a place without width', 'width: 0; overflow: hidden', ''],
  ['a place one pixel wide', 'width: 1px; overflow: hidden', ''],
  ['a place twenty pixels wide', 'width: 20px; overflow: hidden', ''],
  ['a place without height', 'height: 0; overflow: hidden', ''],
  ['a folded place', 'display: none', ''],
  ['a place not painted', 'content-visibility: hidden', ''],
  ['a page shrunk to nothing', 'transform: scale(0)', ''],
] as const) {
  test(`a planner that first stands in ${place} plans there, and is drawn at its size once it has one`, async ({
    page,
  }) => {
    const { complaints } = overheard(page);
    await clubPage(page, `<main></main>`);
    await page.goto('/club/');
    await page.evaluate(
      ({ style, inside }) => {
        const main = document.querySelector('main')!;
        for (const part of style.split('; ')) {
          const [name, value] = part.split(': ');
          main.style.setProperty(name!, value!);
        }
        main.innerHTML = `<homeleg-planner keep="none">${inside}</homeleg-planner>`;
      },
      { style: hidden, inside: given },
    );
    await expect.poll(() => page.evaluate(() => document.querySelector('homeleg-planner')?.plan?.verdict)).toBe('go');
    await page.evaluate((style) => document.querySelector('main')!.setAttribute('data-shown', style), shown);
    await page.evaluate(() => {
      const { style } = document.querySelector('main')!;
      for (const name of [...style]) style.removeProperty(name);
    });
    await expectDrawn(page);
    const curve = planner(page).locator('[part="curve"]');
    await curve.scrollIntoViewIfNeeded();
    await expect
      .poll(
        async () =>
          ((await curve.locator('svg').first().boundingBox())?.width ?? 0) / (await curve.boundingBox())!.width,
      )
      .toBeGreaterThan(0.8);
    expect(complaints).toEqual([]);
  });
}

test('in a page that runs from right to left, figures and places are still read as they are meant', async ({
  page,
}) => {
  await clubPage(
    page,
    `<homeleg-planner keep="none">${given}<p slot="intro" id="own">Own words, of the page</p></homeleg-planner>`,
    { html: 'lang="en" dir="rtl"' },
  );
  await page.goto('/club/');
  await expect.poll(() => page.evaluate(() => document.querySelector('homeleg-planner')?.plan?.verdict)).toBe('go');
  await expect(page.locator('#own')).toHaveCSS('direction', 'rtl');
  const answer = planner(page).locator('#answer');
  await expect(answer.getByRole('heading', { level: 2 }).first()).toBeVisible();
  /** From where to where each run of figures stands, in the order it is written. */
  const backwards = () =>
    page.evaluate(() => {
      const found: string[] = [];
      const look = (root: Node) => {
        if (root instanceof Text) {
          const text = root.data;
          for (const { index } of text.matchAll(/[-−+]?\d[\d.,]* ?(?:to|–|,) ?[-−+]?\d[\d.,]*/g)) {
            const run = /[-−+]?\d[\d.,]* ?(?:to|–|,) ?[-−+]?\d[\d.,]*/.exec(text.slice(index))![0];
            const at = (offset: number) => {
              const range = document.createRange();
              range.setStart(root, offset);
              range.setEnd(root, offset + 1);
              return range.getBoundingClientRect();
            };
            const [first, last] = [at(index), at(index + run.length - 1)];
            if (first.width > 0 && first.top === last.top && first.left > last.left) found.push(run);
          }
        }
        for (const child of root.childNodes) look(child);
        if (root instanceof Element && root.shadowRoot) look(root.shadowRoot);
      };
      look(document.body);
      return found;
    });
  expect(await backwards()).toEqual([]);
});
