import { expect, type Locator, type Page } from '@playwright/test';

/** A summer morning at the invented slip. */
export const MORNING = new Date('2027-06-19T09:00:00-02:00');
export const ZONE = 'Atlantic/South_Georgia';

/** The hire desk, as somebody at the counter meets it. */
export class DeskPage {
  readonly page: Page;
  readonly complaints: string[] = [];

  constructor(page: Page) {
    this.page = page;
    page.on('console', (message) => {
      if (message.type() === 'error') this.complaints.push(message.text());
    });
    page.on('pageerror', (error) => this.complaints.push(String(error)));
  }

  get desk(): Locator {
    return this.page.locator('homeleg-hire-desk');
  }

  get answer(): Locator {
    return this.desk.locator('homeleg-desk-answer').getByRole('heading', { level: 2 });
  }

  async open(): Promise<void> {
    await this.page.emulateMedia({ reducedMotion: 'reduce' });
    await this.page.goto('/hire/');
    await expect(this.desk.getByRole('navigation', { name: 'Parts of the desk' })).toBeVisible();
  }

  async show(view: string): Promise<void> {
    await this.desk.getByRole('navigation').getByRole('button', { name: view }).click();
  }

  async pick(name: string): Promise<void> {
    await this.desk.getByRole('radio', { name }).check({ force: true });
  }

  /** Calm, slack and flat until the end of the day. */
  async setMorning(): Promise<void> {
    await this.show('This morning');
    for (const name of ['Calm', 'Slack', 'Flat']) await this.pick(name);
    await this.desk.getByRole('button', { name: 'Set for today' }).click();
    await expect(this.desk.getByText('Set for today until 23:59')).toBeVisible();
    await this.show('Check');
  }

  async check(weights = '85, 70 32'): Promise<void> {
    await this.desk.getByLabel('Weights of everyone').fill(weights);
    await this.desk.getByRole('button', { name: 'Full' }).click();
    await this.pick('Dipstick or scales');
  }

  async makeSlip(): Promise<void> {
    await this.desk.getByRole('button', { name: 'Make the slip' }).click();
    await expect(this.desk.getByRole('heading', { name: /^Handover/ })).toBeVisible();
  }

  async initial(): Promise<void> {
    await this.desk.getByLabel('Your initials').fill('KM');
    for (const box of await this.desk.getByRole('checkbox').all()) await box.check();
    await expect(this.desk.getByText('KM', { exact: true }).first()).toBeVisible();
  }

  async leave(): Promise<void> {
    await this.desk.getByRole('button', { name: 'They leave now' }).click();
    await expect(this.desk.getByText(/^Left at .*due back at/)).toBeVisible();
  }
}

/** Pages of a PDF, counted in its text. */
export function pagesOf(pdf: Buffer): number {
  return pdf.toString('latin1').match(/\/Type\s*\/Page(?![s\w])/g)?.length ?? 0;
}

/** A desk whose one boat left at nine for two hours. */
export async function boatOut(page: Page): Promise<DeskPage> {
  const on = new DeskPage(page);
  await on.open();
  await on.setMorning();
  await on.check();
  await on.makeSlip();
  await on.leave();
  return on;
}
