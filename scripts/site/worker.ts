import { createHash } from 'node:crypto';
import { globSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'vite';

/** Not for readers of the site: elements for other sites, such sites in the gallery, what search engines and README ask for, the worker itself. */
const LEFT_OUT =
  /^(embed\/(?!index\.html$)|(\w\w\/)?guests\/(?!frames\.js$)|schemas\/)|^(sw\.js|robots\.txt|sitemap\.xml|planner\.png|preview\.png)$/;

/** All files of the built site that a reader may need, with what tells one version from another. */
export function siteFiles(folder: string) {
  return globSync('**/*', { cwd: folder })
    .map((file) => file.replaceAll('\\', '/'))
    .filter((file) => !LEFT_OUT.test(file) && statSync(join(folder, file)).isFile())
    .sort()
    .map((file) => {
      const sum = createHash('sha256').update(readFileSync(join(folder, file)));
      // A file that is not the one of this version, as from a host half way through an upload, is not taken for it.
      const integrity = `sha256-${sum.copy().digest('base64')}`;
      // Names under _astro carry a hash of what is in them.
      const revision = file.startsWith('_astro/') ? null : sum.digest('hex').slice(0, 16);
      return { url: `/${file}`, revision, integrity };
    });
}

/** Builds the worker that keeps these files on the device. */
export async function buildWorker(folder: string): Promise<void> {
  await build({
    configFile: false,
    logLevel: 'warn',
    publicDir: false,
    define: { SITE_FILES: JSON.stringify(siteFiles(folder)), 'process.env.NODE_ENV': '"production"' },
    build: {
      outDir: folder,
      emptyOutDir: false,
      target: 'es2022',
      lib: { entry: 'src/offline/worker.ts', formats: ['iife'], name: 'homeleg', fileName: () => 'sw.js' },
    },
  });
}
