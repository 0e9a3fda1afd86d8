import AxeBuilder from '@axe-core/playwright';
import { expect, type Locator, type Page, test } from '@playwright/test';
import { verdictWords } from '../../src/components/words/en-verdict.ts';
import { readProfile } from '../../src/core/files/profile-file.ts';
import { PlannerPage } from './planner-page.ts';
import { trialDay } from './trial-day.ts';

/** The trials page as somebody at the screen meets it. */
class TrialsPage {
  readonly page: Page;
  readonly complaints: string[] = [];

  constructor(page: Page) {
    this.page = page;
    page.on('console', (message) => {
      // The test browser keeps the offline worker out, and says so.
      if (message.text().includes('registration blocked')) return;
      if (message.type() === 'error' || message.type() === 'warning') this.complaints.push(message.text());
    });
    page.on('pageerror', (error) => this.complaints.push(String(error)));
  }

  async open(): Promise<void> {
    await this.page.goto('/trials/');
    await expect(this.page.getByRole('button', { name: 'Add a run' })).toBeVisible();
  }

  async sample(): Promise<void> {
    await this.page.getByRole('button', { name: 'Load a sample' }).click();
    await expect(this.page.getByText('Sample loaded')).toBeVisible();
    await expect(this.found).toContainText('consumption is known to');
  }

  card(name: 'boat' | 'runs' | 'tracks' | 'refills' | 'sheet'): Locator {
    return this.page.locator(`homeleg-trials details#${name}`);
  }

  /** Opens a card, or leaves it open. */
  async opened(name: 'boat' | 'runs' | 'tracks' | 'refills' | 'sheet'): Promise<Locator> {
    const card = this.card(name);
    if ((await card.getAttribute('open')) === null) await card.locator(':scope > summary').click();
    return card;
  }

  get found(): Locator {
    return this.page.locator('#found');
  }

  get rows(): Locator {
    return this.page.getByRole('table', { name: 'Runs', exact: true }).locator('tbody tr');
  }

  /** Half width of the band, %, of the planing speed: unmeasured and with the runs. */
  async band(): Promise<{ before: number; after: number }> {
    const said = (await this.found.locator('.lead').textContent()) ?? '';
    const [, after, before] = /±([\d.]+)\s%\sinstead of ±([\d.]+)\s%/.exec(said) ?? [];
    return { before: Number(before), after: Number(after) };
  }
}

const file = (name: string, text: string, mimeType = 'application/json') => ({
  name,
  mimeType,
  buffer: Buffer.from(text),
});

