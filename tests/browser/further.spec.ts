import AxeBuilder from '@axe-core/playwright';
import { expect, type Locator, type Page, test } from '@playwright/test';
import { PlannerPage } from './planner-page.ts';

const SECTIONS = ['minimums', 'mishaps', 'sure', 'speed', 'here'] as const;
type Section = (typeof SECTIONS)[number];

function section(page: Page, name: Section): Locator {
  return page.locator(`homeleg-further details.${name}`).first();
}

/** A trip that is planned, and these sections of the card below it opened. */
async function asked(page: Page, ...names: Section[]): Promise<PlannerPage> {
  const planner = new PlannerPage(page);
  await planner.open();
  await planner.example('Petrol catamaran, a day out');
  // By key: what is loaded above may still move the page under a press.
  await page.locator('#further > summary').press('Enter');
  for (const name of names) await section(page, name).locator('> summary').press('Enter');
  return planner;
}

/** Somewhere on the way, at eleven, with so many quarters in the tank. */
async function reading(page: Page, quarters: 1 | 2 | 3): Promise<void> {
  const here = section(page, 'here');
  await here.locator('label', { hasText: 'A point of the route' }).click();
  await here.getByLabel('Nearest point').selectOption({ index: 9 });
  await here.getByLabel('Clock now').fill('11:00');
  await here
    .locator('.quarter')
    .nth(quarters - 1)
    .click();
}

test('nothing is worked out before it is asked, then each answer shows, on a phone too', async ({ page }) => {
  const planner = await asked(page);
  await expect(section(page, 'minimums')).toBeVisible();
  await expect(page.locator('homeleg-minimums, homeleg-mishaps, homeleg-how-sure, homeleg-speed-choice')).toHaveCount(
    0,
  );
  for (const name of SECTIONS) await section(page, name).locator('> summary').press('Enter');
  await expect(section(page, 'minimums').getByRole('row').filter({ hasText: 'West approach' })).toBeVisible();
  await expect(section(page, 'mishaps').getByRole('row').filter({ hasText: 'towed home' })).toContainText(
    /Reserve|Home|last/,
  );
  await expect(section(page, 'sure')).toContainText(/The reserve stays whole\s+in about \d\d of 100 such trips/);
  await expect(section(page, 'speed').getByRole('img', { name: /Time against fuel left/ })).toBeVisible();
  await expect(section(page, 'here').getByRole('button', { name: 'What now?' })).toBeVisible();
  await expect(page.locator('homeleg-daylight')).toContainText(/Home .* before sunset/);
  expect(planner.complaints).toEqual([]);
});

test('the least aboard is that of the trip as it stands now', async ({ page }) => {
  const planner = await asked(page, 'minimums');
  const row = section(page, 'minimums').getByRole('row').filter({ hasText: 'West approach' });
  const before = await row.textContent();
  await page.locator('#aboard > summary').scrollIntoViewIfNeeded();
  await planner.card('aboard').getByRole('button', { name: 'Half' }).click();
  await expect(row).toContainText('less than that is planned');
  expect(await row.textContent()).not.toBe(before);
});

test('a speed is taken for the whole trip and taken back', async ({ page }) => {
  const planner = await asked(page, 'speed');
  const speed = section(page, 'speed');
  const before = (await planner.plan()).need.median;
  const least = speed.getByRole('listitem').filter({ hasText: 'Uses least' });
  await least.getByRole('button').click();
  await expect.poll(async () => (await planner.plan()).need.median).toBeLessThan(before * 0.8);
  await expect(speed.getByText(/The whole trip is now planned at/)).toBeVisible();
  await expect(least).toContainText('Planned now');
  await speed.getByRole('button', { name: 'Take back' }).click();
  await expect.poll(async () => (await planner.plan()).need.median).toBeCloseTo(before, 9);
  await expect(speed.getByRole('button', { name: 'Take back' })).toHaveCount(0);
});

test.describe('playing it over', () => {
  const play = (page: Page) => section(page, 'sure').getByRole('button', { name: 'Play it 10,000 times' });
  const outcome = (page: Page) => section(page, 'sure').getByText(/Played: reserve whole in about \d\d of 100/);

  test('is done in a worker', async ({ page }) => {
    const planner = await asked(page, 'sure');
    const [worker] = await Promise.all([page.waitForEvent('worker'), play(page).click()]);
    expect(worker.url()).toContain('play-worker');
    await expect(outcome(page)).toBeVisible();
    expect(planner.complaints).toEqual([]);
  });

  test('is done on the page, with the same outcome, where the host refuses workers', async ({ page }) => {
    await asked(page, 'sure');
    await play(page).click();
    const usual = await outcome(page).textContent();
    await page.route('/', async (route) => {
      const response = await route.fetch();
      const policy = response.headers()['content-security-policy']!.replace(/worker-src [^;]*/, "worker-src 'none'");
      await route.fulfill({ response, headers: { ...response.headers(), 'content-security-policy': policy } });
    });
    await asked(page, 'sure');
    let workers = 0;
    page.on('worker', () => workers++);
    await play(page).click();
    await expect(outcome(page)).toHaveText(usual ?? '');
    expect(workers).toBe(0);
  });

  test('can be stopped', async ({ page }) => {
    await asked(page, 'sure');
    await expect(play(page)).toBeVisible();
    // In one go, as no press is quick enough on a fast machine.
    await page.locator('homeleg-how-sure').evaluate(async (element) => {
      const button = () => element.shadowRoot!.querySelector<HTMLButtonElement>('.check button')!;
      button().click();
      await (element as HTMLElement & { updateComplete: Promise<boolean> }).updateComplete;
      button().click();
    });
    await expect(section(page, 'sure').getByText('Stopped. Nothing was changed.')).toBeVisible();
    await expect(play(page)).toBeVisible();
  });
});

