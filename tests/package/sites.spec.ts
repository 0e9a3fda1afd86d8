import { cpSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, type Page, test } from '@playwright/test';
import { serve } from '../../scripts/serve.mjs';
import { project, run, twoTrips } from './project.ts';

/** Each site: how its types are checked, and how it becomes files to serve. */
const sites = {
  plain: {
    types: (folder: string) => {
      writeFileSync(join(folder, 'src/events.ts'), listeners());
      run(folder, 'tsc');
    },
    build: (folder: string) => {
      const dist = join(folder, 'dist');
      mkdirSync(dist);
      cpSync(join(folder, 'index.html'), join(dist, 'index.html'));
      cpSync(join(folder, 'src'), join(dist, 'src'), { recursive: true });
      cpSync(join(folder, 'node_modules/homeleg'), join(dist, 'homeleg'), { recursive: true });
    },
  },
  react: { types: (folder: string) => run(folder, 'tsc'), build: bundled },
  vue: { types: (folder: string) => run(folder, 'vue-tsc', '--noEmit'), build: bundled },
  svelte: {
    types: (folder: string) => run(folder, 'svelte-check', '--fail-on-warnings', '--tsconfig', './tsconfig.json'),
    build: bundled,
  },
} as const;

/** A program that listens for every documented event of every element and wants to know what its detail is. */
function listeners(): string {
  const { modules } = JSON.parse(readFileSync('dist-package/custom-elements.json', 'utf8')) as {
    modules: { declarations: { tagName: string; events?: { name: string }[] }[] }[];
  };
  const lines = modules.flatMap(({ declarations }) =>
    declarations.flatMap(({ tagName, events = [] }) => [
      `import 'homeleg/${tagName.replace('homeleg-', '')}/define';`,
      ...events.map(
        ({ name }) =>
          `document.createElement('${tagName}').addEventListener('${name}', ({ detail }) => known<typeof detail>(detail));`,
      ),
    ]),
  );
  expect(lines.length).toBeGreaterThan(30);
  return `// Neither any nor unknown: those hold whatever is asked of them.
declare function known<T>(detail: unknown extends T ? never : T): void;
${lines.join('\n')}
`;
}

function bundled(folder: string): void {
  run(folder, 'vite', 'build', '--logLevel', 'warn');
}

for (const [name, { types, build }] of Object.entries(sites)) {
  test(`a ${name} page takes the package: its types hold, a trip is set, the answer arrives`, async ({ page }) => {
    const folder = project(name, name);
    writeFileSync(join(folder, 'src/trips.json'), JSON.stringify(twoTrips()));
    types(folder);
    build(folder);
    const site = await serve({ folder: join(folder, 'dist'), port: 0, host: '127.0.0.1' });
    try {
      await tried(page, site.address);
    } finally {
      await site.close();
    }
  });
}

/** Served under the strict policy of our own server: no inline code, nothing from elsewhere. */
async function tried(page: Page, address: string): Promise<void> {
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(String(error)));
  page.on('requestfailed', (request) => complaints.push(`${request.url()} failed`));
  // Asked for by the browser, not by the page.
  await page.route('**/favicon.ico', (route) => route.fulfill({ status: 204 }));
  await page.goto(address);
  const said = page.locator('output').first();
  const planner = page.locator('homeleg-planner');
  await expect(said).toHaveText('marginal');
  await expect(planner).toContainText('Not sure enough');
  await page.getByRole('button', { name: 'The other trip' }).click();
  await expect(said).toHaveText('no-go');
  await expect(planner).toContainText('Not like this');
  // Parts that come when they are shown, the map among them, and the curve.
  await expect(planner.locator('.leaflet-container')).toBeVisible();
  await planner.locator('[part="curve"]').scrollIntoViewIfNeeded();
  await expect(planner.locator('[part="curve"] svg').first()).toBeVisible();
  expect(complaints).toEqual([]);
}
