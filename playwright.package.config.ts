import { defineConfig, devices } from '@playwright/test';

/** `npm run test:package`: the packed package, installed by empty projects as a stranger would. */
export default defineConfig({
  testDir: 'tests/package',
  outputDir: 'test-results/package',
  globalSetup: './tests/package/pack.ts',
  workers: 2,
  retries: 0,
  // Each project installs and builds what it needs first.
  timeout: 300_000,
  expect: { timeout: 30_000 },
  forbidOnly: Boolean(process.env.CI),
  use: {
    ...devices['Desktop Chrome'],
    launchOptions: {
      executablePath: process.env.HOMELEG_BROWSER || '/usr/bin/chromium',
      args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking'],
    },
  },
});
