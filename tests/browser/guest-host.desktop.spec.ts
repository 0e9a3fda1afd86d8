import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { clubPage, overheard } from './guest-page.ts';

const trip = JSON.parse(readFileSync('shared/trips/petrol-day.json', 'utf8'));
const planner = (page: Page) => page.locator('homeleg-planner');
const pieces = ['fuel', 'curve', 'deck', 'result', 'load-table', 'checklist'];
const scripts = pieces.map((name) => `<script type="module" src="/embed/${name}.js"></script>`).join('');

/** Keeps the names of events that reach the page. */
async function heard(page: Page, ...names: string[]): Promise<() => Promise<string[]>> {
  await page.addInitScript((types) => {
    const told: string[] = [];
    Object.assign(globalThis, { told });
    for (const type of types) addEventListener(type, () => void told.push(type));
  }, names);
  return () => page.evaluate(() => (globalThis as unknown as { told: string[] }).told);
}

test('a page that can only paste HTML gives trip, reserve, units and theme, and adds words of its own', async ({
  page,
}) => {
  const { complaints } = overheard(page);
  const told = await heard(page, 'homeleg-plan', 'homeleg-verdict', 'homeleg-route');
  await clubPage(
    page,
    `<homeleg-planner keep="none" units="metric" reserve="40 %" theme="dark">
      <script type="application/json">${JSON.stringify({ trip })}</script>
      <p slot="intro">Welcome at our slip.</p><b slot="logo">Our club</b><p slot="cautions">Mind the ferry.</p>
    </homeleg-planner>`,
  );
  await page.goto('/club/');
  await expect(page.getByText('Welcome at our slip.')).toBeVisible();
  await expect(page.getByText('Mind the ferry.')).toBeVisible();
  await expect.poll(told).toEqual(expect.arrayContaining(['homeleg-plan', 'homeleg-verdict', 'homeleg-route']));
  const made = await planner(page).evaluate((element) => {
    const { trip, plan, plannedTrip } = element as HTMLElementTagNameMap['homeleg-planner'];
    return {
      name: trip.name,
      rules: plannedTrip?.policy.reserve,
      rule: plan?.reserveRule,
      scheme: getComputedStyle(element).colorScheme,
    };
  });
  expect(made).toMatchObject({ name: trip.name, scheme: 'dark', rule: { kind: 'share', share: 0.4 } });
  expect(complaints).toEqual([]);
});

test('a wrong attribute is told on the element, by an event and once in the console, with the fix', async ({
  page,
}) => {
  const { complaints } = overheard(page);
  const told = await heard(page, 'homeleg-problem');
  await clubPage(page, '<homeleg-planner keep="none" units="miles" boat="red" zoom="far"></homeleg-planner>');
  await page.goto('/club/');
  await expect(
    planner(page).getByText('“miles” is not one of the values known here: nautical, metric, imperial.'),
  ).toBeVisible();
  await expect(planner(page).getByText('There is no boat “red”')).toBeVisible();
  await expect.poll(told).toEqual(['homeleg-problem', 'homeleg-problem', 'homeleg-problem']);
  await planner(page).evaluate((element) => element.setAttribute('boat', 'blue'));
  await expect(planner(page).getByText('There is no boat “blue”')).toBeVisible();
  expect(complaints.filter((line) => line.includes('units'))).toHaveLength(1);
  expect(complaints).toHaveLength(4);
  await planner(page).evaluate((element) => {
    element.setAttribute('units', 'metric');
    element.setAttribute('boat', 'catamaran-3-6');
    element.removeAttribute('zoom');
  });
  await expect(planner(page).getByText('For the author of this page')).toHaveCount(0);
  expect(
    await planner(page).evaluate(
      (element) => (element as HTMLElementTagNameMap['homeleg-planner']).trip.craft.hull.length,
    ),
  ).toBeCloseTo(3.6, 1);
});

