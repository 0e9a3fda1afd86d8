import { join } from 'node:path';
import { build } from 'vite';
import { VERSION } from '../../src/components/version.ts';
import { ownTags } from '../embed/own-tags.ts';
import { packageFolder, publishedElements, root } from './published.ts';

const ALL = 'all-elements';
const WORKERS = { entryFileNames: 'workers/[name].js', chunkFileNames: 'workers/[name]-[hash].js' };

/** All elements, all languages and what they need as one file for a plain script tag; workers stand beside it. */
export async function buildStandalone(): Promise<void> {
  await build({
    root,
    configFile: false,
    publicDir: false,
    logLevel: 'warn',
    // Workers are found beside the file, wherever a site puts it.
    base: './',
    worker: { format: 'es', rolldownOptions: { output: WORKERS } },
    plugins: [
      ownTags(VERSION),
      {
        name: ALL,
        resolveId: (id) => (id === ALL ? `\0${ALL}` : null),
        load: (id) =>
          id === `\0${ALL}`
            ? publishedElements()
                .map(({ define }) => `import ${JSON.stringify(join(root, define))};`)
                .join('\n')
            : null,
      },
    ],
    build: {
      outDir: join(packageFolder, 'standalone'),
      target: 'es2022',
      modulePreload: false,
      // One file of this size is what was asked for.
      chunkSizeWarningLimit: 4000,
      rolldownOptions: { input: { homeleg: ALL }, output: { entryFileNames: '[name].js', codeSplitting: false } },
    },
  });
}
