import { expect, test } from '@playwright/test';

test('the hire desk gets an answer from weights, level and a set route', async ({ page }) => {
  await page.goto('/hire/');
  const desk = page.locator('homeleg-reserve-check');
  await expect(desk.getByText('Type the weights of everyone aboard')).toBeVisible();
  await desk.getByLabel('Weights of everyone').fill('85, 70 32');
  await expect(desk.getByRole('heading', { level: 2 })).toHaveText('Not sure enough');
  await desk.getByRole('button', { name: 'Full' }).click();
  await desk.getByRole('radio', { name: 'Dipstick or scales' }).check({ force: true });
  await desk.getByRole('radio', { name: 'Calm' }).check({ force: true });
  await desk.getByRole('radio', { name: 'Slack' }).check({ force: true });
  await desk.getByRole('radio', { name: 'Flat' }).check({ force: true });
  await expect(desk.getByRole('heading', { level: 2 })).toHaveText('Home with reserve');
  await expect(desk).toContainText('Back within');
  await expect(desk.getByText('85 kg: ')).toBeVisible();
});

test('more people than the plate names are refused at the desk', async ({ page }) => {
  await page.goto('/hire/');
  const desk = page.locator('homeleg-reserve-check');
  await desk.getByLabel('Weights of everyone').fill('85 85 85 85 85 85');
  await expect(desk.getByRole('heading', { level: 2 })).toHaveText('Not like this');
  await expect(desk).toContainText('plate');
});

test('weights that cannot be read are named beside the field and kept', async ({ page }) => {
  await page.goto('/hire/');
  const desk = page.locator('homeleg-reserve-check');
  await desk.getByLabel('Weights of everyone').fill('85, heavy');
  await expect(desk.getByText('Type weights as numbers above 0')).toBeVisible();
  await expect(desk.getByLabel('Weights of everyone')).toHaveValue('85, heavy');
  await expect(desk.getByRole('heading', { level: 2 })).toHaveText('No answer yet');
});

test('what the desk set this morning is still there after a reload, but not the hirer', async ({ page }) => {
  await page.goto('/hire/');
  const desk = page.locator('homeleg-reserve-check');
  await desk.getByRole('radio', { name: 'Calm' }).check({ force: true });
  await desk.getByLabel('Weights of everyone').fill('85');
  await page.reload();
  await desk.getByText('Today on the water').click();
  await expect(desk.getByRole('radio', { name: 'Calm' })).toBeChecked();
  await expect(desk.getByLabel('Weights of everyone')).toHaveValue('');
});
