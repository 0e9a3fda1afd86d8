import { defineConfig, devices } from '@playwright/test';

// Fixed, so that a left-over server is noticed; another one for a second run on the same machine.
const port = Number(process.env.HOMELEG_TEST_PORT || 4397);

/** Walks through the newer pages and cards, one by one; `npm run test:long` makes them, so that `npm test` stays short. */
const LONG =
  /(company|compare|deck|faults(-[a-z]+)?|further|guest(-[a-z]+)?|hire|host-headers|how-far|languages|offline|passage-plan|route-help|measured-boat|saved-trips|share-link|site-embed|site-embed-page|translated-lists|trials|water-day|waters)\.(desktop\.|phone\.)?spec\.ts$/;
const long = process.env.HOMELEG_LONG === '1';
const others = long ? [] : [LONG];

export default defineConfig({
  testDir: 'tests/browser',
  testMatch: long ? LONG : '**/*.spec.ts',
  outputDir: 'test-results/browser',
  fullyParallel: true,
  workers: 2,
  retries: 0,
  // Generous, for machines that do other work meanwhile; nothing here waits by the clock.
  timeout: 90_000,
  expect: { timeout: 15_000 },
  forbidOnly: Boolean(process.env.CI),
  use: {
    // The site would be fetched whole for every test; offline.desktop.spec.ts lets the worker in.
    serviceWorkers: 'block',
    baseURL: `http://localhost:${port}`,
    launchOptions: {
      executablePath: process.env.HOMELEG_BROWSER || '/usr/bin/chromium',
      args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking'],
    },
  },
  projects: [
    {
      name: 'desktop',
      testIgnore: ['**/*.phone.spec.ts', ...others],
      use: { ...devices['Desktop Chrome'], viewport: { width: 1280, height: 800 } },
    },
    {
      name: 'phone',
      testIgnore: ['**/*.desktop.spec.ts', ...others],
      // What a small touch screen can change; the rest would only be said twice.
      grep: /fits its width|everybody, light|on a phone|than the phone|two taps|by touch/,
      use: {
        ...devices['Desktop Chrome'],
        viewport: { width: 390, height: 844 },
        deviceScaleFactor: 2,
        isMobile: true,
        hasTouch: true,
      },
    },
  ],
  webServer: {
    command: `"${process.execPath}" scripts/serve.mjs dist`,
    url: `http://localhost:${port}/`,
    env: { PORT: String(port) },
    reuseExistingServer: false,
  },
});
