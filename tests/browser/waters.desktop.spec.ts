import { readFileSync } from 'node:fs';
import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';

const haven = JSON.parse(readFileSync('shared/waters/haven.geojson', 'utf8'));
const OPEN = '.geojson,.json,application/geo+json,application/json';

async function open(page: Page) {
  await page.goto('/waters/');
  const editor = page.locator('homeleg-waters-editor');
  await expect(editor.locator('homeleg-waters-list').getByText('Nothing is drawn yet')).toBeVisible();
  await expect(editor.getByText('The map is loading')).toBeHidden();
  return editor;
}

async function give(page: Page, text: string, name = 'bay.geojson') {
  await page
    .locator(`homeleg-waters-editor input[accept="${OPEN}"]`)
    .setInputFiles({ name, mimeType: 'application/geo+json', buffer: Buffer.from(text) });
}

async function saved(page: Page): Promise<unknown> {
  const button = page.locator('homeleg-waters-editor').getByRole('button', { name: 'Save as a file' });
  const [file] = await Promise.all([page.waitForEvent('download'), button.click()]);
  return JSON.parse(readFileSync(await file.path(), 'utf8'));
}

test('waters are drawn, dated, kept and planned in by keys alone', async ({ page }) => {
  const editor = await open(page);
  const add = editor.getByRole('button', { name: /^Add: / });
  await add.press('Enter');
  const name = editor.getByLabel('Name', { exact: true }).first();
  await name.fill('Cold Rock');
  await name.press('Tab');
  const point = editor.getByLabel('One more point: latitude and longitude');
  for (const at of ['46.00, -32.00', '46.00, -31.99', '46.01, -31.99', '46.01, -32.00']) {
    await point.fill(at);
    await point.press('Enter');
    await expect(point).toHaveValue('');
  }
  await expect(editor.getByText('No errors: the planner reads these waters.')).toBeVisible();

  // What cannot be read is said beside the field, and stays as typed.
  await point.fill('over there');
  await point.press('Enter');
  await expect(editor.getByText('Write latitude and longitude')).toBeVisible();
  await expect(point).toHaveValue('over there');
  await point.fill('');
  await editor.getByRole('button', { name: 'Done' }).press('Enter');

  await editor.getByLabel('Add', { exact: true }).selectOption('Speed limit');
  await add.press('Enter');
  const limit = editor.getByLabel('Limit, knots through the water');
  await limit.fill('fast');
  await limit.press('Tab');
  await expect(limit).toHaveAttribute('aria-invalid', 'true');
  await expect(limit).toHaveAccessibleDescription(/must be a number of knots/);
  await expect(editor.getByText('at features.1.properties.limit_kn')).toBeVisible();
  await expect(limit).toHaveValue('fast');
  await editor.getByRole('button', { name: /^Delete 2: Speed limit/ }).press('Enter');

  const who = editor.getByLabel('Who answers for it', { exact: true });
  await who.fill('The boat club');
  await who.press('Tab');
  for (const [label, day] of [
    ['Surveyed on', '2026-04-01'],
    ['Holds until', '2026-03-01'],
  ] as const) {
    await editor.getByLabel(label).fill(day);
    await editor.getByLabel(label).blur();
  }
  await expect(editor.getByLabel('Holds until')).toHaveAccessibleDescription(/must not be before the survey/);
  await editor.getByLabel('Holds until').fill('2027-03-31');
  await editor.getByLabel('Holds until').blur();
  await editor.getByRole('button', { name: 'Box round everything drawn' }).press('Enter');
  await expect(editor.getByText('No errors: the planner reads these waters.')).toBeVisible();

  await editor.getByRole('button', { name: 'Undo' }).press('Enter');
  await expect(editor.getByLabel('West', { exact: true })).toHaveValue('');
  await editor.getByRole('button', { name: 'Redo' }).press('Enter');
  await expect(editor.getByLabel('West', { exact: true })).toHaveValue('-32.0005');

  expect(await saved(page)).toMatchObject({
    type: 'FeatureCollection',
    responsible: 'The boat club',
    surveyed: '2026-04-01',
    validUntil: '2027-03-31',
    bbox: [-32.0005, 45.9995, -31.9895, 46.0105],
    features: [
      {
        properties: { kind: 'land', name: 'Cold Rock' },
        geometry: {
          type: 'Polygon',
          coordinates: [
            [
              [-32, 46],
              [-31.99, 46],
              [-31.99, 46.01],
              [-32, 46.01],
              [-32, 46],
            ],
          ],
        },
      },
    ],
  });

  await editor.getByRole('button', { name: 'Plan in these waters' }).press('Enter');
  await editor.getByRole('link', { name: 'Go to the planner' }).press('Enter');
  const planner = page.locator('homeleg-planner');
  await expect(planner.getByText('Answered for by: The boat club.')).toBeVisible();
  await expect(planner.getByText('holds until March 31, 2027')).toBeVisible();

  // What was drawn waits on the device.
  await page.goBack();
  await expect(page.locator('homeleg-waters-editor').getByText('1: Land, Cold Rock')).toBeVisible();
});

