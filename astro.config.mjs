import { defineConfig } from 'astro/config';

export default defineConfig({
  output: 'static',
  // The default drops the space before a link that starts a line.
  compressHTML: true,
  // Small scripts and sheets stay files, so that a host's strict content policy needs no exceptions.
  build: { inlineStylesheets: 'never', format: 'directory' },
  vite: { build: { assetsInlineLimit: 0 } },
  devToolbar: { enabled: false },
});
