import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';

/** What a careful host allows: its own scripts and pictures, nothing else. */
export const STRICT =
  "default-src 'none'; script-src 'self'; img-src 'self'; style-src 'self'; base-uri 'none'; form-action 'self'";

/** Serves a page of a club at /club/: `body` with the elements in it, under the policy given. */
export async function clubPage(
  page: Page,
  body: string,
  { policy = STRICT, head = '', html = 'lang="en"', at = '/club/' } = {},
): Promise<void> {
  await page.route(at, (route) =>
    route.fulfill({
      contentType: 'text/html; charset=utf-8',
      headers: { 'Content-Security-Policy': policy },
      body: `<!doctype html><html ${html}><head><title>A club</title>
        <meta name="viewport" content="width=device-width">${head}
        <script type="module" src="/embed/planner.js"></script>
        <script type="module" src="/embed/reserve-check.js"></script></head><body>${body}</body></html>`,
    }),
  );
}

/** The same script of another version, as a second plug-in of the club's site might bring it, at /older/. */
export async function olderCopy(page: Page): Promise<void> {
  await page.route('/older/**', (route) => {
    const file = new URL(route.request().url()).pathname.replace('/older/', 'dist/embed/');
    const text = readFileSync(file, 'utf8').replaceAll('0.1.0', '0.0.9').replaceAll('-v0-1-0', '-v0-0-9');
    return route.fulfill({ contentType: 'text/javascript', body: text });
  });
}

/** What the page complained of, and what it asked the network for. */
export function overheard(page: Page): { complaints: string[]; asked: string[] } {
  const heard = { complaints: [] as string[], asked: [] as string[] };
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') heard.complaints.push(message.text());
  });
  page.on('pageerror', (error) => heard.complaints.push(String(error)));
  page.on('request', (request) => heard.asked.push(request.url()));
  return heard;
}
