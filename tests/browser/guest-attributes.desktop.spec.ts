/** Every attribute that the elements' description lists, written wrongly: told on the element and once in the console, with the fix. */
import { expect, test } from '@playwright/test';
import type { CustomElement } from 'custom-elements-manifest/schema';
import { elementsManifest } from '../../scripts/package/manifest.ts';
import { clubPage, overheard } from './guest-page.ts';

const elements = elementsManifest().modules.flatMap(
  ({ declarations = [] }) => declarations as unknown as (CustomElement & { tagName: string })[],
);

/** A wrong value, and words of the message that say what to write instead. */
const WRONG: Readonly<Record<string, readonly [value: string, fix: RegExp]>> = {
  units: ['miles', /nautical, metric, imperial/],
  theme: ['pink', /light, dark/],
  waters: ['/club/no-such-waters.geojson', /address of a GeoJSON file, "haven", or "none"/],
  tiles: ['/club/tiles/', /\{z\}, \{x\} and \{y\}/],
  'forecast-source': ['/club/wind', /\{lat\} and \{lon\}/],
  center: ['the harbour', /latitude and longitude, such as/],
  zoom: ['far', /from 2 to 18/],
  profile: ['/club/no-such-boat.json', /boat of this page could not be loaded/],
  boat: ['red', /Known here: /],
  fleet: ['/club/no-such-fleet.json', /no-such-fleet\.json could not be loaded/],
  reserve: ['plenty', /"thirds", a share such as "25 %", or "30 min"/],
  for: ['nobody', /no planner or other element with the id “nobody”/],
  list: ['no-such', /The lists are: before-launch/],
  view: ['attic', /check, out, log, card, morning, fleet/],
};
/** Attributes that take any text, or none at all, and so cannot be wrong; an unknown language is said in English. */
const ANY = ['tiles-attribution', 'tell-size', 'keep', 'name', 'lang'];

test('each attribute is either one that takes anything or one with a wrong value here', () => {
  const all = new Set(elements.flatMap(({ attributes = [] }) => attributes.map(({ name }) => name)));
  expect([...all].sort()).toEqual([...Object.keys(WRONG), ...ANY].sort());
});

for (const { tagName: tag, attributes = [] } of elements) {
  const wrong = attributes.filter(({ name }) => name in WRONG).map(({ name }) => name);
  if (wrong.length === 0) continue;
  test(`${tag} tells of a wrong ${wrong.join(', ')}: on itself, by an event, and once in the console`, async ({
    page,
  }) => {
    const { complaints } = overheard(page);
    await page.addInitScript(() => {
      const told: string[] = [];
      Object.assign(globalThis, { told });
      addEventListener('homeleg-problem', (event) => {
        told.push((event as HTMLElementEventMap['homeleg-problem']).detail.attribute);
      });
    });
    await page.route('/club/no-such-*', (route) => route.fulfill({ status: 404, body: 'Not found' }));
    const written = wrong.map((name) => `${name}="${WRONG[name]![0]}"`).join(' ');
    const list = wrong.includes('list') ? '' : 'list="before-launch"';
    await clubPage(page, `<${tag} keep="none" ${list} ${written}></${tag}>`, {
      head: `<script type="module" src="/embed/${tag.replace('homeleg-', '')}.js"></script>`,
      policy: "default-src 'none'; script-src 'self'; connect-src 'self'; worker-src 'self'",
    });
    await page.goto('/club/');
    const element = page.locator(tag);
    for (const name of wrong) {
      const message = element.locator('[part="problem"] li').filter({ has: page.locator(`code:text-is("${name}")`) });
      await expect(message, name).toHaveText(WRONG[name]![1]);
      await expect(message, name).toHaveCount(1);
    }
    // Touched, drawn anew and moved in the page, it does not say so again.
    await element.evaluate(async (each) => {
      const box = document.createElement('div');
      document.body.append(box);
      box.append(each);
      const { updateComplete } = each as HTMLElement & { updateComplete: Promise<boolean>; requestUpdate(): void };
      (each as unknown as { requestUpdate(): void }).requestUpdate();
      await updateComplete;
    });
    await expect(element.locator('[part="problem"] li')).toHaveCount(wrong.length);
    const console = complaints.filter((line) => line.startsWith(`<${tag}>`));
    expect(console.map((line) => line.slice(tag.length + 3).split(':')[0]).sort()).toEqual([...wrong].sort());
    for (const name of wrong)
      expect(console.find((line) => line.startsWith(`<${tag}> ${name}:`))).toMatch(WRONG[name]![1]);
    const told = await page.evaluate(() => (globalThis as unknown as { told: string[] }).told);
    expect(told.sort()).toEqual([...wrong].sort());
    // Mended, the element has nothing to say any more.
    await element.evaluate((each, names) => {
      for (const name of names) each.removeAttribute(name);
      if (each.localName === 'homeleg-checklist') each.setAttribute('list', 'weather');
    }, wrong);
    await expect(element.locator('[part="problem"]')).toHaveCount(0);
    // Nothing but the browser's own lines on what was not found.
    expect(complaints.filter((line) => !line.startsWith('<') && !/404|no-such/.test(line))).toEqual([]);
  });
}
