/** What is worked out beside the page still comes when the worker that does it is lost, and the page goes on as before. */
import { expect, type Page, test } from '@playwright/test';
import { DeskPage } from './desk-page.ts';
import { PlannerPage } from './planner-page.ts';

interface Loss {
  /** How the worker is lost. */
  readonly how: string;
  readonly script?: string;
  /** Nothing but time tells. */
  readonly silent?: true;
}

const LOSSES: readonly Loss[] = [
  { how: 'cannot be loaded' },
  { how: 'fails as it begins', script: 'throw new Error("no")' },
  { how: 'fails at its work', script: 'addEventListener("message", () => { throw new Error("no"); })' },
  { how: 'never answers', script: 'addEventListener("message", () => {})', silent: true },
];
const HARDEST = LOSSES.filter(({ script, silent }) => !script || silent);

/** From here on no worker of the page does its work. */
async function lose(page: Page, { script, silent }: Loss): Promise<() => Promise<void>> {
  if (silent) await page.clock.install();
  await page.route(/-worker-[^/]*\.js$/, (route) =>
    script === undefined ? route.abort() : route.fulfill({ contentType: 'text/javascript', body: script }),
  );
  // Longer than anybody waits for a worker that says nothing.
  return async () => {
    if (silent) await page.clock.fastForward(30_000);
  };
}

const sure = (page: Page) => page.locator('homeleg-further details.sure').first();
const played = (page: Page) => sure(page).getByText(/Played: reserve whole in about \d\d of 100/);

async function playable(page: Page): Promise<PlannerPage> {
  const planner = new PlannerPage(page);
  await planner.open();
  await planner.example('Petrol catamaran, a day out');
  await page.locator('#further > summary').press('Enter');
  await sure(page).locator('> summary').press('Enter');
  return planner;
}

async function play(page: Page): Promise<void> {
  await sure(page).getByRole('button', { name: 'Play it 10,000 times' }).press('Enter');
}

/** The next change of the trip is planned as ever. */
async function nextEdit(planner: PlannerPage): Promise<void> {
  const before = (await planner.plan()).need.median;
  const card = planner.card('aboard');
  await card.getByRole('button', { name: 'Half' }).press('Enter');
  await planner.example('Electric tender');
  await expect.poll(async () => (await planner.plan()).need.median).not.toBe(before);
}

test.describe('a trip is played over to its end, with the same outcome, though the worker', () => {
  for (const loss of LOSSES) {
    test(loss.how, async ({ page }) => {
      await playable(page);
      await play(page);
      const usual = await played(page).textContent();
      const waited = await lose(page, loss);
      const planner = await playable(page);
      const trip = await planner.gist();
      const asked = page.waitForRequest(/play-worker/);
      await play(page);
      await asked;
      await expect(sure(page).getByRole('progressbar')).toBeVisible();
      await waited();
      await expect(played(page)).toHaveText(usual ?? '');
      expect(await planner.gist()).toEqual(trip);
      await nextEdit(planner);
    });
  }

  test('is ended after its first word', async ({ page }) => {
    await page.clock.install();
    await page.addInitScript(() => {
      const Whole = Worker;
      globalThis.Worker = class extends Whole {
        constructor(address: string | URL, options?: WorkerOptions) {
          super(address, options);
          this.addEventListener('message', () => {
            this.terminate();
            document.title = 'ended';
          });
        }
      };
    });
    const planner = await playable(page);
    const trip = await planner.gist();
    await play(page);
    await expect(page).toHaveTitle('ended');
    await page.clock.fastForward(30_000);
    await expect(played(page)).toBeVisible();
    expect(await planner.gist()).toEqual(trip);
    await nextEdit(planner);
  });
});

for (const loss of HARDEST) {
  test.describe(`with a worker that ${loss.how}`, () => {
    test('the boats that suit a use are found, and found again for another use', async ({ page }) => {
      const waited = await lose(page, loss);
      const suit = page.locator('homeleg-suit');
      const asked = page.waitForRequest(/suit-worker/);
      await page.goto('/suit/');
      await asked;
      await waited();
      const heading = suit.getByRole('heading', { level: 2 });
      await expect(heading).toHaveText(/of these boats/);
      const first = await heading.textContent();
      const again = page.waitForRequest(/suit-worker/);
      await suit.getByLabel('Weights of everyone').fill('95, 95, 95, 95');
      await again;
      await waited();
      await expect(heading).not.toHaveText(first ?? '');
      await expect(suit.getByLabel('Weights of everyone')).toHaveValue('95, 95, 95, 95');
    });

    test('loads are set against engines', async ({ page }) => {
      const waited = await lose(page, loss);
      const asked = page.waitForRequest(/table-worker/);
      await page.goto('/engines/');
      await asked;
      await waited();
      await expect(page.locator('homeleg-load-table').getByRole('row', { name: /^4 people/ })).toContainText(
        'Does not plane',
      );
    });

    test('a hire desk gets its season card', async ({ page }) => {
      const waited = await lose(page, loss);
      const on = new DeskPage(page);
      await on.open();
      await on.show('Season card');
      const asked = page.waitForRequest(/card-worker/);
      await on.desk.getByRole('button', { name: 'Work out the card' }).press('Enter');
      await asked;
      await waited();
      await expect(on.desk.getByRole('button', { name: 'Print the card' })).toBeVisible();
    });

    test('a recorded track is read', async ({ page }) => {
      const waited = await lose(page, loss);
      await page.goto('/trials/');
      await page.getByRole('button', { name: 'Load a sample' }).press('Enter');
      await expect(page.getByText('Sample loaded')).toBeVisible();
      const tracks = page.locator('homeleg-trials details#tracks');
      await tracks.locator(':scope > summary').press('Enter');
      const asked = page.waitForRequest(/track-worker/);
      await tracks
        .locator('homeleg-track-import input[type=file]')
        .setInputFiles('shared/trials-demo/track-two-aboard.gpx');
      await asked;
      await waited();
      await expect(tracks.getByRole('group', { name: 'Run A', exact: true })).toBeVisible();
    });
  });
}