test('two tracks and three typed runs narrow the band, make a profile, and change the answer of the planner', async ({
  page,
}) => {
  const day = await trialDay();
  const planner = new PlannerPage(page);
  await planner.open();
  await page.locator('homeleg-trip-tools input[type=file]').setInputFiles(file('trip.json', JSON.stringify(day.trip)));
  await expect(planner.verdict).toHaveText(verdictWords[day.before]);

  const trials = new TrialsPage(page);
  await trials.open();
  const boat = await trials.opened('boat');
  await boat.getByRole('button', { name: 'Take the boat of the planner' }).click();
  await expect(boat).toContainText('Boat of the planner taken');

  // Two tracks, four runs: who was aboard changes with the second track.
  const tracks = await trials.opened('tracks');
  await tracks
    .locator('homeleg-track-import input[type=file]')
    .setInputFiles(['shared/trials-demo/track-two-aboard.gpx', 'shared/trials-demo/track-four-aboard.gpx']);
  await expect(tracks).toContainText('4 runs out and back');
  const group = (name: string) => tracks.getByRole('group', { name: `Run ${name}`, exact: true });
  await expect(group('B')).toContainText('4 passes. Through still water 15.0 kn');
  const aboard = async (name: string, more: number) => {
    await group(name).getByText('Who and what is aboard, and where').click();
    for (let i = 0; i < more; i++) await group(name).getByRole('button', { name: 'Add: adult' }).click();
  };
  await aboard('A', 1);
  await expect(group('B')).toContainText('2 people, 170 kg');
  await aboard('C', 2);
  await expect(group('D')).toContainText('4 people, 340 kg');
  for (const [i, name] of ['A', 'B', 'C', 'D'].entries()) {
    await group(name).getByRole('textbox', { name: 'Flow' }).fill(day.fromTracks[i]!.flow);
    await group(name).getByRole('textbox', { name: 'Engine speed' }).fill(day.fromTracks[i]!.rpm);
  }
  await tracks.getByRole('button', { name: 'Take over 4 runs' }).click();
  await expect(trials.rows).toHaveCount(4);

  for (const [i, run] of day.typed.entries()) {
    await page.getByRole('button', { name: 'Add a run' }).click();
    const form = page.locator('homeleg-run-form');
    await form.getByRole('textbox', { name: 'Pass 1, out' }).fill(run.out);
    await form.getByRole('textbox', { name: 'Pass 2, back' }).fill(run.back);
    await form.getByRole('textbox', { name: 'Engine speed' }).fill(run.rpm);
    await form.getByRole('textbox', { name: 'Flow' }).fill(run.flow);
    await form.getByRole('button', { name: 'Save' }).click();
    await expect(trials.rows).toHaveCount(5 + i);
  }
  await expect(trials.found).toContainText('7 runs and refills count');
  const { before, after } = await trials.band();
  expect(after).toBeLessThan(before / 2);
  expect(trials.complaints).toEqual([]);

  await page.getByLabel('Name of the boat').fill('The trial boat');
  await page.getByLabel('Measured by').fill('two friends');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Download the profile' }).click();
  const saved = await (await download).createReadStream();
  const chunks: Buffer[] = [];
  for await (const chunk of saved) chunks.push(chunk as Buffer);
  const profile = readProfile(Buffer.concat(chunks).toString('utf8'));
  expect(profile).toMatchObject({ ok: true, value: { name: 'The trial boat', trials: { measuredBy: 'two friends' } } });
  expect(profile.ok && profile.value.trials.runs).toHaveLength(7);

  await page.getByRole('button', { name: 'Use in the planner' }).click();
  await page.getByRole('link', { name: 'To the planner' }).click();
  await expect(planner.verdict).toHaveText(verdictWords[day.after]);
  const note = page.locator('homeleg-measured-note');
  await expect(note).toContainText('Measured boat: 7 runs and refills count');
  await expect(note).toContainText('Measured by two friends');
});

test('what is typed survives a reload, and a deleted run comes back', async ({ page }) => {
  const trials = new TrialsPage(page);
  await trials.open();
  await page.getByRole('button', { name: 'Add a run' }).click();
  await page.getByRole('textbox', { name: 'Pass 1, out' }).fill('6.2');
  await page.getByRole('textbox', { name: 'Flow' }).fill('2.1');
  await page.reload();
  await expect(page.getByRole('textbox', { name: 'Pass 1, out' })).toHaveValue('6.2');
  await expect(page.getByRole('textbox', { name: 'Flow' })).toHaveValue('2.1');
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(trials.rows).toHaveCount(1);
  await page.getByRole('button', { name: 'Duplicate run 1' }).click();
  await expect(trials.rows).toHaveCount(2);
  await page.getByRole('button', { name: 'Delete run 1' }).click();
  await expect(trials.rows).toHaveCount(1);
  await page.getByRole('button', { name: 'Take back' }).click();
  await expect(trials.rows).toHaveCount(2);
  await page.reload();
  await expect(trials.rows).toHaveCount(2);
  expect(trials.complaints).toEqual([]);
});

test('a run that cannot be is told at its field, and nothing of it is lost', async ({ page }) => {
  const trials = new TrialsPage(page);
  await trials.open();
  await page.getByRole('button', { name: 'Add a run' }).click();
  await page.getByRole('textbox', { name: 'Flow' }).fill('2.1');
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.locator('homeleg-passes-field')).toContainText('At least one speed is needed.');
  await expect(page.getByRole('textbox', { name: 'Pass 1, out' })).toBeFocused();
  await page.getByRole('textbox', { name: 'Pass 1, out' }).fill('900');
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.locator('homeleg-passes-field')).toContainText('At most');
  await expect(trials.rows).toHaveCount(0);
  await expect(page.getByRole('textbox', { name: 'Flow' })).toHaveValue('2.1');
});

