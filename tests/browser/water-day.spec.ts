import AxeBuilder from '@axe-core/playwright';
import { expect, type Locator, type Page, test } from '@playwright/test';
import { PlannerPage } from './planner-page.ts';

/** The day of the shipped trip, its wind by the hour: moderate, all day. */
const FORECAST = [
  'time;wind dir;wind kn;gust kn',
  ...[3, 6, 9, 12, 15, 18, 21].map((hour) => `2027-06-19 ${String(hour).padStart(2, '0')}:00;230;5;8`),
].join('\n');

class Day {
  readonly page: Page;
  readonly planner: PlannerPage;
  readonly form: Locator;

  constructor(page: Page) {
    this.page = page;
    this.planner = new PlannerPage(page);
    this.form = page.locator('homeleg-conditions-form');
  }

  async open(): Promise<void> {
    await this.planner.open();
    await this.planner.example('Petrol catamaran, a day out');
    const card = this.planner.card('day');
    // By key: what is loaded above may still move the page under a press.
    if ((await card.getAttribute('open')) === null) await card.locator('> summary').press('Enter');
    await expect(this.form.getByLabel('Departure')).toBeVisible();
  }

  async choose(field: string, label: string): Promise<void> {
    await this.form.locator(field).locator('label.choice', { hasText: label }).first().click();
  }

  async paste(text: string): Promise<Locator> {
    await this.choose('homeleg-flow-field[kind=wind]', 'By time');
    await this.form.locator('summary', { hasText: 'Take from a file' }).click();
    const taking = this.form.locator('homeleg-forecast-import');
    await taking.locator('summary', { hasText: 'Paste instead' }).click();
    await taking.getByLabel('The forecast as text').fill(text);
    await taking.getByRole('button', { name: 'Read it' }).click();
    return taking;
  }

  async forecast(text = FORECAST): Promise<void> {
    const taking = await this.paste(text);
    await taking
      .getByLabel('The times are written')
      .selectOption({ label: 'on the clock of the place, UTC\u221202:00' });
    await taking.getByRole('button', { name: /^Use these/ }).click();
    await expect(this.form.locator('homeleg-wind-table tbody tr')).toHaveCount(text.split('\n').length - 1);
  }

  async tideOfHaven(): Promise<void> {
    await this.choose('homeleg-flow-field[kind=stream]', 'By the tide');
    await this.choose('homeleg-tide-field', 'From a station');
    await this.form.getByLabel('Station', { exact: true }).selectOption({ label: 'Marl Haven (invented)' });
    await expect(this.form.getByText(/High water Sat, Jun 19/)).toBeVisible();
  }

  trip(): Promise<{ conditions: Record<string, unknown> & { departure?: string; tide?: { highWater: string } } }> {
    return this.page.evaluate(() => (document.querySelector('homeleg-planner') as unknown as { trip: never }).trip);
  }

  async type(reading: string): Promise<void> {
    const field = this.form.getByLabel('Departure');
    await field.fill(reading);
    await field.blur();
  }
}

test('a forecast, the tide of the day and the sea that follows are told leg by leg', async ({ page }) => {
  const day = new Day(page);
  await day.open();
  await day.forecast();
  await expect(day.form.getByText(/and covers the trip/)).toBeVisible();
  await day.tideOfHaven();
  await expect(day.form.getByText('Invented; no such tide exists')).toBeVisible();
  await day.choose('homeleg-sea-field', 'From the wind');
  await expect.poll(() => day.planner.reasons()).toContain('swell-unknown');
  await day.form.getByLabel('Swell from outside').fill('0');
  await expect.poll(() => day.planner.reasons()).not.toContain('swell-unknown');
  const legs = page.locator('#legs');
  if ((await legs.getAttribute('open')) === null) await legs.locator('> summary').press('Enter');
  await legs.scrollIntoViewIfNeeded();
  const table = page.locator('homeleg-leg-table');
  await expect(table.getByRole('columnheader', { name: 'Sea and wind' })).toBeVisible();
  await expect(
    table
      .getByRole('row')
      .filter({ hasText: /0\.\d+\sm/ })
      .first(),
  ).toContainText(/ahead|astern/);
  await expect(
    table
      .getByRole('row')
      .filter({ hasText: /\d\.\d\skn\s*to \d{3}°/ })
      .first(),
  ).toBeVisible();
  await expect(page.locator('homeleg-trip-details')).toContainText(/Streams by the tide, taken from: .*Bar gap/);
  await expect(page.locator('homeleg-trip-details')).toContainText(/Waves worked out from wind and open water/);
  expect(day.planner.complaints).toEqual([]);
});

