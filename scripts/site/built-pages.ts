import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type HTMLElement, parse } from 'node-html-parser';

/** One page of the built site. */
export interface BuiltPage {
  /** Path of its address, such as /checklists/. */
  readonly path: string;
  readonly html: HTMLElement;
  /** Search engines, and our own search, may show it. */
  readonly listed: boolean;
}

/** The pages in the folder the site was built into, in order of their addresses. */
export function builtPages(folder: string): readonly BuiltPage[] {
  return globSync('**/*.html', { cwd: folder })
    .map((file) => {
      const html = parse(readFileSync(join(folder, file), 'utf8'));
      const path = `/${file.replaceAll('\\', '/')}`.replace(/index\.html$/, '');
      return { path, html, listed: html.querySelector('meta[name="robots"][content*="noindex"]') === null };
    })
    .sort((a, b) => (a.path < b.path ? -1 : 1));
}
