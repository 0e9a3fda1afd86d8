import { type CDPSession, expect, type Page, test } from '@playwright/test';
import { clubPage } from './guest-page.ts';

/** Mounts and unmounts; a planner stays until its map is there, so that all of it has to be taken down again. */
async function cycle(page: Page, tag: string, times: number): Promise<number> {
  return page.evaluate(
    async ({ tag, times }) => {
      const kept = globalThis as { seen?: WeakRef<Element>[] };
      const seen = kept.seen ?? [];
      kept.seen = seen;
      const frame = () => new Promise((next) => requestAnimationFrame(next));
      let maps = 0;
      for (let i = 0; i < times; i++) {
        const element = document.createElement(tag) as HTMLElement & { updateComplete: Promise<boolean> };
        element.setAttribute('keep', 'none');
        document.body.append(element);
        await element.updateComplete;
        for (let at = 0; at < 120 && tag === 'homeleg-planner'; at++) {
          const inner = [...element.shadowRoot!.querySelectorAll('*')].find((each) =>
            /^homeleg-route-map/.test(each.localName),
          );
          if (inner?.shadowRoot?.querySelector('.leaflet-pane')) {
            maps++;
            break;
          }
          await frame();
        }
        element.remove();
        seen.push(new WeakRef(element));
      }
      return maps;
    },
    { tag, times },
  );
}

/** After garbage: elements still held, heap in bytes, listeners and nodes. */
async function left(page: Page, cdp: CDPSession) {
  let alive = Number.NaN;
  // Some are let go only after a further turn of the page, as observers and idle work are.
  for (let turn = 0; turn < 10 && alive !== 0; turn++) {
    await page.evaluate(() => new Promise((next) => requestIdleCallback(next)));
    await cdp.send('HeapProfiler.collectGarbage');
    alive = await page.evaluate(
      () => (globalThis as { seen?: WeakRef<Element>[] }).seen?.filter((each) => each.deref()).length ?? 0,
    );
  }
  const { metrics } = await cdp.send('Performance.getMetrics');
  const of = (name: string) => metrics.find((metric) => metric.name === name)!.value;
  return { alive, heap: of('JSHeapUsedSize'), listeners: of('JSEventListeners'), nodes: of('Nodes') };
}

for (const { tag, warm, times } of [
  { tag: 'homeleg-reserve-check', warm: 50, times: 1000 },
  { tag: 'homeleg-planner', warm: 10, times: 50 },
]) {
  test(`${times} times ${tag} put on a page and taken off leave nothing behind`, async ({ page }) => {
    test.setTimeout(300_000);
    await clubPage(page, '');
    await page.goto('/club/');
    await page.evaluate((name) => customElements.whenDefined(name), tag);
    const cdp = await page.context().newCDPSession(page);
    await cdp.send('Performance.enable');
    await cycle(page, tag, warm);
    const before = await left(page, cdp);
    const maps = await cycle(page, tag, times);
    const after = await left(page, cdp);
    if (tag === 'homeleg-planner') expect(maps).toBe(times);
    console.log(
      `${tag}, ${times} cycles: heap ${before.heap} to ${after.heap}, listeners ${before.listeners} to ${after.listeners}`,
    );
    expect(after.alive).toBe(0);
    expect(after.listeners).toBeLessThanOrEqual(before.listeners);
    expect(after.nodes).toBeLessThanOrEqual(before.nodes + 20);
    // What a page keeps for its own, such as weak references to each element, is below a kilobyte per cycle.
    expect(after.heap - before.heap).toBeLessThan(times * 1000 + 500_000);
  });
}
