import { fileURLToPath } from 'node:url';
import { defineConfig } from 'astro/config';
import { build } from 'vite';
import { finishSite } from './scripts/site/finish.ts';

/** Where the site will stand; search engines and previews need whole addresses. */
const site = process.env.HOMELEG_SITE || 'http://localhost:4321';

/** Builds the elements for other sites beside the pages, into the folder `embed`. */
const embed = {
  name: 'embed',
  hooks: {
    'astro:build:done': () => build({ configFile: 'vite.embed.config.ts', logLevel: 'warn' }),
  },
};

/** What needs all pages: texts to search, the sitemap, the worker that keeps the site on the device. */
const finish = {
  name: 'finish',
  hooks: { 'astro:build:done': ({ dir }) => finishSite(fileURLToPath(dir), site) },
};

export default defineConfig({
  site,
  output: 'static',
  integrations: [embed, finish],
  // The default drops the space before a link that starts a line.
  compressHTML: true,
  // Small scripts and sheets stay files, so that a host's strict content policy needs no exceptions.
  build: { inlineStylesheets: 'never', format: 'directory' },
  vite: { build: { assetsInlineLimit: 0 }, worker: { format: 'es' } },
  devToolbar: { enabled: false },
});
