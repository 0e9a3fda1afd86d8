import { expect, type Page, test } from '@playwright/test';
import { clubPage, olderCopy, overheard, STRICT } from './guest-page.ts';

const planners = (page: Page) => page.locator('homeleg-planner');
const map = (page: Page, at = 0) => planners(page).nth(at).getByRole('region', { name: 'Map of the route' });
/** Every part is opened and comes into sight once, so that all of them are loaded. */
async function openAll(page: Page): Promise<void> {
  await planners(page)
    .first()
    .evaluate(async (planner) => {
      await (planner as HTMLElementTagNameMap['homeleg-planner']).updateComplete;
      for (const card of planner.shadowRoot!.querySelectorAll('details')) card.open = true;
    });
  for (const card of await planners(page).locator('[data-part]').all()) await card.scrollIntoViewIfNeeded();
  // All that was asked for has come to life.
  const asleep = () =>
    planners(page)
      .first()
      .evaluate((planner) => planner.shadowRoot!.querySelectorAll(':not(:defined)').length);
  await expect.poll(asleep).toBe(0);
}

test('a strict host: all of the planner from its own folder, and no request that it did not configure', async ({
  page,
  baseURL,
}) => {
  const { complaints, asked } = overheard(page);
  await clubPage(page, '<homeleg-planner waters="none" keep="none"></homeleg-planner>');
  await page.goto('/club/');
  await openAll(page);
  await expect(map(page)).toHaveClass(/leaflet-container/);
  await page.waitForLoadState('networkidle');
  const elsewhere = asked.filter((url) => !url.startsWith(`${baseURL}/embed/`) && url !== `${baseURL}/club/`);
  expect(elsewhere).toEqual([]);
  expect(complaints).toEqual([]);
  expect(await page.evaluate(() => document.cookie)).toBe('');
});

test('where Trusted Types keep the map from loading, the table plans and the map’s place says why', async ({
  page,
}) => {
  const { complaints } = overheard(page);
  await clubPage(page, '<homeleg-planner keep="none"></homeleg-planner>', {
    policy: `${STRICT}; require-trusted-types-for 'script'`,
  });
  await page.goto('/club/');
  await expect(planners(page)).toContainText('security policy of this page does not let the map load');
  const place = planners(page).getByLabel('Place: latitude and longitude');
  for (const typed of ['46.02, -32.01', '46.03, -32.02']) {
    await place.fill(typed);
    await place.press('Enter');
  }
  await expect
    .poll(() => page.evaluate(() => document.querySelector('homeleg-planner')!.plan?.distance ?? 0))
    .toBeGreaterThan(100);
  // Said once by the map, and by the browser's own report of what the policy refused.
  expect(complaints.filter((text) => !/Trusted|The map cannot be shown/.test(text))).toEqual([]);
});

test('several planners and two versions of the code share a page, each with its own trip', async ({ page }) => {
  const { complaints } = overheard(page);
  await olderCopy(page);
  const older = ['planner', 'reserve-check', 'checklist']
    .map((name) => `<script type="module" src="/older/${name}.js"></script>`)
    .join('');
  await clubPage(
    page,
    `<homeleg-planner keep="none"></homeleg-planner><homeleg-planner keep="none" waters="none"></homeleg-planner>
     <homeleg-reserve-check></homeleg-reserve-check><homeleg-checklist list="weather"></homeleg-checklist>`,
    { head: older },
  );
  await page.goto('/club/');
  await expect(planners(page)).toHaveCount(2);
  for (const at of [0, 1]) {
    await map(page, at).scrollIntoViewIfNeeded();
    await expect(map(page, at)).toHaveClass(/leaflet-container/);
  }
  await planners(page)
    .nth(1)
    .evaluate((planner) => {
      const { trip } = planner as HTMLElementTagNameMap['homeleg-planner'];
      Object.assign(planner, { trip: { ...trip, name: 'Second' } });
    });
  const names = () => page.evaluate(() => [...document.querySelectorAll('homeleg-planner')].map((p) => p.trip.name));
  expect(await names()).toEqual([expect.not.stringContaining('Second'), 'Second']);
  await page
    .locator('homeleg-reserve-check')
    .getByLabel(/weights/i)
    .fill('80, 75');
  await expect(page.locator('homeleg-reserve-check').getByRole('heading', { level: 2 }).first()).toBeVisible();
  await expect(page.locator('homeleg-checklist').getByRole('checkbox').first()).toBeVisible();
  // One line says what the page's author should mend; nothing fails.
  expect(complaints).toEqual([expect.stringMatching(/version 0\.\d\.\d.*Load one version on a page/)]);
});

