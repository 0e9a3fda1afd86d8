import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { clubPage } from './guest-page.ts';

const trip = JSON.parse(readFileSync('shared/trips/petrol-day.json', 'utf8'));
/** Pieces that wait for a trip of the page. */
const GIVEN = ['planner', 'fuel', 'result', 'curve', 'deck'];
const OTHERS = ['reserve-check', 'checklist', 'load-table', 'suit', 'hire-desk', 'trials', 'waters-editor'];

/** Opens whatever can be opened, at any depth and as parts come; resolves with what is still closed or asleep. */
function opened(page: Page): Promise<number> {
  return page.evaluate(async () => {
    let waiting = 0;
    const look = (root: ParentNode) => {
      for (const element of root.querySelectorAll('*')) {
        if (element instanceof HTMLDetailsElement && !element.open) {
          element.open = true;
          waiting++;
        }
        if (element.localName.includes('-') && !element.matches(':defined')) {
          element.scrollIntoView();
          waiting++;
        }
        if (element.shadowRoot) look(element.shadowRoot);
      }
    };
    look(document);
    await new Promise((next) => requestIdleCallback(next));
    return waiting;
  });
}

/** What hangs over the side of the page: outermost elements, but nothing in a box that scrolls or cuts for itself. */
function overhanging(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const width = document.documentElement.clientWidth;
    const found: string[] = [];
    const look = (root: ParentNode, path: string) => {
      for (const element of root.children) {
        const name = `${path} ${[element.localName, ...element.classList].join('.')}`;
        const { left, right } = element.getBoundingClientRect();
        const { overflowX, display } = getComputedStyle(element);
        if (display === 'none') continue;
        if (right > width + 1 || left < -1) found.push(`${name} from ${Math.round(left)} to ${Math.round(right)}`);
        else if (overflowX === 'visible') look(element.shadowRoot ?? element, name);
      }
    };
    look(document.body, '');
    return found;
  });
}

for (const name of [...GIVEN, ...OTHERS]) {
  test(`letters twice the usual size on a narrow page: ${name} stays inside it with all of it open`, async ({
    page,
  }) => {
    test.setTimeout(180_000);
    await page.setViewportSize({ width: 390, height: 844 });
    const tag = `homeleg-${name}`;
    await clubPage(page, `<main><${tag} keep="none" list="before-launch"></${tag}></main>`, {
      head: `<script type="module" src="/embed/${name}.js"></script>`,
    });
    await page.goto('/club/');
    await page.evaluate(() => document.body.style.setProperty('font-size', '200%'));
    await page.evaluate((each) => customElements.whenDefined(each), tag);
    if (GIVEN.includes(name)) {
      await page.locator(tag).evaluate((element, given) => void Object.assign(element, { trip: given }), trip);
    }
    if (name === 'reserve-check')
      await page
        .locator(tag)
        .getByLabel(/weights/i)
        .fill('80, 75');
    await expect.poll(() => opened(page), { timeout: 90_000 }).toBe(0);
    expect(await overhanging(page)).toEqual([]);
    const over = () => page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
    expect(await over()).toBe(0);
  });
}
