import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { clubPage } from './guest-page.ts';

const trip = JSON.parse(readFileSync('shared/trips/petrol-day.json', 'utf8'));
const given = `<script type="application/json">${JSON.stringify({ trip })}</script>`;
const planner = (page: Page) => page.locator('homeleg-planner');
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
