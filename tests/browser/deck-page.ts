import { expect, type Locator, type Page } from '@playwright/test';
import { PlannerPage } from './planner-page.ts';

/** The planner with the petrol example opened at the deck, as somebody at the screen meets it. */
export class DeckPage extends PlannerPage {
  async begin(): Promise<void> {
    await this.page.goto('/');
    await this.example('Petrol catamaran, a day out');
    for (const name of ['aboard', 'load'] as const) await this.unfold(name);
    await expect(this.piece('Mate')).toBeVisible();
    await expect(this.figure('heel')).toHaveText('upright');
  }

  async unfold(name: 'aboard' | 'load'): Promise<void> {
    const card = this.page.locator(`homeleg-planner details#${name}`);
    await card.scrollIntoViewIfNeeded();
    if ((await card.getAttribute('open')) === null) await card.locator('> summary').click();
  }

  get load(): Locator {
    return this.page.locator('homeleg-planner details#load');
  }

  get advice(): Locator {
    return this.page.locator('homeleg-seat-advice');
  }

  piece(name: string): Locator {
    return this.page.getByRole('button', { name: new RegExp(`^${name} .*piece \\d+ of`) });
  }

  /** A figure that changes as somebody moves. */
  figure(name: 'heel' | 'rest' | 'edge' | 'running' | 'planes' | 'top' | 'left'): Locator {
    return this.page.locator(`homeleg-attitude .figure-${name} .value`);
  }

  /** All of them, as text. */
  figures(): Promise<string[]> {
    return this.page.locator('homeleg-attitude dl .value').allInnerTexts();
  }

  /** Middle of a piece in the window. */
  async middle(name: string): Promise<{ x: number; y: number }> {
    const piece = this.piece(name);
    await piece.scrollIntoViewIfNeeded();
    const box = await piece.boundingBox();
    if (!box) throw new Error(`${name} is not drawn`);
    return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  }

  /** Where somebody sits, by the id of the station, or undefined on a free spot. */
  station(page: Page, name: string): Promise<string | undefined> {
    return page.evaluate((wanted) => {
      const planner: unknown = document.querySelector('homeleg-planner');
      const { trip } = planner as { trip: { load: { items: { name?: string; station?: string }[] } } };
      return trip.load.items.find((item) => item.name === wanted)?.station;
    }, name);
  }
}
