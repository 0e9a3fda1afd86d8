import { readdirSync } from 'node:fs';
import { test } from '@playwright/test';
import { printsOnOneA4 } from './one-page.ts';

const lists = readdirSync('shared/checklists').filter((file) => file.endsWith('.json'));
const languages = readdirSync('src/content/site')
  .map((file) => file.replace('.ts', ''))
  .filter((tag) => tag !== 'en');

for (const tag of languages) {
  for (const file of lists) {
    const path = `/${tag}/checklists/${file.replace('.json', '')}/`;
    test(`${path} prints on one A4 page`, ({ page }) => printsOnOneA4(page, path));
  }
}
