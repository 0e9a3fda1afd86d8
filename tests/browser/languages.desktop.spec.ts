import { expect, test } from '@playwright/test';

test('a German page speaks German, in its texts, its elements and its figures', async ({ page }) => {
  await page.goto('/de/');
  await expect(page.locator('html')).toHaveAttribute('lang', 'de');
  await expect(page.getByRole('link', { name: 'Checklisten', exact: true }).first()).toHaveAttribute(
    'href',
    '/de/checklists/',
  );
  const planner = page.locator('homeleg-planner');
  await planner.getByRole('combobox', { name: 'Beispielfahrten' }).selectOption({ label: 'Mietboot, drei Stunden' });
  await expect(planner.locator('#answer homeleg-answer h2')).toHaveText(
    /Zurück mit Reserve|Nicht sicher genug|So nicht/,
  );
  await expect(planner.locator('#answer homeleg-answer .left')).toContainText(/\d,\d\sL/);
  await expect(planner.locator('#answer homeleg-answer .cautions')).toContainText('Es gilt der englische Wortlaut');
});

test('nothing English is left on the German planner, but what is said to be', async ({ page }) => {
  await page.goto('/de/');
  const planner = page.locator('homeleg-planner');
  await planner.getByRole('combobox', { name: 'Beispielfahrten' }).selectOption({ index: 1 });
  await expect(planner.locator('#answer homeleg-answer h2')).toHaveText(
    /Zurück mit Reserve|Nicht sicher genug|So nicht/,
  );
  const text = await planner.evaluate((root) => {
    const said: string[] = [];
    const walk = (node: Node) => {
      if (node instanceof Text) said.push(node.data);
      if (node instanceof Element && node.shadowRoot) walk(node.shadowRoot);
      for (const child of node.childNodes) if (!/^(STYLE|SCRIPT)$/.test(child.nodeName)) walk(child);
    };
    walk(root.shadowRoot!);
    return said.join('\n');
  });
  expect(
    text.split('\n').filter((line) => /\b(the|with|not|your|of|and|from)\b/i.test(line.replaceAll('The Gut', ''))),
  ).toEqual([]);
});

test('two elements on one page speak two languages, each its own to the end', async ({ page }) => {
  await page.goto('/suit/');
  const english = page.locator('homeleg-suit').first();
  await page.evaluate(() => {
    const frame = document.createElement('div');
    frame.lang = 'de-AT';
    frame.append(document.createElement('homeleg-suit'));
    document.querySelector('main .inner')!.append(frame);
  });
  const german = page.locator('[lang="de-AT"] homeleg-suit');
  await expect(german.getByLabel('Gewichte aller')).toBeVisible();
  await expect(english.getByLabel('Weights of everyone')).toBeVisible();
  await german.getByLabel('Gewichte aller').fill('85,5 70');
  await english.getByLabel('Weights of everyone').fill('85, none');
  await expect(english.getByText('Type up to twelve weights')).toBeVisible();
  await expect(german.getByText('Bis zu zwölf Gewichte')).toHaveCount(0);
  await german.getByLabel('Gewichte aller').fill('85, keine');
  await expect(german.getByText('Bis zu zwölf Gewichte')).toBeVisible();
  await page.evaluate(() => document.querySelector('[lang="de-AT"]')!.setAttribute('lang', 'en'));
  await expect(page.getByText('Type up to twelve weights')).toHaveCount(2);
});

test('the language is switched with one press, keeps the trip, and holds on this device', async ({ page }) => {
  await page.goto('/');
  const planner = page.locator('homeleg-planner');
  await planner.getByRole('combobox', { name: 'Example trips' }).selectOption({ label: 'Hire boat, three hours' });
  await expect(planner.locator('#route .state')).toContainText('points');
  const points = (await planner.locator('#route .state').textContent())!.match(/\d+/)![0];
  await page.getByRole('navigation', { name: 'Language' }).getByRole('link', { name: 'Deutsch' }).click();
  await expect(page).toHaveURL(/\/de\/$/);
  await expect(planner.locator('#route .state')).toContainText(`${points} Punkte`);
  await page.goto('/engines/?x=1#top');
  await expect(page).toHaveURL(/\/de\/engines\/\?x=1#top$/);
  await page.getByRole('navigation', { name: 'Sprache' }).getByRole('link', { name: 'English' }).click();
  await expect(page).toHaveURL(/\/engines\/\?x=1#top$/);
  await expect(page.locator('html')).toHaveAttribute('lang', 'en');
});

test('each page names its other languages to search engines; the method is in English for all', async ({ page }) => {
  await page.goto('/de/checklists/weather/');
  await expect(page.locator('link[hreflang="en"][rel="alternate"]')).toHaveAttribute(
    'href',
    /[^e]\/checklists\/weather\/$/,
  );
  await expect(page.locator('link[hreflang="de"][rel="alternate"]')).toHaveAttribute(
    'href',
    /\/de\/checklists\/weather\/$/,
  );
  await expect(page.getByRole('link', { name: 'Methode (englisch)' })).toHaveAttribute('hreflang', 'en');
});

test('a page in a language we lack, written from right to left, gets English and keeps its width', async ({ page }) => {
  await page.goto('/suit/');
  await page.evaluate(() => {
    document.documentElement.lang = 'ar';
    document.documentElement.dir = 'rtl';
  });
  await expect(page.locator('homeleg-suit').getByLabel('Weights of everyone')).toBeVisible();
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
});
