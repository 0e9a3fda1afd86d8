import { expect, type Page } from '@playwright/test';

/** Fails where a page of the site does not print on one page of A4. */
export async function printsOnOneA4(page: Page, path: string): Promise<void> {
  await page.goto(path);
  const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
  expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
  // A4 in points, to the rounding of the browser.
  const [, width, height] = pdf.match(/\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)/)!;
  expect(Number(width)).toBeCloseTo(595.3, -1);
  expect(Number(height)).toBeCloseTo(841.9, -1);
}
