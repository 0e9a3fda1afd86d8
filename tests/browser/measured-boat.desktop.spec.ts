import AxeBuilder from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import petrolDay from '../../shared/trips/petrol-day.json' with { type: 'json' };
import { writeProfile } from '../../src/core/files/profile-file.ts';
import { readTrip } from '../../src/core/files/trip-schema.ts';
import { parametersOf } from '../../src/core/trials/parameters.ts';
import type { BoatProfile } from '../../src/core/trials/shapes.ts';
import { crewOf, planned, sailed, trialsOf } from '../core/trials/made-trials.ts';
import { PlannerPage } from './planner-page.ts';

/** The boat of the petrol example, measured: it drags and drinks less than boats like it. */
function thriftyBoat(): BoatProfile {
  const trip = readTrip(petrolDay);
  if (!trip.ok) throw new Error('the example trip cannot be read');
  const crews = [crewOf(['helm']), crewOf(['helm', 'seat-fore-port', 'seat-fore-starboard'])];
  const runs = crews.flatMap((crew, i) =>
    [2, 5, 6, 7, 8, 9].map((speed) => planned(`${i} ${speed}`, crew, speed, { day: '2026-06-14' })),
  );
  const trials = trialsOf(trip.value.craft, runs, { measuredBy: 'the club' });
  const better: Record<string, number> = { kd: 0.9, kp: 0.85, fuel: 0.92 };
  const truth = parametersOf(trials).list.map(({ factor, mean }) => better[factor] ?? mean);
  return {
    format: 'homeleg-profile',
    version: 1,
    name: 'the club boat',
    usual: 'usual',
    trials: sailed(trials, truth),
  };
}

const file = (name: string, text: string) => ({ name, mimeType: 'application/json', buffer: Buffer.from(text) });

test('a measured boat makes a trip go that an unmeasured one could not, and says why', async ({ page }) => {
  const planner = new PlannerPage(page);
  await planner.open();
  const short = { ...petrolDay, load: { ...petrolDay.load, fill: 0.74 } };
  const picker = page.locator('homeleg-trip-tools input[type=file]');
  await picker.setInputFiles(file('trip.json', JSON.stringify(short)));
  await expect(planner.verdict).toHaveText('Not like this');
  await picker.setInputFiles(file('boat.json', writeProfile(thriftyBoat())));
  await expect(planner.verdict).toHaveText('Home with reserve');
  const note = page.locator('homeleg-measured-note');
  await expect(note).toContainText('Measured boat: 12 runs and refills count');
  await expect(note).toContainText('Measured by the club, last on June 14, 2026');
  await expect(page.locator('homeleg-trip-details')).toContainText('Consumption from trial runs of this boat');
  const axe = await new AxeBuilder({ page }).include('homeleg-planner').analyze();
  expect(axe.violations).toEqual([]);
  // A reload keeps the boat measured; without its trials the old answer is back, and that can be taken back.
  await page.reload();
  await expect(planner.verdict).toHaveText('Home with reserve');
  await note.getByRole('button', { name: 'Plan without these trials' }).click();
  await expect(planner.verdict).toHaveText('Not like this');
  await page.getByRole('button', { name: 'Take back' }).click();
  await expect(planner.verdict).toHaveText('Home with reserve');
  // Weed on the bottom is not what was measured.
  await planner.card('boat').getByLabel('Bottom of the boat').selectOption('weed');
  await expect(planner.verdict).not.toHaveText('Home with reserve');
  expect(planner.complaints).toEqual([]);
});

test('a boat profile of an unknown version is refused in words and changes nothing', async ({ page }) => {
  const planner = new PlannerPage(page);
  await planner.open();
  const picker = page.locator('homeleg-trip-tools input[type=file]');
  await picker.setInputFiles(file('boat.json', JSON.stringify({ ...thriftyBoat(), version: 9 })));
  await expect(page.locator('homeleg-planner')).toContainText('This boat profile is of version 9');
  await expect(page.locator('homeleg-measured-note')).toHaveCount(0);
});

test('a link brings its measured boat, and a dead one says so', async ({ page }) => {
  await page.route(/\d\/club-boat\.json$/, (route) =>
    route.fulfill({ contentType: 'application/json', body: writeProfile(thriftyBoat()) }),
  );
  await page.goto('/?boat=/club-boat.json');
  await expect(page.locator('homeleg-measured-note')).toContainText('12 runs and refills count');
  await page.goto('/?boat=/no-such-boat.json');
  await expect(page.locator('homeleg-planner')).toContainText('The boat of this page could not be loaded');
});
