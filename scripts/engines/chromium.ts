import { chromium } from '@playwright/test';
import { ENTER, type Engine } from './engine.ts';

const NAMES: Record<string, string> = { [ENTER]: 'Enter', ' ': 'Space' };

/** The browser of the other tests, against which the others are held. */
export async function startChromium(): Promise<Engine> {
  const browser = await chromium.launch({
    executablePath: process.env.HOMELEG_BROWSER || '/usr/bin/chromium',
    args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking'],
  });
  const page = await browser.newPage({ serviceWorkers: 'block', viewport: { width: 1200, height: 800 } });
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(String(error)));
  return {
    name: 'Chromium',
    open: async (address) => void (await page.goto(address)),
    run: async (body, given) =>
      JSON.parse(
        await page.evaluate(
          `(async (given) => JSON.stringify((await (async () => {${body}})()) ?? null))(${JSON.stringify(given ?? null)})`,
        ),
      ),
    press: async (...keys) => {
      for (const key of keys) await page.keyboard.press(NAMES[key] ?? key);
    },
    complaints: () => complaints,
    close: () => browser.close(),
  };
}
