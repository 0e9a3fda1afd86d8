import { expect, test } from '@playwright/test';

test('the run sheet is filled in at the helm by touch, and its figures are runs', async ({ page, context }) => {
  await page.goto('/trials/');
  await page.getByText('Run sheet for a trial day').tap();
  await page.getByRole('button', { name: 'Propose a day' }).tap();
  await page.getByRole('button', { name: 'Fill in at the helm' }).tap();
  const helm = page.getByRole('dialog');
  await expect(helm.getByRole('heading')).toContainText('Warm up');
  // On the water there is no network.
  await context.setOffline(true);
  const next = helm.getByRole('button', { name: 'Next' });
  while (!(await helm.getByRole('button', { name: '7', exact: true }).isVisible())) await next.tap();
  const type = async (digits: string) => {
    for (const digit of digits) await helm.getByRole('button', { name: digit, exact: true }).tap();
    await next.tap();
  };
  await type('5.2');
  await type('2900');
  await type('1.7');
  await type('4.6');
  for (const button of await helm.getByRole('button').all()) {
    const box = (await button.boundingBox())!;
    expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(44);
  }
  await helm.getByRole('button', { name: 'Close' }).tap();
  const rows = page.getByRole('table', { name: 'Runs', exact: true }).locator('tbody tr');
  await expect(rows).toHaveCount(1);
  await expect(rows.first()).toContainText('2,900 rpm');
  await expect(rows.first()).toContainText('1.7 L/h');
  // What was filled in stands there again.
  await page.getByRole('button', { name: 'Fill in at the helm' }).tap();
  await expect(helm.getByRole('heading')).not.toContainText('Warm up');
});