test('a forecast that ends before the trip does is said, and counts against it', async ({ page }) => {
  const day = new Day(page);
  await day.open();
  await day.forecast(FORECAST.split('\n').slice(0, 4).join('\n'));
  await expect(day.form.getByText(/before the trip does: after that the wind counts as not known/)).toBeVisible();
  await expect.poll(() => day.planner.reasons()).toContain('forecast-short');
  expect((await day.planner.plan()).verdict).not.toBe('go');
});

test('rows with mistakes refuse the whole forecast, each told by its row', async ({ page }) => {
  const day = new Day(page);
  await day.open();
  const taking = await day.paste(FORECAST.replace(';230;5;8', ';north-ish;5;8').replace('12:00;230;5', '12:00;230;x'));
  await expect(taking.getByText(/Choose what clock/)).toBeVisible();
  await taking.getByLabel('The times are written').selectOption({ label: 'UTC' });
  await expect(taking.getByText(/Row 2, wind dir: .*neither degrees nor a point/)).toBeVisible();
  await expect(taking.getByText(/Row 5, wind kn: .*no number/)).toBeVisible();
  await expect(taking.getByRole('button', { name: /^Use these/ })).toHaveCount(0);
});

test('rows of wind are typed, put in order and taken away by keys alone, each mistake beside its cell', async ({
  page,
}) => {
  const day = new Day(page);
  await day.open();
  await day.choose('homeleg-flow-field[kind=wind]', 'By time');
  const table = day.form.locator('homeleg-wind-table');
  await table.getByLabel('From, row 1').fill('seaward');
  await table.getByLabel('Wind (kn), row 1').fill('8');
  await expect(table.getByText('Degrees from 0 to 360')).toBeVisible();
  await expect(table.getByLabel('From, row 1')).toHaveAttribute('aria-invalid', 'true');
  await table.getByLabel('From, row 1').fill('SW');
  await table.getByRole('button', { name: 'Add a row' }).press('Enter');
  await expect(table.getByLabel('Wind (kn), row 2')).toBeFocused();
  await page.keyboard.type('12');
  await table.getByLabel('Time, row 2').fill('2027-06-19T08:00');
  await table.getByRole('button', { name: 'Sort by time' }).press('Enter');
  await expect(table.getByLabel('Wind (kn), row 1')).toHaveValue('12');
  await expect
    .poll(async () => (await day.trip()).conditions.wind)
    .toMatchObject({
      forecast: [{ time: '2027-06-19T08:00:00-02:00', fromDeg: 225 }, { time: '2027-06-19T10:00:00-02:00' }],
    });
  await table.getByRole('button', { name: 'Remove row 1' }).press('Enter');
  await expect(table.locator('tbody tr')).toHaveCount(1);
  await expect(table.getByRole('button', { name: 'Remove row 1' })).toBeFocused();
});

