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
