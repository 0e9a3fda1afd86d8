import { expect, test } from '@playwright/test';
import { contentPolicy } from '../../scripts/serve.mjs';

const host = `<!doctype html><html lang="en"><title>A club</title><main>
  <script type="module" src="/embed/planner.js"></script>
  <script type="module" src="/embed/reserve-check.js"></script>
  <h1>Our boats</h1><homeleg-planner keep="none"></homeleg-planner><homeleg-reserve-check></homeleg-reserve-check>
</main></html>`;

test('the elements work on a page of another site, from its own copy and under its strict policy', async ({
  page,
  baseURL,
}) => {
  const complaints: string[] = [];
  const asked: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(String(error)));
  page.on('request', (request) => asked.push(new URL(request.url()).pathname));
  await page.route('/club/', (route) =>
    route.fulfill({ contentType: 'text/html', headers: { 'Content-Security-Policy': contentPolicy }, body: host }),
  );
  await page.goto('/club/', { waitUntil: 'networkidle' });
  await expect(page.locator('homeleg-planner').getByRole('button').first()).toBeVisible();
  await expect(page.locator('homeleg-reserve-check').getByRole('textbox').first()).toBeVisible();
  expect(complaints).toEqual([]);
  expect(asked.filter((path) => !path.startsWith('/embed/') && path !== '/club/')).toEqual([]);
  expect(page.url()).toBe(`${baseURL}/club/`);
});

const lists = `<!doctype html><html lang="en"><title>A club</title><main>
  <script type="module" src="/embed/checklist.js"></script>
  <h1>Our lists</h1><homeleg-checklist list="before-launch"></homeleg-checklist>
  <homeleg-checklist id="own" list="our-slip"></homeleg-checklist><homeleg-checklist list="no-such"></homeleg-checklist>
</main></html>`;

test('a checklist on a page of another site: a shipped one, one of its own, and a wrong name', async ({ page }) => {
  await page.route('/club/', (route) =>
    route.fulfill({ contentType: 'text/html', headers: { 'Content-Security-Policy': contentPolicy }, body: lists }),
  );
  await page.goto('/club/');
  const [shipped, own, wrong] = [0, 1, 2].map((at) => page.locator('homeleg-checklist').nth(at));
  await expect(wrong!).toContainText('There is no list “no-such”. The lists are: before-launch, weather');
  const section = { title: 'Slip', items: [{ id: 'chain', text: 'Chain across the slip again' }] };
  await own!.evaluate(
    (list, checklist) => {
      Object.assign(list, { checklist });
      list.addEventListener('homeleg-checklist-change', (event) => {
        list.setAttribute('data-heard', JSON.stringify((event as CustomEvent).detail));
      });
    },
    { title: 'Our slip', sections: [section] },
  );
  await own!.getByRole('checkbox', { name: 'Chain across the slip again' }).check();
  await expect(own!).toHaveAttribute('data-heard', '{"list":"our-slip","ticked":["chain"],"of":1}');
  await shipped!.getByRole('checkbox', { name: 'Drain plugs in' }).check();
  await expect(shipped!).toContainText('Local law comes first.');
  await page.reload();
  await expect(shipped!.getByRole('checkbox', { name: 'Drain plugs in' })).toBeChecked();
  // The same ticks as on the list's own page.
  await page.goto('/checklists/before-launch/');
  await expect(page.getByRole('checkbox', { name: 'Drain plugs in' })).toBeChecked();
});