test('nothing is fetched unless the host names a service; then its answer is shown before it counts', async ({
  page,
}) => {
  const day = new Day(page);
  await day.open();
  await day.choose('homeleg-flow-field[kind=wind]', 'By time');
  const fetch = day.form.getByRole('button', { name: 'Fetch the forecast for the start' });
  await expect(day.form.getByRole('button', { name: 'Add a row' })).toBeVisible();
  await expect(fetch).toHaveCount(0);
  const asked: string[] = [];
  await page.route('**/winds?**', (route) => {
    asked.push(route.request().url());
    return route.fulfill({ contentType: 'text/csv', body: FORECAST });
  });
  await page.locator('homeleg-planner').evaluate((planner) => {
    planner.setAttribute('forecast-source', '/winds?lat={lat}&lon={lon}');
  });
  await fetch.click();
  await expect(day.form.getByText(/Columns of localhost/)).toBeVisible();
  expect(asked).toHaveLength(1);
  expect(asked[0]).toContain('lat=46.03&lon=-31.99');
  expect((await day.trip()).conditions.wind).toBeUndefined();
});

test('streams by the tide without a departure are said to be unknown', async ({ page }) => {
  const day = new Day(page);
  await day.open();
  await day.type('');
  await day.choose('homeleg-flow-field[kind=stream]', 'By the tide');
  await expect.poll(() => day.planner.reasons()).toContain('departure-unknown');
  await day.choose('homeleg-tide-field', 'From a station');
  await day.form.getByLabel('Station', { exact: true }).selectOption({ label: 'Marl Haven (invented)' });
  await expect(day.form.getByText('Give a departure: the tide is worked out for its day.')).toBeVisible();
});

test('a time that the clock skips is no departure, one shown twice asks which', async ({ page }) => {
  const day = new Day(page);
  await day.open();
  await day.form.getByLabel('Clock of the place').selectOption('Europe/Paris');
  await day.type('2027-03-28T02:30');
  await expect(day.form.getByText(/the clock goes forward past 02:30: right after comes 03:00/)).toBeVisible();
  await expect.poll(async () => (await day.trip()).conditions.departure).toBeUndefined();
  await day.form.getByRole('button', { name: 'Take 03:00' }).click();
  await expect.poll(async () => (await day.trip()).conditions.departure).toBe('2027-03-28T03:00:00+02:00');
  await day.type('2027-10-31T02:30');
  await expect(day.form.getByText(/shows this time twice/)).toBeVisible();
  await expect.poll(async () => (await day.trip()).conditions.departure).toBe('2027-10-31T02:30:00+02:00');
  await day.form.getByLabel('The second, UTC+01:00').check();
  await expect.poll(async () => (await day.trip()).conditions.departure).toBe('2027-10-31T02:30:00+01:00');
});

test('tides are typed too, and half of one does not count', async ({ page }) => {
  const day = new Day(page);
  await day.open();
  await day.choose('homeleg-flow-field[kind=stream]', 'By the tide');
  await day.choose('homeleg-tide-field', 'I have the tables');
  await day.form.getByLabel('High water').fill('2027-06-19T13:00');
  await day.form.getByLabel('Range of the day').fill('4');
  await expect(day.form.getByText(/until then the tide counts as not given/)).toBeVisible();
  await day.form.getByLabel('Mean spring range').fill('1.9');
  await day.form.getByLabel('Mean neap range').fill('4');
  await expect(day.form.getByText(/Springs have the larger range/)).toBeVisible();
  expect((await day.trip()).conditions.tide).toBeUndefined();
  await day.form.getByLabel('Mean spring range').fill('4');
  await day.form.getByLabel('Mean neap range').fill('1.9');
  await expect
    .poll(async () => (await day.trip()).conditions.tide)
    .toMatchObject({
      highWater: '2027-06-19T13:00:00-02:00',
      range: 4,
    });
});

