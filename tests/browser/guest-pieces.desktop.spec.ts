import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { clubPage } from './guest-page.ts';

const read = (name: string) => JSON.parse(readFileSync(`shared/trips/${name}.json`, 'utf8'));
const [petrol, electric] = [read('petrol-day'), read('electric-tender')];
const PIECES = ['fuel', 'result', 'curve', 'deck', 'load-table'] as const;
const scripts = PIECES.map((name) => `<script type="module" src="/embed/${name}.js"></script>`).join('');
const all = PIECES.map((name) => `<homeleg-${name} for="ours"></homeleg-${name}>`).join('');

/** All that a piece says, at any depth. */
function said(page: Page, name: string): Promise<string> {
  return page.locator(`homeleg-${name}`).evaluate((piece) => {
    const texts: string[] = [];
    const look = (node: Node) => {
      if (node instanceof Text) texts.push(node.data);
      if (node instanceof Element && node.shadowRoot) look(node.shadowRoot);
      for (const child of node.childNodes) look(child);
    };
    look(piece);
    return texts.join(' ').replace(/\s+/g, ' ');
  });
}

test('each piece shows the trip of the planner that `for` names, and the next one put there', async ({ page }) => {
  test.setTimeout(180_000);
  await clubPage(
    page,
    `${all}<homeleg-planner id="ours" keep="none"><script type="application/json">${JSON.stringify({ trip: petrol })}</script></homeleg-planner>`,
    { head: scripts },
  );
  await page.goto('/club/');
  const shown = (trip: string) =>
    expect
      .poll(() =>
        page.evaluate(
          () => document.querySelector('homeleg-planner')?.plan && document.querySelector('homeleg-planner')?.trip.name,
        ),
      )
      .toBe(trip);
  await shown(petrol.name);
  const told: Record<string, string> = {};
  for (const name of PIECES) {
    await page.locator(`homeleg-${name}`).scrollIntoViewIfNeeded();
    await expect.poll(async () => (await said(page, name)).length, name).toBeGreaterThan(100);
    told[name] = await said(page, name);
  }
  await page.locator('homeleg-planner').evaluate((element, trip) => void Object.assign(element, { trip }), electric);
  await shown(electric.name);
  for (const name of PIECES) await expect.poll(() => said(page, name), name).not.toBe(told[name]);
});