test('the page keeps its own globals, prototypes and listeners', async ({ page }) => {
  await clubPage(page, '<main></main>');
  await page.addInitScript(() => {
    const owners = [
      Object,
      Array,
      String,
      Number,
      Date,
      Promise,
      Function,
      Map,
      Set,
      Node,
      Element,
      HTMLElement,
      Event,
    ];
    const shape = () =>
      owners.flatMap((owner) =>
        Object.entries(Object.getOwnPropertyDescriptors(owner.prototype)).map(([key, now]) => ({ key, now, owner })),
      );
    Object.assign(globalThis, { clubs: { globals: Object.getOwnPropertyNames(globalThis), shapes: shape(), shape } });
  });
  await page.goto('/club/');
  await page.evaluate(async () => {
    document.querySelector('main')!.innerHTML = '<homeleg-planner keep="none"></homeleg-planner>';
    await customElements.whenDefined('homeleg-planner');
  });
  await openAll(page);
  const changed = await page.evaluate(() => {
    type Shape = { key: string; now: PropertyDescriptor; owner: { name: string } };
    const { globals, shapes, shape } = (
      globalThis as unknown as { clubs: { globals: string[]; shapes: Shape[]; shape: () => Shape[] } }
    ).clubs;
    const name = ({ owner, key }: Shape) => `${owner.name}.${key}`;
    const before = new Map(shapes.map((each) => [name(each), each.now]));
    const now = shape();
    const same = (a?: PropertyDescriptor, b?: PropertyDescriptor) =>
      a?.value === b?.value && a?.get === b?.get && a?.set === b?.set;
    return {
      globals: Object.getOwnPropertyNames(globalThis).filter((key) => key !== 'clubs' && !globals.includes(key)),
      prototypes:
        now.length === shapes.length
          ? now.filter((each) => !same(before.get(name(each)), each.now)).map(name)
          : ['another number of properties'],
      sheets: document.adoptedStyleSheets.length + document.head.querySelectorAll('style').length,
      body: document.body.getAttributeNames(),
    };
  });
  // By these lit tells a second copy of itself; they are lit's, and all there is.
  expect(changed.globals.filter((name) => !/^(lit|reactiveElement)/.test(name))).toEqual([]);
  expect(changed.prototypes).toEqual([]);
  expect(changed).toMatchObject({ sheets: 0, body: [] });
});

test('in a right-to-left page nothing is wider than the page', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 800 });
  const body = '<homeleg-planner keep="none"></homeleg-planner><homeleg-reserve-check></homeleg-reserve-check>';
  await clubPage(page, body, { html: 'lang="en" dir="rtl"' });
  await page.goto('/club/');
  await openAll(page);
  await expect(map(page)).toHaveClass(/leaflet-container/);
  const over = await page.evaluate(
    () => document.scrollingElement!.scrollWidth - document.scrollingElement!.clientWidth,
  );
  expect(over).toBeLessThanOrEqual(0);
});

test('in a closed dialog nothing of the map is loaded; opened, the map has the size of its place', async ({ page }) => {
  const { complaints, asked } = overheard(page);
  await clubPage(page, '<dialog><homeleg-planner keep="none"></homeleg-planner></dialog>');
  await page.goto('/club/');
  await page.evaluate(() => customElements.whenDefined('homeleg-planner'));
  await page.waitForLoadState('networkidle');
  expect(asked.filter((url) => /leaflet/.test(url))).toEqual([]);
  await page.evaluate(() => document.querySelector('dialog')!.showModal());
  await expect(map(page)).toHaveClass(/leaflet-container/);
  await map(page).focus();
  await map(page).press('Enter');
  await expect(map(page).getByRole('button', { name: /^Waypoint 1/ })).toBeVisible();
  // Enter sets it in the middle of the map as it is now.
  const [pin, frame] = [
    await map(page)
      .getByRole('button', { name: /^Waypoint 1/ })
      .boundingBox(),
    await map(page).boundingBox(),
  ];
  expect(Math.abs(pin!.x + pin!.width / 2 - (frame!.x + frame!.width / 2))).toBeLessThan(4);
  expect(complaints).toEqual([]);
});

test('a planner under a tab that was hidden is drawn at its size once the tab is shown', async ({ page }) => {
  await clubPage(page, '<section hidden><homeleg-planner keep="none"></homeleg-planner></section>');
  await page.goto('/club/');
  await page.evaluate(() => customElements.whenDefined('homeleg-planner'));
  const show = (hidden: boolean) =>
    page.evaluate((to) => Object.assign(document.querySelector('section')!, { hidden: to }), hidden);
  await show(false);
  await expect(map(page)).toHaveClass(/leaflet-container/);
  await show(true);
  await page.setViewportSize({ width: 600, height: 800 });
  await show(false);
  const pane = () =>
    map(page).evaluate((frame) => {
      const svg = frame.querySelector('svg.leaflet-zoom-animated, .leaflet-overlay-pane svg');
      return svg ? svg.getBoundingClientRect().width / frame.clientWidth : 0;
    });
  await expect.poll(pane).toBeGreaterThan(0.99);
});

test('with data saved, the pictures of the host’s map wait for a press', async ({ page }) => {
  const tiles = '/club/tiles/{z}/{x}/{y}.png';
  const { asked } = overheard(page);
  await page.addInitScript(() =>
    Object.defineProperty(Navigator.prototype, 'connection', { get: () => ({ saveData: true }) }),
  );
  await clubPage(page, `<homeleg-planner keep="none" tiles="${tiles}" tiles-attribution="A club"></homeleg-planner>`);
  await page.goto('/club/');
  await expect(map(page)).toHaveClass(/leaflet-container/);
  await page.waitForLoadState('networkidle');
  expect(asked.filter((url) => url.includes('/tiles/'))).toEqual([]);
  await planners(page).getByRole('button', { name: 'Street map' }).click();
  await expect.poll(() => asked.filter((url) => url.includes('/tiles/')).length).toBeGreaterThan(0);
});