test('a place with a foul stream of one’s own is typed by keys, counts, is undone and is there after a reload', async ({
  page,
}) => {
  const day = new Day(page);
  await day.open();
  await day.forecast();
  await day.tideOfHaven();
  const places = day.form.locator('homeleg-stream-places');
  await expect(places.locator('summary', { hasText: '11 places of the local waters' })).toBeVisible();
  await expect.poll(() => day.planner.reasons()).not.toContain('stream-unknown');
  const before = (await day.planner.plan()).verdict;

  await places.getByRole('button', { name: 'Add a place of your own' }).press('Enter');
  const form = places.locator('homeleg-stream-place-form');
  await expect(form.getByLabel('Name')).toBeFocused();
  await page.keyboard.type('The Sill');
  await page.keyboard.press('Tab');
  await page.keyboard.type('46 north-ish');
  await page.keyboard.press('Tab');
  await expect(form.getByText(/A position such as/)).toBeVisible();
  await expect(form.getByLabel('Position')).toHaveAttribute('aria-invalid', 'true');
  await expect(form.getByLabel('Position')).toHaveValue('46 north-ish');
  await form.getByLabel('Or that of a waypoint').selectOption({ index: 2 });
  await expect(form.getByText(/A position such as/)).toHaveCount(0);
  expect((await day.trip()).conditions.streamPlaces).toBeUndefined();

  // Stronger than the boat is fast at the planned speed, across and against by turns.
  const cells = form.locator('table.hours tbody input');
  await cells.first().focus();
  for (let hour = 0; hour < 13; hour++) {
    for (const text of [String((hour * 30) % 360), '12', '11']) {
      await page.keyboard.type(text);
      await page.keyboard.press('Tab');
    }
  }
  await expect(form.getByText('It counts.')).toBeVisible();
  await expect
    .poll(async () => (await day.trip()).conditions.streamPlaces)
    .toMatchObject([{ name: 'The Sill', firstHour: -6 }]);

  const legs = page.locator('#legs');
  if ((await legs.getAttribute('open')) === null) await legs.locator('> summary').press('Enter');
  await legs.scrollIntoViewIfNeeded();
  const choices = page.locator('homeleg-leg-streams');
  await choices.locator('summary').press('Enter');
  await choices.getByLabel('Stream of leg 1 from', { exact: true }).selectOption({ label: 'The Sill' });
  await expect.poll(async () => (await day.planner.plan()).verdict).toBe('no-go');
  expect(before).not.toBe('no-go');
  const kept = (await day.trip()).conditions.streamPlaces;

  const tools = page.locator('homeleg-trip-tools');
  const pressed = async (name: string, done: () => Promise<boolean>) => {
    for (let steps = 0; steps < 60 && !(await done()); steps++) {
      await tools.getByRole('button', { name, exact: true }).press('Enter');
    }
  };
  await pressed('Undo', async () => (await day.trip()).conditions.streamPlaces === undefined);
  await expect.poll(async () => (await day.planner.plan()).verdict).toBe(before);
  await pressed(
    'Redo',
    async () =>
      (await tools.getByRole('button', { name: 'Redo', exact: true }).getAttribute('aria-disabled')) === 'true',
  );
  await expect.poll(async () => (await day.planner.plan()).verdict).toBe('no-go');
  await expect
    .poll(() => page.evaluate(() => localStorage.getItem('homeleg-trip') ?? ''))
    .toContain('"streamPlace":"The Sill"');
  await page.reload();
  await expect.poll(async () => (await day.trip()).conditions.streamPlaces).toEqual(kept);
  await expect.poll(async () => (await day.planner.plan())?.verdict).toBe('no-go');
  expect(day.planner.complaints).toEqual([]);
});

