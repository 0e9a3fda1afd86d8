import { join } from 'node:path';
import { build, type Rolldown } from 'vite';
import { VERSION } from '../../src/components/version.ts';
import { ownTags } from '../embed/own-tags.ts';
import { languageTags, packageFolder, publishedElements, root, workerModules } from './published.ts';

/** The name of a source file inside a module, where a worker is started by it. */
const workerNames: Rolldown.Plugin = {
  name: 'worker-names',
  renderChunk: (code) => code.replace(/(new URL\(["']\.\/[\w-]+-worker)\.ts(["'])/g, '$1.js$2'),
};

/** One written module of the package. */
export interface Module {
  /** From the package's folder. */
  readonly file: string;
  readonly code: string;
}

/**
 * The package for bundlers, import maps and Node: a module for each source file, dependencies left to the host, so that
 * whatever is not used falls away.
 */
export async function buildModules(): Promise<readonly Module[]> {
  const sources = [
    'src/core/index.ts',
    ...publishedElements().flatMap(({ define, module }) => [define, module]),
    ...workerModules(),
    ...languageTags().map((tag) => `src/languages/${tag}.ts`),
  ];
  const built = (await build({
    root,
    configFile: false,
    publicDir: false,
    logLevel: 'warn',
    plugins: [ownTags(VERSION), workerNames],
    ssr: { target: 'webworker' },
    build: {
      // Only so the modules stay plain: no loader of preloads, no workers packed under other names.
      ssr: true,
      outDir: join(packageFolder, 'modules'),
      target: 'es2022',
      minify: false,
      rolldownOptions: {
        input: Object.fromEntries(sources.map((file) => [file.replace(/^src\/|\.ts$/g, ''), join(root, file)])),
        preserveEntrySignatures: 'strict',
        output: {
          format: 'es',
          preserveModules: true,
          preserveModulesRoot: join(root, 'src'),
          entryFileNames: ({ name }) => `${name.replace(/^_virtual\/.*\//, 'compiled/')}.js`,
        },
      },
    },
  })) as Rolldown.RolldownOutput;
  return built.output
    .filter((file) => file.type === 'chunk')
    .map(({ fileName, code }) => ({ file: `modules/${fileName}`, code }));
}
