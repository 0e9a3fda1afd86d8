/** Every reader of the site is given files whose names would run or lead away: they are text, and what is no file is refused. */
import { readFileSync } from 'node:fs';
import { expect, type Locator, type Page, test } from '@playwright/test';
import { savedFileText } from '../../src/core/files/saved-file.ts';
import { DeskPage } from './desk-page.ts';
import { PlannerPage } from './planner-page.ts';

const shared = (name: string): string => readFileSync(new URL(`../../shared/${name}`, import.meta.url), 'utf8');

/** All in one: whichever way a page might take a name for more than text. */
const NAME =
  '"><img src=/x onerror="homelegRan=1"><script>homelegRan=1</script><svg onload=homelegRan=1><a href=javascript:homelegRan=1>';
const NAMING = new Set([
  'name',
  'label',
  'title',
  'answers',
  'responsible',
  'note',
  'about',
  'area',
  'call',
  'measuredBy',
]);

/** The same file with its names in place of which stands one that is meant to run. */
function renamed(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(renamed);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, inner]) => [
      key,
      typeof inner === 'string' && NAMING.has(key) ? NAME : renamed(inner),
    ]),
  );
}
const json = (text: string): string => JSON.stringify(renamed(JSON.parse(text)));
const escaped = NAME.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

/** What is no such file at all. */
const HOSTILE: readonly string[] = [
  '<!doctype html><script>homelegRan = 1</script><meta http-equiv="refresh" content="0;url=/x">',
  `<?xml version="1.0"?><!DOCTYPE gpx [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;"><!ENTITY x SYSTEM "/x">]><gpx><trk><name>&b;&x;</name></trk></gpx>`,
  '['.repeat(60_000),
  '{"version":1,"__proto__":{"homelegRan":1},"constructor":{"prototype":{"homelegRan":1}}}',
  `{"version":${'9'.repeat(60_000)}}`,
];

interface Reader {
  readonly name: string;
  readonly file: string;
  readonly text: string;
  /** Comes to the reader; gives its picker. */
  open(page: Page): Promise<Locator>;
  /** What is pressed for a file to be taken over. */
  take?(page: Page): Promise<void>;
  /** Where the reader stands: there a name is shown, or a refusal told. */
  readonly where: string;
}

async function planner(page: Page): Promise<Locator> {
  await new PlannerPage(page).open();
  return page.locator('homeleg-trip-tools input[type=file]');
}

async function fleet(page: Page, label: string): Promise<Locator> {
  const on = new DeskPage(page);
  await on.open();
  await on.show('Fleet and data');
  return on.desk.getByLabel(label);
}

async function tracks(page: Page, picker: string): Promise<Locator> {
  await page.goto('/trials/');
  await page.getByRole('button', { name: 'Load a sample' }).press('Enter');
  await expect(page.getByText('Sample loaded')).toBeVisible();
  const card = page.locator('homeleg-trials details#tracks');
  await card.locator(':scope > summary').press('Enter');
  return card.locator(picker);
}

