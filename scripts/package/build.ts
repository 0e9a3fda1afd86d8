/**
 * npm run build:package: the elements and the core as a package for other sites, in `dist-package`: modules, one script
 * for a plain page, types, the description of the elements, licences.
 */
import { cpSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'vite';
import { packageDescription } from './description.ts';
import { buildFrameworks } from './frameworks.ts';
import { elementsManifest } from './manifest.ts';
import { buildModules } from './modules.ts';
import { thirdPartyNotices } from './notices.ts';
import { packageFolder, root } from './published.ts';
import { buildStandalone } from './standalone.ts';
import { buildTypes } from './types.ts';

process.chdir(root);
rmSync(packageFolder, { recursive: true, force: true });
mkdirSync(packageFolder);
const put = (name: string, text: string) => writeFileSync(join(packageFolder, name), text);

const modules = await buildModules();
await buildStandalone();
put('standalone/homeleg.d.ts', 'export {};\n');
await build({
  configFile: join(root, 'vite.embed.config.ts'),
  logLevel: 'warn',
  build: { outDir: join(packageFolder, 'embed'), emptyOutDir: true },
});
const types = buildTypes();
buildFrameworks();
put('custom-elements.json', `${JSON.stringify(elementsManifest(), null, 2)}\n`);
const description = packageDescription(modules, types);
put('package.json', `${JSON.stringify(description, null, 2)}\n`);
put('THIRD-PARTY-NOTICES.txt', thirdPartyNotices(Object.keys(description.dependencies)));
for (const file of ['LICENSE', 'CHANGELOG.md']) cpSync(join(root, file), join(packageFolder, file));
cpSync(join(root, 'scripts/package/readme.md'), join(packageFolder, 'README.md'));
console.log(`The package is in dist-package: ${modules.length} modules.`);
