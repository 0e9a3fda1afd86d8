import { defineConfig } from 'astro/config';

export default defineConfig({
  output: 'static',
  // Small scripts and sheets stay files, so that a host's strict content policy needs no exceptions.
  build: { inlineStylesheets: 'never', format: 'directory' },
  vite: { build: { assetsInlineLimit: 0 } },
  devToolbar: { enabled: false },
});
