import { globSync, readFileSync } from 'node:fs';
import { basename } from 'node:path';
import type { Plugin } from 'vite';

/**
 * Gives the inner elements tags of their own version, such as homeleg-answer-v0-1-0: two versions on one page then never
 * use each other's parts. What a file named define.ts registers is written by pages and keeps its tag.
 */
export function ownTags(version: string): Plugin {
  const end = `-v${version.replaceAll(/[^a-z0-9]+/gi, '-').toLowerCase()}`;
  return {
    name: 'own-tags',
    enforce: 'pre',
    transform(code, id) {
      if (!/[\\/]src[\\/]components[\\/].*\.ts$/.test(id)) return null;
      const renamed = code.replaceAll(ANY_TAG, (tag) => (INNER.has(tag) ? tag + end : tag));
      return renamed === code ? null : { code: renamed, map: null };
    },
  };
}

const ANY_TAG = /(?<![\w-])homeleg-[a-z]+(?:-[a-z]+)*(?![\w-])/g;

/** What the sources register; names of events, of storage and of custom properties look alike but are none of them. */
const INNER = new Set(
  globSync('src/components/**/*.ts')
    .filter((file) => basename(file) !== 'define.ts')
    .flatMap((file) => [...readFileSync(file, 'utf8').matchAll(/\bdefine\('(homeleg-[a-z-]+)'/g)])
    .map(([, tag]) => tag ?? ''),
);
