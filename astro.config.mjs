import { defineConfig } from 'astro/config';
import { build } from 'vite';

/** Builds the elements for other sites beside the pages, into the folder `embed`. */
const embed = {
  name: 'embed',
  hooks: {
    'astro:build:done': () => build({ configFile: 'vite.embed.config.ts', logLevel: 'warn' }),
  },
};

export default defineConfig({
  output: 'static',
  integrations: [embed],
  // The default drops the space before a link that starts a line.
  compressHTML: true,
  // Small scripts and sheets stay files, so that a host's strict content policy needs no exceptions.
  build: { inlineStylesheets: 'never', format: 'directory' },
  vite: { build: { assetsInlineLimit: 0 }, worker: { format: 'es' } },
  devToolbar: { enabled: false },
});
