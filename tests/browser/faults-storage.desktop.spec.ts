/** What another version kept, or what was damaged, costs nothing and is told; nothing takes its place unasked. */
import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { aHire, aMorning, NOON } from '../core/hire/examples.ts';
import { DeskPage, ZONE } from './desk-page.ts';
import { keptIn, layDatabase, layText, NOW, texts } from './kept-page.ts';
import { PlannerPage } from './planner-page.ts';

test.use({ timezoneId: ZONE });

const day = JSON.parse(readFileSync(new URL('../../shared/trips/petrol-day.json', import.meta.url), 'utf8'));
const out = { ...aHire(), leftAt: NOON - 1800, due: NOON + 5400 };
const saved = { id: 's1', kind: 'trip', name: 'Day kept', savedAt: '2026-07-15T09:00:00.000Z', trip: day };

const DAMAGED = [
  ['cut off', '{"trip":{"version":1,"name":"Our d'],
  ['of a later version', '{"trip":{"version":9},"profile":{"format":"homeleg-profile","version":9},"at":"noon"}'],
  ['something else', '"<img src=x onerror=alert(1)>"'],
] as const;

/** What the page says of itself to those who read along. */
function complaints(page: Page): string[] {
  const all: string[] = [];
  page.on('pageerror', (error) => all.push(String(error)));
  page.on('dialog', (dialog) => all.push(dialog.message()));
  return all;
}

async function savedCard(page: Page) {
  const card = page.locator('homeleg-planner details#saved');
  await card.locator('> summary').press('Enter');
  return card;
}

for (const [how, text] of DAMAGED) {
  test.describe(`kept text that is ${how}`, () => {
    test('in place of the planner’s trip is told and put by, and a trip is planned', async ({ page }) => {
      const found = complaints(page);
      await layText(page, 'homeleg-trip', text);
      const planner = new PlannerPage(page);
      await planner.open();
      await expect(page.getByText('comes from another version and could not be read')).toBeVisible();
      await planner.example('Petrol catamaran, a day out');
      await expect(planner.verdict).toHaveText('Home with reserve');
      await expect.poll(async () => (await texts(page)).some((kept) => kept.includes('waypoints'))).toBe(true);
      expect(await texts(page)).toContain(text);
      expect(found).toEqual([]);
    });

    test('in place of the trip put by when a link came is no trip, and stays out of the way', async ({ page }) => {
      const found = complaints(page);
      await layText(page, 'homeleg-trip-aside', text);
      const planner = new PlannerPage(page);
      await planner.open();
      await planner.example('Petrol catamaran, a day out');
      await expect(planner.verdict).toHaveText('Home with reserve');
      expect(found).toEqual([]);
    });

    test('in place of the trials is told and put by, and a run can be added', async ({ page }) => {
      const found = complaints(page);
      await layText(page, 'homeleg-trials', text);
      await page.goto('/trials/');
      await expect(page.getByText('comes from another version and could not be read')).toBeVisible();
      await page.getByRole('button', { name: 'Load a sample' }).press('Enter');
      await expect(page.getByText('Sample loaded')).toBeVisible();
      await expect.poll(async () => (await texts(page)).some((kept) => kept.includes('homeleg-profile","'))).toBe(true);
      expect(await texts(page)).toContain(text);
      expect(found).toEqual([]);
    });

    test('in place of the ticks of a checklist leaves nothing ticked, and the next tick is kept', async ({ page }) => {
      const found = complaints(page);
      await layText(page, 'homeleg-checklist-before-launch', text);
      await page.goto('/checklists/before-launch/');
      await expect(page.getByRole('checkbox', { checked: true })).toHaveCount(0);
      await page.getByRole('checkbox').first().check();
      await page.reload();
      await expect(page.getByRole('checkbox', { checked: true })).toHaveCount(1);
      expect(found).toEqual([]);
    });

    test('in place of the language leaves the page in its own, and another one can be chosen', async ({ page }) => {
      const found = complaints(page);
      await layText(page, 'homeleg-language', text);
      await page.goto('/checklists/');
      await expect(page.locator('html')).toHaveAttribute('lang', 'en');
      await page.getByRole('navigation', { name: 'Language' }).getByRole('link', { name: /^DE/ }).click();
      await expect(page.locator('html')).toHaveAttribute('lang', 'de');
      await page.goto('/checklists/');
      await expect(page.locator('html')).toHaveAttribute('lang', 'de');
      expect(found).toEqual([]);
    });
  });
}

test('notes of a passage that cannot be read are told and put by, and new ones are kept', async ({ page }) => {
  const found = complaints(page);
  const text = '{"who":"Two of us, both in blu';
  await layText(page, 'homeleg-passage', text);
  const planner = new PlannerPage(page);
  await planner.open();
  await planner.example('Petrol catamaran, a day out');
  await page.locator('homeleg-planner details#passage > summary').press('Enter');
  const passage = page.locator('homeleg-passage-plan');
  await expect(passage.getByText('comes from another version and could not be read')).toBeVisible();
  await passage.getByRole('textbox').first().fill('Three of us');
  await expect.poll(async () => (await texts(page)).some((kept) => kept.includes('Three of us'))).toBe(true);
  expect(await texts(page)).toContain(text);
  expect(found).toEqual([]);
});

