import { globSync, mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join, posix, relative, resolve } from 'node:path';
import ts from 'typescript';
import { eventsOf, eventTypes } from './events.ts';
import { languageTags, packageFolder, publishedElements, root } from './published.ts';

/**
 * Writes the types that the published modules need, beside these; returns the packages they name. Whether the types are
 * right is asked by the type check of the project.
 */
export function buildTypes(): ReadonlySet<string> {
  const config = ts.getParsedCommandLineOfConfigFile(
    join(root, 'tsconfig.json'),
    {},
    { ...ts.sys, onUnRecoverableConfigFileDiagnostic },
  );
  if (!config) throw new Error('tsconfig.json cannot be read');
  const elements = publishedElements();
  const published = [
    'src/core/index.ts',
    ...elements.map(({ module }) => module),
    ...languageTags().map((tag) => `src/languages/${tag}.ts`),
  ];
  const modules = join(packageFolder, 'modules');
  const program = ts.createProgram(
    [...published, ...globSync('src/**/*.d.ts', { cwd: root })].map((file) => join(root, file)),
    {
      ...config.options,
      noEmit: false,
      declaration: true,
      emitDeclarationOnly: true,
      outDir: modules,
      rootDir: join(root, 'src'),
      types: ['node', 'vite/client'],
    },
  );
  const written = new Map<string, Declarations>();
  const { diagnostics } = program.emit(undefined, (path, text) => written.set(resolve(path), asPublished(text)));
  if (diagnostics.length > 0) throw new Error(ts.formatDiagnostics(diagnostics, host));
  for (const { module } of elements) {
    const own = written.get(declarationsOf(module));
    if (own) written.set(declarationsOf(module), withEvents(own, module));
  }
  // The compiler leaves nothing of a module that only registers; its types are those of the class.
  for (const { name, define } of elements) {
    written.set(declarationsOf(define), { code: `import './${name}.js';\n`, names: [`./${name}.js`] });
  }
  return putReached([...published, ...elements.map(({ define }) => define)].map(declarationsOf), written);
}

/**
 * The types of an element with those of its events. An element may fire them through a controller that its types do not
 * name; a page that listens has to know them all the same.
 */
function withEvents({ code, names }: Declarations, module: string): Declarations {
  const known = eventTypes();
  const lines = new Map<string, string>();
  for (const event of eventsOf(module)) {
    const told = known.get(event);
    if (!told) throw new Error(`${module} fires ${event}, which is in no HTMLElementEventMap`);
    if (told.module === module) continue;
    const path = posix.relative(posix.dirname(module), told.module).replace(/\.ts$/, '.js');
    const name = path.startsWith('.') ? path : `./${path}`;
    lines.set(`export type { ${told.type} } from '${name}';\n`, name);
  }
  return { code: code + [...lines.keys()].join(''), names: [...names, ...lines.values()] };
}

/** Writes what can be reached from the published modules; the rest is nobody's business outside. */
function putReached(files: readonly string[], written: ReadonlyMap<string, Declarations>): ReadonlySet<string> {
  const reached = new Set(files);
  const packages = new Set<string>();
  for (const file of reached) {
    const declarations = written.get(file);
    if (!declarations) throw new Error(`${file} has no types`);
    for (const name of declarations.names) {
      if (name.startsWith('.')) reached.add(resolve(dirname(file), name.replace(/\.js$/, '.d.ts')));
      else packages.add(/^(@[^/]+\/)?[^/]+/.exec(name)![0]);
    }
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, declarations.code);
  }
  return packages;
}

function declarationsOf(source: string): string {
  return join(packageFolder, 'modules', relative('src', source).replace(/\.ts$/, '.d.ts'));
}

interface Declarations {
  readonly code: string;
  /** Modules and packages named. */
  readonly names: readonly string[];
}

const host: ts.FormatDiagnosticsHost = {
  getCurrentDirectory: () => root,
  getCanonicalFileName: (name) => name,
  getNewLine: () => '\n',
};

/** Modules under the names they are published by. */
function asPublished(text: string): Declarations {
  const names: string[] = [];
  const code = text.replace(
    /^(.*?(?:\bfrom |\bimport |\bimport\())(['"])([^'"]+)\2/gm,
    (all, lead: string, quote: string, given: string) => {
      if (/^\s*(\/?\*|\/\/)/.test(lead)) return all;
      const name = given.startsWith('.') ? given.replace(/\.ts$/, '.js') : given.replace(/^lit-html$/, 'lit');
      names.push(name);
      return `${lead}${quote}${name}${quote}`;
    },
  );
  return { code, names };
}

function onUnRecoverableConfigFileDiagnostic(fault: ts.Diagnostic): never {
  throw new Error(ts.formatDiagnostics([fault], host));
}