test('a file with errors is opened, each told with its place and shown', async ({ page }) => {
  const editor = await open(page);
  await give(page, '{"type": "FeatureCollection",\n "features": [oops]}');
  await expect(editor.getByRole('alert')).toContainText('line 2, column 15');
  await expect(editor.getByText('What is on screen stays.')).toBeVisible();

  const spoilt = structuredClone(haven);
  spoilt.features[15].properties.limit_kn = 'four';
  spoilt.features[2].geometry.coordinates[0].pop();
  await give(page, JSON.stringify(spoilt));
  await expect(editor.getByText('2 errors: the planner does not read')).toBeVisible();
  await expect(editor.getByText('at features.2.geometry.coordinates.0')).toBeVisible();
  await expect(editor.getByRole('button', { name: 'Plan in these waters' })).toHaveAttribute('aria-disabled', 'true');
  await editor.getByRole('button', { name: 'Show 16: Speed limit, Marl Haven harbour' }).click();
  const limit = editor.getByLabel('Limit, knots through the water');
  await expect(limit).toHaveValue('four');
  await limit.fill('4');
  await limit.blur();
  await expect(editor.getByText('One error: the planner does not read')).toBeVisible();
  await editor.getByRole('button', { name: 'Show 3: Land, Ward Island' }).click();
  await expect(editor.getByRole('heading', { name: '3: Land, Ward Island' })).toBeVisible();
  await expect(editor.getByText(/an outline is not closed/).first()).toBeVisible();
});

test('what looks odd is pointed out: outlines that cross themselves, landings on land', async ({ page }) => {
  const editor = await open(page);
  const odd = structuredClone(haven);
  odd.features.push({
    type: 'Feature',
    properties: { kind: 'shoal', name: 'Bow tie' },
    geometry: {
      type: 'Polygon',
      coordinates: [
        [
          [-32.09, 45.955],
          [-32.08, 45.965],
          [-32.08, 45.955],
          [-32.09, 45.965],
          [-32.09, 45.955],
        ],
      ],
    },
  });
  const island = haven.features[2].geometry.coordinates[0];
  const [lon, lat] = [0, 1].map(
    (axis) => island.reduce((sum: number, at: number[]) => sum + at[axis]!, 0) / island.length,
  );
  odd.features.push({
    type: 'Feature',
    properties: { kind: 'landing', name: 'Hill top' },
    geometry: { type: 'Point', coordinates: [lon, lat] },
  });
  await give(page, JSON.stringify(odd));
  await expect(editor.getByText('2 things want a second look.')).toBeVisible();
  await expect(editor.getByText('The outline crosses itself.')).toBeVisible();
  await editor.getByRole('button', { name: 'Show 42: Landing, Hill top' }).click();
  await expect(editor.getByRole('heading', { name: '42: Landing, Hill top' })).toBeVisible();
});

