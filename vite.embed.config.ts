import { defineConfig } from 'vite';
import { ownTags } from './scripts/embed/own-tags.ts';
import { publishedElements } from './scripts/package/published.ts';
import { sharedParts } from './scripts/site/shared-parts.ts';
import { VERSION } from './src/components/version.ts';

/** The elements for other sites: one small file per element to load, and the parts it asks for when they are shown. */
export default defineConfig({
  // Parts are found beside the file that asks for them, wherever a site puts the folder.
  base: './',
  publicDir: false,
  worker: { format: 'es' },
  plugins: [ownTags(VERSION)],
  build: {
    outDir: 'dist/embed',
    target: 'es2022',
    modulePreload: false,
    rolldownOptions: {
      input: Object.fromEntries(publishedElements().map(({ name, define }) => [name, define])),
      output: {
        entryFileNames: '[name].js',
        chunkFileNames: 'parts/[name]-[hash].js',
        codeSplitting: {
          groups: sharedParts([
            ...publishedElements().map(({ name }) => `${name}/${name}`),
            'route-map/route-map',
            'waters-editor/fleet-editor',
          ]),
        },
      },
    },
  },
});
