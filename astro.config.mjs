import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'astro/config';
import { build } from 'vite';
import { elementsManifest } from './scripts/package/manifest.ts';
import { builtIn, thirdPartyNotices } from './scripts/package/notices.ts';
import { finishSite } from './scripts/site/finish.ts';
import { EVERY_PAGE, SITE_ELEMENTS, sharedParts } from './scripts/site/shared-parts.ts';

/** Where the site will stand; search engines and previews need whole addresses. */
const site = process.env.HOMELEG_SITE || 'http://localhost:4321';

/** Builds the elements for other sites into the folder `embed`, beside the page that tells of them. */
const embed = {
  name: 'embed',
  hooks: {
    'astro:build:done': async ({ dir }) => {
      await build({ configFile: 'vite.embed.config.ts', logLevel: 'warn', build: { emptyOutDir: false } });
      // Whoever copies the folder copies the licences of what is in it.
      writeFileSync(new URL('embed/third-party-notices.txt', dir), thirdPartyNotices(builtIn()));
    },
  },
};

/** What the page about other sites tells of the elements, read from their source. */
const reference = {
  name: 'reference',
  hooks: {
    'astro:config:setup': ({ command, updateConfig }) => {
      if (command === 'sync') return;
      updateConfig({ vite: { define: { ELEMENTS: JSON.stringify(elementsManifest()) } } });
    },
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
  integrations: [reference, embed, finish],
  // The default drops the space before a link that starts a line.
  compressHTML: true,
  // Small scripts and sheets stay files, so that a host's strict content policy needs no exceptions.
  build: { inlineStylesheets: 'never', format: 'directory' },
  vite: {
    build: { assetsInlineLimit: 0 },
    worker: { format: 'es' },
    environments: {
      client: {
        build: { rolldownOptions: { output: { codeSplitting: { groups: sharedParts(SITE_ELEMENTS, EVERY_PAGE) } } } },
      },
    },
  },
  devToolbar: { enabled: false },
});