test('a booking form sends the trip once there is a plan, and not before', async ({ page }) => {
  await clubPage(
    page,
    '<form action="/club/booked/"><homeleg-planner name="trip" keep="none"></homeleg-planner><button>Book</button></form>',
  );
  await page.route('/club/booked/**', (route) => route.fulfill({ contentType: 'text/html', body: '<h1>Booked</h1>' }));
  await page.goto('/club/');
  await expect(planner(page).locator('#answer')).toBeVisible();
  await page.getByRole('button', { name: 'Book' }).click();
  expect(page.url()).toMatch(/\/club\/$/);
  expect(await page.evaluate(() => document.forms[0]!.checkValidity())).toBe(false);
  const read = await planner(page).evaluate(
    (element, given) => (element as HTMLElementTagNameMap['homeleg-planner']).loadTrip(given),
    trip,
  );
  expect(read).toMatchObject({ ok: true });
  await expect.poll(() => page.evaluate(() => document.forms[0]!.checkValidity())).toBe(true);
  const sent = await page.evaluate(() => new FormData(document.forms[0]).get('trip'));
  expect(JSON.parse(String(sent))).toMatchObject({ name: trip.name, route: trip.route });
  await page.getByRole('button', { name: 'Book' }).click();
  await expect(page.getByRole('heading', { name: 'Booked' })).toBeVisible();
});

test('a file that is no trip is refused by loadTrip, and what was entered stays', async ({ page }) => {
  await clubPage(page, '<homeleg-planner keep="none"></homeleg-planner>');
  await page.goto('/club/');
  const results = await planner(page).evaluate(async (element) => {
    const each = element as HTMLElementTagNameMap['homeleg-planner'];
    const before = each.saveTrip();
    const read = await each.loadTrip('{"version":1}');
    return { ok: read.ok, same: before === each.saveTrip() };
  });
  expect(results).toEqual({ ok: false, same: true });
});

test('pieces on a page of their own layout share one planner’s trip, whichever stands first', async ({ page }) => {
  const { complaints } = overheard(page);
  await clubPage(
    page,
    `<homeleg-fuel for="ours"></homeleg-fuel><homeleg-result for="ours"></homeleg-result>
     <homeleg-planner id="ours" keep="none"><script type="application/json">${JSON.stringify({ trip })}</script></homeleg-planner>`,
    { head: scripts },
  );
  await page.goto('/club/');
  await expect(page.locator('homeleg-fuel').getByRole('img').first()).toBeVisible();
  await expect(page.locator('homeleg-result').getByRole('heading', { level: 2 }).first()).toHaveText(
    'Home with reserve',
  );
  expect(
    await planner(page).evaluate((element) => (element as HTMLElementTagNameMap['homeleg-planner']).plan?.verdict),
  ).toBe('go');
  expect(complaints).toEqual([]);
});

test('pieces work without a planner: one is given a trip, another follows it, a third says that nobody is there', async ({
  page,
}) => {
  const { complaints } = overheard(page);
  await clubPage(
    page,
    '<homeleg-deck id="given"></homeleg-deck><homeleg-fuel for="given"></homeleg-fuel><homeleg-curve for="nobody"></homeleg-curve>',
    { head: scripts },
  );
  await page.goto('/club/');
  await expect(page.locator('homeleg-fuel')).toContainText('shows a trip as soon as it is given one');
  await page.locator('homeleg-deck').evaluate((deck, given) => void Object.assign(deck, { trip: given }), trip);
  await expect(page.locator('homeleg-fuel').getByRole('img').first()).toBeVisible();
  await expect(page.locator('homeleg-fuel')).toContainText(/navigation/i);
  await expect(page.locator('homeleg-curve')).toContainText('no planner or other element with the id “nobody”');
  expect(complaints).toEqual([expect.stringContaining('“nobody”')]);
});

test('the reserve check sends its trip with a form and tells the page of every change', async ({ page }) => {
  const told = await heard(page, 'homeleg-plan', 'homeleg-verdict');
  await clubPage(page, '<form><homeleg-reserve-check name="check"></homeleg-reserve-check></form>');
  await page.goto('/club/');
  const weights = page.locator('homeleg-reserve-check').getByLabel(/weights/i);
  await weights.fill('80, 75');
  await expect.poll(told).toContain('homeleg-verdict');
  expect(await page.evaluate(() => document.forms[0]!.checkValidity())).toBe(true);
  const count = (await told()).length;
  await weights.fill('80, 75, 70');
  await expect.poll(async () => (await told()).length).toBeGreaterThan(count);
  const sent = await page.evaluate(
    () => JSON.parse(String(new FormData(document.forms[0]).get('check'))).load.items.length,
  );
  expect(sent).toBe(3);
  await weights.fill('');
  await expect.poll(() => page.evaluate(() => document.forms[0]!.checkValidity())).toBe(false);
});