test('an outline is drawn on the map by taps, and a feature is chosen there', async ({ page }) => {
  const editor = await open(page);
  await editor.getByRole('button', { name: 'Take the invented estuary' }).click();
  await expect(editor.getByText('haven: 40 features read.')).toBeVisible();
  await editor.getByLabel('Add', { exact: true }).selectOption('Keep out');
  await editor.getByRole('button', { name: 'Add: Keep out' }).click();
  await editor.getByLabel('Name', { exact: true }).first().fill('Nets');
  const frame = editor.locator('#frame');
  const { width, height } = (await frame.boundingBox())!;
  for (const [x, y, count] of [
    [0.2, 0.6, 1],
    [0.3, 0.6, 2],
    [0.3, 0.7, 3],
  ] as const) {
    await frame.click({ position: { x: width * x, y: height * y } });
    await expect(editor.getByText(`Points, latitude and longitude (${count} point`)).toBeVisible();
  }
  await editor.getByRole('button', { name: 'Done' }).click();
  await expect(editor.getByText('41: Keep out, Nets')).toBeVisible();
  await expect(editor.getByText('No errors: the planner reads these waters.')).toBeVisible();
  await frame.click({ position: { x: width * 0.29, y: height * 0.62 } });
  await expect(editor.getByRole('heading', { name: '41: Keep out, Nets' })).toBeVisible();
});

test('a fleet file is checked beside the waters, takes them in and is saved', async ({ page }) => {
  const editor = await open(page);
  await editor.getByRole('button', { name: 'Take the invented estuary' }).click();
  await expect(editor.getByText('haven: 40 features read.')).toBeVisible();
  const fleet = page.locator('homeleg-fleet-editor');
  const file = fleet.locator('input[type=file]');
  const demo = JSON.parse(readFileSync('shared/craft/hire-fleet.json', 'utf8'));
  const giveFleet = (value: object) =>
    file.setInputFiles({ name: 'f.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(value)) });
  await giveFleet({ ...demo, until: '2020-01-01', boats: [{ ...demo.boats[0], speed: 'fast' }] });
  await expect(fleet.getByRole('alert')).toContainText('boats.0.speed');
  await giveFleet({ $schema: 'https://boats.example/schemas/fleet.json', ...demo, name: 'Our desk' });
  await expect(fleet.getByLabel('Name of the desk')).toHaveValue('Our desk');
  await fleet.getByRole('button', { name: 'Put these waters and their set routes into the fleet' }).click();
  await expect(fleet.getByText('The fleet now carries these waters. Save it as a file.')).toBeVisible();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    fleet.getByRole('button', { name: 'Save the fleet as a file' }).click(),
  ]);
  const written = JSON.parse(readFileSync(await download.path(), 'utf8'));
  expect(written).toMatchObject({ name: 'Our desk', localWaters: { validUntil: haven.validUntil } });
});

test('the schemas are there, and the page is usable by everybody with a feature open', async ({ page, request }) => {
  for (const name of ['trip', 'profile', 'waters', 'fleet', 'saved', 'desk']) {
    const answer = await request.get(`/schemas/${name}.json`);
    expect(answer.status()).toBe(200);
    expect((await answer.json()).$id).toContain(`/schemas/${name}.json`);
  }
  const editor = await open(page);
  await editor.getByRole('button', { name: 'Take the invented estuary' }).click();
  await editor.getByRole('button', { name: 'Change 30: Stream place, Off the west cliffs' }).click();
  await expect(editor.getByLabel('Row 1: Sets towards, °')).toHaveValue('275');
  for (const width of [1280, 320]) {
    await page.setViewportSize({ width, height: 900 });
    const spare = await page.evaluate(
      () => document.documentElement.clientWidth - document.documentElement.scrollWidth,
    );
    expect(spare).toBe(0);
    const { violations } = await new AxeBuilder({ page })
      .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
      .analyze();
    expect(violations.map(({ id, nodes }) => `${id} ${nodes[0]?.target}`)).toEqual([]);
  }
});