const READERS: readonly Reader[] = [
  {
    name: 'a trip',
    file: 'trip.json',
    text: json(shared('trips/petrol-day.json')),
    open: planner,
    where: 'homeleg-planner',
  },
  {
    name: 'a measured boat',
    file: 'boat.json',
    text: json(shared('trials-demo/sample-boat.json')),
    open: planner,
    where: 'homeleg-planner',
  },
  {
    name: 'saved trips',
    file: 'saved.json',
    text: savedFileText([
      {
        kind: 'trip',
        name: NAME,
        savedAt: '2026-07-15T09:00:00Z',
        trip: JSON.parse(json(shared('trips/petrol-day.json'))),
      },
    ]),
    open: async (page) => {
      await new PlannerPage(page).open();
      const card = page.locator('homeleg-planner details#saved');
      await card.locator('> summary').press('Enter');
      return card.getByLabel('Bring in a file');
    },
    where: 'homeleg-saved',
  },
  {
    name: 'a fleet',
    file: 'fleet.json',
    text: json(shared('craft/hire-fleet.json')),
    open: (page) => fleet(page, 'Load a fleet file'),
    where: 'homeleg-hire-desk',
  },
  {
    name: 'what a desk kept',
    file: 'desk.json',
    text: JSON.stringify({
      format: 'homeleg-desk',
      version: 1,
      fleet: JSON.parse(json(shared('craft/hire-fleet.json'))),
      hires: [],
      fuelNotes: [],
    }),
    open: (page) => fleet(page, 'Load such a file'),
    take: (page) => page.getByRole('button', { name: 'Replace everything' }).press('Enter'),
    where: 'homeleg-hire-desk',
  },
  {
    name: 'waters',
    file: 'waters.geojson',
    text: json(shared('waters/haven.geojson')),
    open: async (page) => {
      await page.goto('/waters/');
      return page.locator('homeleg-waters-editor input[type=file]').first();
    },
    where: 'homeleg-waters-editor',
  },
  {
    name: 'a recorded track',
    file: 'track.gpx',
    text: shared('trials-demo/track-two-aboard.gpx').replace('Invented trial, two aboard', escaped),
    open: (page) => tracks(page, 'homeleg-track-import input[type=file]'),
    where: 'homeleg-trials',
  },
  {
    name: 'a table of runs',
    file: 'day.csv',
    text: `Date;Out (km/h);Back (km/h);"${NAME.replaceAll('"', '""')}"\n2026-06-20;9,1;8,5;"${NAME.replaceAll('"', '""')}"\n`,
    open: (page) => tracks(page, 'homeleg-table-import input[type=file]'),
    where: 'homeleg-trials',
  },
  {
    name: 'a forecast',
    file: 'wind.csv',
    text: `time,dir,speed,"${NAME.replaceAll('"', '""')}"\n2027-06-19T08:00:00-02:00,225,5,"${NAME.replaceAll('"', '""')}"\n`,
    open: async (page) => {
      const on = new PlannerPage(page);
      await on.open();
      await on.example('Petrol catamaran, a day out');
      const day = on.card('day');
      if ((await day.getAttribute('open')) === null) await day.locator('> summary').press('Enter');
      const form = page.locator('homeleg-conditions-form');
      await form
        .locator('homeleg-flow-field[kind=wind]')
        .locator('label.choice', { hasText: 'By time' })
        .first()
        .click();
      await form.locator('summary', { hasText: 'Take from a file' }).click();
      return day.locator('homeleg-forecast-import input[type=file]');
    },
    where: 'homeleg-planner',
  },
];

for (const reader of READERS) {
  test(`nothing runs and nothing leads away out of a file: ${reader.name}`, async ({ page, baseURL }) => {
    const strays: string[] = [];
    page.on('request', (request) => {
      const { origin, pathname } = new URL(request.url());
      // Pictures made on the page have addresses of their own.
      if ((origin !== baseURL && origin !== 'null') || pathname === '/x') strays.push(request.url());
    });
    page.on('dialog', (dialog) => strays.push(dialog.message()));
    page.on('popup', (popup) => strays.push(popup.url()));
    page.on('pageerror', (error) => strays.push(String(error)));
    await page.addInitScript(() => {
      const seen: string[] = [];
      Object.assign(globalThis, { homelegSeen: seen });
      // A script that is tried and stopped by the policy of the page shows here.
      document.addEventListener('securitypolicyviolation', ({ violatedDirective, sample }) =>
        seen.push(`${violatedDirective} ${sample}`),
      );
    });
    const picker = await reader.open(page);
    page.on('framenavigated', (frame) => strays.push(`went to ${frame.url()}`));
    const where = page.locator(reader.where).first();
    const give = (text: string) =>
      picker.setInputFiles({ name: reader.file, mimeType: 'text/plain', buffer: Buffer.from(text) });

    for (const text of HOSTILE) {
      await give(text);
      await expect.poll(() => picker.evaluate((input: HTMLInputElement) => input.files?.length)).toBe(0);
      await expect(where).toBeVisible();
    }
    await give(reader.text);
    await reader.take?.(page);
    await expect(where.getByText('homelegRan', { exact: false }).first()).toBeAttached();
    expect(await page.evaluate(() => 'homelegRan' in globalThis || 'homelegRan' in {})).toBe(false);
    expect(await page.evaluate(() => (globalThis as unknown as { homelegSeen: string[] }).homelegSeen)).toEqual([]);
    await expect(page.locator('img[src="/x"], svg[onload], a[href^="javascript"]')).toHaveCount(0);
    expect(strays).toEqual([]);
  });
}
