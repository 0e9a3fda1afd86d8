import { defineConfig } from 'vite';

/** The elements for other sites: one small file per element to load, and the parts it asks for when they are shown. */
export default defineConfig({
  // Parts are found beside the file that asks for them, wherever a site puts the folder.
  base: './',
  publicDir: false,
  worker: { format: 'es' },
  build: {
    outDir: 'dist/embed',
    target: 'es2022',
    modulePreload: false,
    rolldownOptions: {
      input: {
        planner: 'src/components/planner/define.ts',
        'reserve-check': 'src/components/reserve-check/define.ts',
        checklist: 'src/components/checklist/define.ts',
      },
      output: { entryFileNames: '[name].js', chunkFileNames: 'parts/[name]-[hash].js' },
    },
  },
});