test('streams by the hour come from a table, whose faults are told, and go into a file', async ({ page }) => {
  const day = new Day(page);
  await day.open();
  await day.tideOfHaven();
  const places = day.form.locator('homeleg-stream-places');
  await places.locator('summary', { hasText: 'Take places from a file' }).press('Enter');
  const taking = places.locator('homeleg-stream-import');
  await taking.locator('summary', { hasText: 'Paste instead' }).press('Enter');
  const rows = [
    'place;lat;lon;hour;set;spring kn;neap kn',
    'Far Gap;46,01;-32;-1;10;1;0,5',
    'Far Gap;46,01;-32;0;10;x;0,1',
  ];
  await taking.getByLabel('The table as text').fill(rows.join('\n'));
  await taking.getByRole('button', { name: 'Read it' }).press('Enter');
  await expect(taking.getByText(/Row 3, spring kn/)).toBeVisible();
  await expect(taking.getByRole('button', { name: 'Use this place' })).toHaveCount(0);
  await taking.getByLabel('The table as text').fill(rows.join('\n').replace(';x;', ';0,2;'));
  await taking.getByRole('button', { name: 'Read it' }).press('Enter');
  await expect(taking.getByText(/Places: Far Gap\. Strongest stream in them: 1\.0/)).toBeVisible();
  await taking.getByRole('button', { name: 'Use this place' }).press('Enter');
  await expect
    .poll(async () => (await day.trip()).conditions.streamPlaces)
    .toMatchObject([{ name: 'Far Gap', lat: 46.01, lon: -32, firstHour: -1 }]);
  const [saved] = await Promise.all([
    page.waitForEvent('download'),
    places.getByRole('button', { name: 'Save your places as a file' }).press('Enter'),
  ]);
  expect(saved.suggestedFilename()).toBe('stream-places.json');
});

test('another departure is picked from the hours of the day, with the tide of its hour', async ({ page }) => {
  const day = new Day(page);
  await day.open();
  await day.forecast();
  await day.tideOfHaven();
  const before = (await day.trip()).conditions.tide!.highWater;
  await page.locator('#further > summary').press('Enter');
  await page.locator('homeleg-further details.start > summary').press('Enter');
  const starts = page.locator('homeleg-start-times');
  await expect(starts.getByText(/Best answer of that day|No departure of that day/)).toBeVisible({ timeout: 60_000 });
  await expect(starts.getByRole('button', { name: /^10:00/ })).toHaveAttribute('aria-pressed', 'true');
  await expect(starts.getByRole('row').filter({ hasText: 'Pell landing' })).toContainText(
    /from \d\d:\d\d to \d\d:\d\d/,
  );
  await starts.getByRole('button', { name: /^05:00/ }).press('Enter');
  await expect.poll(async () => (await day.trip()).conditions.departure).toBe('2027-06-19T05:00:00-02:00');
  await expect.poll(async () => (await day.trip()).conditions.tide?.highWater).not.toBe(before);
  await expect(starts.getByRole('button', { name: /^05:00/ })).toHaveAttribute('aria-pressed', 'true');
});

test('each point tells the nearest landing over water', async ({ page }) => {
  const day = new Day(page);
  await day.open();
  await page.locator('#further > summary').press('Enter');
  await page.locator('homeleg-further details.minimums > summary').press('Enter');
  const rows = page.locator('homeleg-minimums').getByRole('row');
  await expect(rows.filter({ hasText: 'Garnet race' })).toContainText(/Ward jetty/);
  await expect(rows.filter({ hasText: 'Point 2' }).first()).toContainText(/Marl Haven slip.*fuel; power/s);
});

for (const colorScheme of ['light', 'dark'] as const) {
  test(`the day is usable by everybody, ${colorScheme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme });
    const day = new Day(page);
    await day.open();
    await day.forecast();
    await day.tideOfHaven();
    await day.choose('homeleg-sea-field', 'From the wind');
    await day.form.getByRole('button', { name: 'Add a place of your own' }).press('Enter');
    await expect(day.form.locator('homeleg-stream-place-form').getByLabel('Name')).toBeFocused();
    await page.locator('#further > summary').press('Enter');
    await page.locator('homeleg-further details.start > summary').press('Enter');
    await expect(page.locator('homeleg-start-times').getByText(/Best answer|No departure/)).toBeVisible({
      timeout: 60_000,
    });
    await page.locator('homeleg-start-times summary').press('Enter');
    await expect(page.locator('homeleg-start-times').getByRole('row').filter({ hasText: '12:30' })).toBeVisible();
    const found = await new AxeBuilder({ page }).include('homeleg-planner').analyze();
    expect(found.violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`)).toEqual([]);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
    expect(wide).toBeLessThanOrEqual(0);
  });
}