test('the check from here says beside each field what is missing, then answers by one thumb, on a phone', async ({
  page,
}) => {
  await asked(page, 'here');
  const here = section(page, 'here');
  await here.getByRole('button', { name: 'What now?' }).click();
  await expect(here.getByText('Press the button to find the position.')).toBeVisible();
  await expect(here.getByText('Set what the gauge shows.')).toBeVisible();
  await here.locator('label', { hasText: 'Typed position' }).click();
  await here.getByLabel('Latitude and longitude').fill('nowhere');
  await expect(here.getByText('This cannot be read as a position.')).toBeVisible();
  await expect(here.getByLabel('Latitude and longitude')).toHaveAttribute('aria-invalid', 'true');
  await reading(page, 3);
  await expect(here.locator('.problem:visible')).toHaveCount(0);
  const ways = here.locator('.ways > li');
  await expect(ways.filter({ hasText: 'Go on as planned' })).toContainText(/reserve|short/);
  await expect(ways.filter({ hasText: 'Turn for home' })).toContainText(/There at \d\d:\d\d/);
  await expect(ways.getByRole('heading', { name: /^To / })).toHaveCount(3);
});

test('much more used than planned calls for an early turn', async ({ page }) => {
  await asked(page, 'here');
  const here = section(page, 'here');
  await reading(page, 2);
  await here.getByRole('button', { name: 'What now?' }).click();
  await expect(here.getByText(/So far \d+% more used than planned/)).toBeVisible();
  await expect(here.getByText(/calls for an early turn/)).toBeVisible();
  await expect(here.locator('.ways > li').filter({ hasText: 'Go on as planned' })).not.toContainText(
    'Keeps the reserve',
  );
});

test('the position of the device is used where it is given, and its absence said', async ({ page, context }) => {
  await asked(page, 'here');
  const here = section(page, 'here');
  const find = here.getByRole('button', { name: 'Find where I am' });
  await find.click();
  await expect(here.getByText(/The position was not given/)).toBeVisible();
  await context.grantPermissions(['geolocation']);
  await context.setGeolocation({ latitude: 45.99, longitude: -32.01, accuracy: 12 });
  await find.click();
  await expect(here.getByText(/within 12/)).toBeVisible();
});

test('what must be aboard on the way is printed, though the card was never opened', async ({ page }) => {
  await page.addInitScript(() => {
    globalThis.print = () => {
      document.documentElement.dataset.printed = 'yes';
    };
  });
  const planner = new PlannerPage(page);
  await planner.open();
  await planner.example('Petrol catamaran, a day out');
  await page.getByText('Keep, open, print').click();
  await page.getByRole('button', { name: 'Print', exact: true }).click();
  await expect(page.locator('html[data-printed]')).toBeAttached();
  await page.evaluate(() => globalThis.dispatchEvent(new Event('beforeprint')));
  await page.emulateMedia({ media: 'print' });
  await expect(section(page, 'minimums').getByRole('row').filter({ hasText: 'West approach' })).toBeVisible();
  await expect(section(page, 'here')).toBeHidden();
});

test('the further answers are for everybody, light', async ({ page }) => {
  await everybody(page, 'light');
});

test('the further answers are for everybody, dark', async ({ page }) => {
  await everybody(page, 'dark');
});

async function everybody(page: Page, colorScheme: 'light' | 'dark'): Promise<void> {
  await page.emulateMedia({ colorScheme });
  await asked(page, ...SECTIONS);
  await expect(page.locator('homeleg-speed-choice svg.trade .line')).toBeVisible();
  await section(page, 'speed').getByText('Every speed as a table').click();
  await reading(page, 2);
  await section(page, 'here').getByRole('button', { name: 'What now?' }).click();
  await expect(section(page, 'here').locator('.ways > li')).not.toHaveCount(0);
  const { violations } = await new AxeBuilder({ page })
    .include({ fromShadowDom: ['homeleg-planner', '#further'] })
    .include({ fromShadowDom: ['homeleg-planner', 'homeleg-daylight'] })
    .analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' | ')}`)).toEqual([]);
}

test('every further answer fits its width of 320 px', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 640 });
  await asked(page, ...SECTIONS);
  await section(page, 'speed').getByText('Every speed as a table').click();
  await reading(page, 2);
  await section(page, 'here').getByRole('button', { name: 'What now?' }).click();
  await expect(section(page, 'here').locator('.ways > li')).not.toHaveCount(0);
  const wide = await page.evaluate(() => document.documentElement.scrollWidth);
  expect(wide).toBeLessThanOrEqual(320);
  const cut = await page.locator('homeleg-further').evaluate((further) => {
    const found: string[] = [];
    for (const element of further.shadowRoot!.querySelectorAll('.inside > *')) {
      if (element.scrollWidth > element.clientWidth + 1) found.push(element.localName);
    }
    return found;
  });
  expect(cut).toEqual([]);
});

test('by keyboard alone a section is opened and a speed taken', async ({ page }) => {
  const planner = await asked(page);
  const summary = section(page, 'speed').locator('> summary');
  await summary.focus();
  await page.keyboard.press('Enter');
  const take = section(page, 'speed')
    .getByRole('button', { name: /^Plan at/ })
    .first();
  await expect(take).toBeVisible();
  await page.keyboard.press('Tab');
  await expect(take).toBeFocused();
  const before = (await planner.plan()).need.median;
  await page.keyboard.press('Enter');
  await expect.poll(async () => (await planner.plan()).need.median).not.toBe(before);
});