test('a run that contradicts the others is named with its residual, and can be left out', async ({ page }) => {
  const trials = new TrialsPage(page);
  await trials.open();
  await trials.sample();
  await expect(trials.found).toContainText(/Run 9: set aside: contradicts the others \(consumption \d+\s% less/);
  // Until somebody says that it was misread, it may be the boat.
  await expect(trials.found).toContainText('the band is wider between them too');
  await trials.found.getByRole('button', { name: 'Leave out: Run 9' }).click();
  await expect(trials.found).toContainText('Run 9: left out by you');
  await expect(trials.found).not.toContainText('the band is wider between them too');
  await trials.found.getByRole('button', { name: 'Put back: Run 9' }).click();
  await expect(trials.found).toContainText('Run 9: set aside: contradicts the others');
});

test('the ends of a stretch move by keys, by mouse and by typing', async ({ page }) => {
  const trials = new TrialsPage(page);
  await trials.open();
  const tracks = await trials.opened('tracks');
  await tracks.getByRole('button', { name: 'Try the sample tracks' }).click();
  const start = page.getByRole('slider', { name: 'Start of stretch 4' }).first();
  await expect(start).toBeVisible();
  const typed = page.getByRole('textbox', { name: 'Start of stretch 4' }).first();
  const now = async () => Number(await start.getAttribute('aria-valuenow'));
  const first = await now();
  await start.focus();
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Shift+ArrowRight');
  await expect.poll(now).toBe(first + 11);
  await expect(start).toBeFocused();
  const box = (await start.locator('.edge').boundingBox())!;
  const at = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  await page.mouse.move(at.x, at.y);
  await page.mouse.down();
  await page.mouse.move(at.x + 20, at.y, { steps: 4 });
  await page.mouse.up();
  await expect.poll(now).toBeGreaterThan(first + 12);
  const dragged = await now();
  const clock = await typed.inputValue();
  await typed.fill('nonsense');
  await typed.press('Enter');
  await expect(typed).toHaveValue(clock);
  const [h, m, s] = clock.split(':').map(Number);
  const earlier = new Date(2026, 0, 1, h, m, s! - 5).toTimeString().slice(0, 8);
  await typed.fill(earlier);
  await typed.press('Enter');
  await expect.poll(now).toBe(dragged - 5);
  expect(trials.complaints).toEqual([]);
});

test('a table is shown column by column before its runs are taken over', async ({ page }) => {
  const trials = new TrialsPage(page);
  await trials.open();
  const tracks = await trials.opened('tracks');
  const table = tracks.locator('homeleg-table-import');
  const text =
    'Date;Out (km/h);Back (km/h);Revs;Burn\n2026-06-20;9,1;8,5;2900;1,7\n2026-06-20;28,4;27;5000;3,8\n2026-06-20;fast;27;5000;3,8\n';
  await table.locator('input[type=file]').setInputFiles(file('day.csv', text, 'text/csv'));
  await expect(table.getByLabel('Meaning of Out (km/h)')).toHaveValue('speed-out');
  await expect(table.getByLabel('Unit of Burn')).toHaveValue('L/h');
  await expect(table).toContainText('2 rows make runs.');
  await expect(table.locator('.problems li')).toHaveCount(1);
  await table.getByLabel('Meaning of Revs').selectOption({ label: 'Not read' });
  await table.getByRole('button', { name: 'Take over 2 runs' }).click();
  await expect(trials.rows).toHaveCount(2);
  await expect(trials.rows.first()).toContainText('4.8 kn');
  await expect(trials.rows.first()).not.toContainText('rpm');
});

test('a file that is no track says so and changes nothing', async ({ page }) => {
  const trials = new TrialsPage(page);
  await trials.open();
  const tracks = await trials.opened('tracks');
  await tracks
    .locator('homeleg-track-import input[type=file]')
    .setInputFiles(file('notes.gpx', 'not a track', 'application/gpx+xml'));
  await expect(tracks.locator('.messages')).toContainText('notes.gpx: This is not a GPX file');
  await page
    .locator('homeleg-profile-card input[type=file]')
    .setInputFiles(file('boat.json', '{"format":"homeleg-profile","version":7}'));
  await expect(page.locator('homeleg-trials')).toContainText('This boat profile is of version 7');
  await expect(trials.rows).toHaveCount(0);
});

test('a refill takes its times from the trip in the planner', async ({ page }) => {
  const planner = new PlannerPage(page);
  await planner.open();
  await planner.example('Petrol catamaran, a day out');
  const trials = new TrialsPage(page);
  await trials.open();
  const refills = await trials.opened('refills');
  await refills.getByRole('button', { name: 'Add a refill' }).click();
  await refills.getByRole('button', { name: 'Take the times from the trip in the planner' }).click();
  await expect(refills).toContainText(/Times at \d+ speeds taken/);
  await refills.getByRole('textbox', { name: 'Put back' }).fill('6.4');
  await refills.getByRole('button', { name: 'Save' }).click();
  await expect(refills).toContainText('6.4 L put back after');
  await expect(trials.found).toContainText('1 run or refill counts');
  expect(trials.complaints).toEqual([]);
});

test('the run sheet prints alone, on one page', async ({ page }) => {
  const trials = new TrialsPage(page);
  await trials.open();
  const sheet = await trials.opened('sheet');
  await sheet.getByRole('button', { name: 'Propose a day' }).click();
  await expect(sheet.getByRole('heading', { name: /^Run sheet:/ })).toBeVisible();
  await page.evaluate(() => {
    globalThis.print = () => document.body.setAttribute('data-printed', '');
  });
  await sheet.getByRole('button', { name: 'Print the sheet' }).click();
  await expect(page.locator('body')).toHaveAttribute('data-printed', '');
  await page.emulateMedia({ media: 'print' });
  await expect(trials.found).toBeHidden();
  await expect(sheet.getByRole('heading', { name: /^Run sheet:/ })).toBeVisible();
  const pdf = (await page.pdf({ format: 'A4' })).toString('latin1');
  expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
  expect(trials.complaints).toEqual([]);
});

for (const colorScheme of ['light', 'dark'] as const) {
  test(`everything opened can be used by everybody, ${colorScheme} trials`, async ({ page }) => {
    test.slow();
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    const trials = new TrialsPage(page);
    await trials.open();
    await trials.sample();
    const tracks = await trials.opened('tracks');
    await tracks.getByRole('button', { name: 'Try the sample tracks' }).click();
    await expect(tracks).toContainText('runs out and back');
    await tracks.getByText('On a map').click();
    await expect(tracks.locator('homeleg-track-map .leaflet-pane path.track').first()).toBeAttached();
    const refills = await trials.opened('refills');
    await refills.getByRole('button', { name: 'Add a refill' }).click();
    const sheet = await trials.opened('sheet');
    await sheet.getByRole('button', { name: 'Propose a day' }).click();
    await expect(sheet.getByRole('heading', { name: /^Run sheet:/ })).toBeVisible();
    await page.getByRole('button', { name: 'Edit run 1' }).click();
    for (const table of await trials.found.getByText('As a table').all()) await table.click();
    const height = await page.evaluate(() => document.documentElement.scrollHeight);
    await page.setViewportSize({ width: 1280, height });
    const { violations } = await new AxeBuilder({ page })
      .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
      .analyze();
    const told = violations.flatMap(({ id, nodes }) =>
      nodes.map(({ target, failureSummary }) => `${id}: ${target} ${failureSummary}`),
    );
    expect(told).toEqual([]);
    expect(trials.complaints).toEqual([]);
    await page.setViewportSize({ width: 320, height: 700 });
    expect(await page.evaluate(() => document.documentElement.clientWidth - document.documentElement.scrollWidth)).toBe(
      0,
    );
  });
}