test('a desk with records that cannot be read shows the others, says how many are missing, and leaves them', async ({
  page,
}) => {
  const found = complaints(page);
  await page.clock.install({ time: NOON * 1000 });
  const broken = [
    { store: 'hires', value: { id: 'later', boat: { from: 'a later version' } } },
    { store: 'fuel-notes', value: { id: 'n', refill: 'much' } },
    { store: 'desk', key: 'fleet', value: 'none' },
    { store: 'desk', key: 'morning', value: { until: 'soon' } },
    { store: 'desk', key: 'units', value: { system: 9 } },
  ];
  await layDatabase(page, NOW, [...broken, { store: 'hires', value: out }]);
  const on = new DeskPage(page);
  await on.open();
  await expect(on.desk.getByText('4 entries kept on this computer cannot be read')).toBeVisible();
  await on.show('Boats out (1)');
  await on.desk.getByRole('button', { name: 'Returned' }).press('Enter');
  await on.desk.getByRole('button', { name: 'Note the return' }).press('Enter');
  await expect(on.desk.getByText('No boat is out.')).toBeVisible();
  expect(await keptIn(page, 'hires')).toContainEqual(broken[0]!.value);
  expect(await keptIn(page, 'desk')).toHaveLength(3);
  expect(found).toEqual([]);
});

test('saved trips that cannot be read are counted and stay; the others open', async ({ page }) => {
  const found = complaints(page);
  const later = { id: 'x', kind: 'voyage', name: 'Of a later version' };
  await layDatabase(page, NOW, [
    { store: 'saved', value: later },
    { store: 'saved', value: saved },
  ]);
  const planner = new PlannerPage(page);
  await planner.open();
  const card = await savedCard(page);
  await expect(card.getByText('1 entry comes from another version')).toBeVisible();
  await card.getByRole('button', { name: 'Open: Day kept' }).press('Enter');
  await expect(planner.verdict).toHaveText('Home with reserve');
  expect(await keptIn(page, 'saved')).toContainEqual(later);
  expect(found).toEqual([]);
});

test('waters being drawn that cannot be read are told and put by', async ({ page }) => {
  const found = complaints(page);
  await layDatabase(page, NOW, [
    { store: 'waters', key: 'draft', value: 'of a later version' },
    { store: 'waters', key: 'planned', value: 'of a later version' },
  ]);
  await page.goto('/waters/');
  await expect(page.getByText('comes from another version and could not be read')).toBeVisible();
  await page.getByRole('button', { name: 'Take the invented estuary' }).press('Enter');
  await expect.poll(async () => JSON.stringify(await keptIn(page, 'waters'))).toContain('FeatureCollection');
  expect((await keptIn(page, 'waters')).filter((kept) => kept === 'of a later version')).toHaveLength(2);
  await page.goto('/?waters=drawn');
  const planner = new PlannerPage(page);
  await planner.example('Petrol catamaran, a day out');
  await expect(planner.verdict).toHaveText('Home with reserve');
  expect(found).toEqual([]);
});

for (const version of [1, 2]) {
  test(`a desk kept by version ${version} of the database has its boat out, its morning and its notes`, async ({
    page,
  }) => {
    await page.clock.install({ time: NOON * 1000 });
    const records = [
      { store: 'hires', value: out },
      { store: 'desk', key: 'morning', value: aMorning() },
      ...(version > 1 ? [{ store: 'saved', value: saved }] : []),
    ];
    await layDatabase(page, version, records);
    const on = new DeskPage(page);
    await on.open();
    await expect(on.desk.getByText(/^Set for today until/)).toBeVisible();
    await on.show('Boats out (1)');
    await expect(on.desk.locator('homeleg-out-list').getByText('Open hull', { exact: true })).toBeVisible();
    const planner = new PlannerPage(page);
    await planner.open();
    const card = await savedCard(page);
    await expect(card.getByRole('button', { name: 'Save this trip' })).toBeVisible();
    await expect(card.getByRole('button', { name: 'Open: Day kept' })).toHaveCount(version - 1);
    expect(await keptIn(page, 'hires')).toEqual([out]);
  });
}

test('what a newer version keeps is told as that, wherever it is missing, and stays', async ({ page }) => {
  const found = complaints(page);
  await page.clock.install({ time: NOON * 1000 });
  await layDatabase(page, NOW, [
    { store: 'hires', value: out },
    { store: 'saved', value: saved },
  ]);
  await layDatabase(page, NOW + 6, []);
  const on = new DeskPage(page);
  await on.open();
  await expect(on.desk.getByText('boats that are out may be missing here')).toBeVisible();
  // The desk goes on meanwhile.
  await on.setMorning();
  await on.check();
  await expect(on.answer).toHaveText('You can go');
  const planner = new PlannerPage(page);
  await planner.open();
  const card = await savedCard(page);
  await expect(card.getByRole('alert')).toContainText('A newer version of this page keeps the trips here');
  expect(await keptIn(page, 'hires')).toEqual([out]);
  expect(found).toEqual([]);
});

test('a tab of an older version that holds the database is told of, and once it is closed all is there', async ({
  page,
  context,
}) => {
  await page.clock.install({ time: NOON * 1000 });
  await layDatabase(
    page,
    2,
    [
      { store: 'hires', value: out },
      { store: 'saved', value: saved },
    ],
    true,
  );
  const desk = await context.newPage();
  await desk.clock.install({ time: NOON * 1000 });
  await desk.goto('/hire/');
  await expect(desk.getByRole('alert')).toContainText('An older page of this site is open in another tab');
  const trips = await context.newPage();
  await new PlannerPage(trips).open();
  const card = await savedCard(trips);
  await expect(card.getByRole('alert')).toContainText('An older page of this site is open in another tab');
  await card.getByLabel('Name', { exact: true }).fill('Saved meanwhile');
  await card.getByRole('button', { name: 'Save this trip' }).press('Enter');
  await page.close();
  await expect(desk.getByRole('button', { name: 'Boats out (1)' })).toBeVisible();
  await expect(card.getByRole('button', { name: 'Open: Day kept' })).toBeVisible();
  await expect(card.getByRole('button', { name: 'Open: Saved meanwhile' })).toBeVisible();
});
