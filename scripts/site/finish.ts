import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { builtPages } from './built-pages.ts';
import { fileSchemas } from './file-schemas.ts';
import { searchTexts } from './search-texts.ts';
import { robots, sitemap } from './sitemap.ts';
import { buildWorker } from './worker.ts';

/**
 * What can be made only once all pages are there, and what goes beside them: texts to search, addresses for search
 * engines, schemas of the files, the offline worker.
 */
export async function finishSite(folder: string, site: string): Promise<void> {
  const pages = builtPages(folder);
  const put = (name: string, text: string) => writeFileSync(join(folder, name), text);
  put('sitemap.xml', sitemap(pages, site));
  put('robots.txt', robots(site));
  put('search.json', JSON.stringify(searchTexts(builtPages(folder))));
  mkdirSync(join(folder, 'schemas'), { recursive: true });
  for (const [name, schema] of Object.entries(fileSchemas(site))) {
    put(join('schemas', `${name}.json`), `${JSON.stringify(schema, null, 1)}\n`);
  }
  await buildWorker(folder);
}
