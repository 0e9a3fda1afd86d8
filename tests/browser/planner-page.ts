import { expect, type Locator, type Page } from '@playwright/test';

/** Places on open water of the invented estuary, as shares of the map's width and height in its first view. */
export const OPEN_WATER = [
  [0.15, 0.75],
  [0.3, 0.85],
  [0.45, 0.92],
] as const;

/** The planner of the start page, as somebody at the screen meets it. */
export class PlannerPage {
  readonly page: Page;
  readonly complaints: string[] = [];

  constructor(page: Page) {
    this.page = page;
    page.on('console', (message) => {
      if (message.type() === 'error') this.complaints.push(message.text());
    });
    page.on('pageerror', (error) => this.complaints.push(String(error)));
  }

  async open(): Promise<void> {
    await this.page.goto('/');
    await expect(this.map).toBeVisible();
    // Leaflet says that it stands by its own class.
    await expect(this.map).toHaveClass(/leaflet-container/);
    // The key comes with the local waters.
    await expect(this.page.getByText('Key to the map')).toBeVisible();
  }

  get map(): Locator {
    return this.page.getByRole('region', { name: 'Map of the route' });
  }

  get answer(): Locator {
    return this.page.locator('homeleg-answer:not([compact])');
  }

  get verdict(): Locator {
    return this.answer.getByRole('heading', { level: 2 });
  }

  waypoint(number: number): Locator {
    return this.map.getByRole('button', { name: new RegExp(`^Waypoint ${number} of`) });
  }

  /** Where a share of the map's width and height lies in the window. */
  async spot([x, y]: readonly [number, number]): Promise<{ x: number; y: number }> {
    await this.map.scrollIntoViewIfNeeded();
    const box = await this.map.boundingBox();
    if (!box) throw new Error('the map is not shown');
    return { x: box.x + box.width * x, y: box.y + box.height * y };
  }

  card(name: 'route' | 'boat' | 'aboard' | 'day' | 'kept'): Locator {
    return this.page.locator(`homeleg-planner details#${name}`);
  }

  async example(name: string): Promise<void> {
    await this.page.getByLabel('Example trips').selectOption({ label: name });
    await expect(this.page.getByText(`Opened ${name}`)).toBeVisible();
  }

  /** The plan the element holds, worked out to the end. */
  async plan(): Promise<{
    verdict: string;
    reasons: { code: string; name?: string }[];
    need: { median: number };
    distance: number;
  }> {
    return this.page.evaluate(async () => {
      const planner: unknown = document.querySelector('homeleg-planner');
      return (planner as { plan: never }).plan;
    });
  }

  /** Of a plan what is there at once; the slower figures follow when the hand rests. */
  gist() {
    return this.plan().then(({ verdict, reasons, need, distance }) => ({ verdict, reasons, need, distance }));
  }

  reasons(): Promise<string[]> {
    return this.plan().then((plan) => plan.reasons.map((reason) => reason.code));
  }
}
