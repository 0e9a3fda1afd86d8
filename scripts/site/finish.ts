import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { builtPages } from './built-pages.ts';
import { searchTexts } from './search-texts.ts';
import { robots, sitemap } from './sitemap.ts';
import { buildWorker } from './worker.ts';

/** What can be made only once all pages are there: texts to search, addresses for search engines, the offline worker. */
export async function finishSite(folder: string, site: string): Promise<void> {
  const pages = builtPages(folder);
  const put = (name: string, text: string) => writeFileSync(join(folder, name), text);
  put('sitemap.xml', sitemap(pages, site));
  put('robots.txt', robots(site));
  put('search.json', JSON.stringify(searchTexts(builtPages(folder))));
  await buildWorker(folder);
}
