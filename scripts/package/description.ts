import ts from 'typescript';
import { FRAMEWORKS } from './frameworks.ts';
import type { Module } from './modules.ts';
import { languageTags, projectDescription, publishedElements } from './published.ts';

/** package.json of the package: its entries, types first, what it needs, and which modules do something when loaded. */
export function packageDescription(modules: readonly Module[], typePackages: ReadonlySet<string>) {
  const { version, description, license, dependencies } = projectDescription();
  const entry = (path: string) => ({ types: `./${path}.d.ts`, default: `./${path}.js` });
  const elements = publishedElements();
  return {
    name: 'homeleg',
    version,
    description,
    license,
    keywords: ['boat', 'trip', 'fuel', 'reserve', 'web-component', 'custom-element'],
    type: 'module',
    exports: {
      '.': entry('modules/core/index'),
      './core': entry('modules/core/index'),
      ...Object.fromEntries(
        elements.flatMap(({ name }) => [
          [`./${name}`, entry(`modules/components/${name}/${name}`)],
          [`./${name}/define`, entry(`modules/components/${name}/define`)],
        ]),
      ),
      ...Object.fromEntries(languageTags().map((tag) => [`./languages/${tag}`, entry(`modules/languages/${tag}`)])),
      ...Object.fromEntries(FRAMEWORKS.map((name) => [`./${name}`, entry(`frameworks/${name}`)])),
      './standalone': { types: './standalone/homeleg.d.ts', default: './standalone/homeleg.js' },
      './embed/*': './embed/*',
      './custom-elements.json': './custom-elements.json',
      './package.json': './package.json',
    },
    customElements: 'custom-elements.json',
    sideEffects: [...acting(modules), './standalone/homeleg.js', './embed/*.js'],
    engines: { node: '>=20' },
    dependencies: needed(modules, typePackages, dependencies),
    peerDependencies: { react: '>=19', svelte: '>=5', vue: '>=3.4' },
    peerDependenciesMeta: { react: { optional: true }, svelte: { optional: true }, vue: { optional: true } },
  };
}

/**
 * Modules that do something when they are loaded: register an element, answer as a worker, add to the map library. A
 * bundler may leave out any other that is not used.
 */
function acting(modules: readonly Module[]): readonly string[] {
  return modules
    .filter(({ file, code }) => {
      const { statements } = ts.createSourceFile(file, code, ts.ScriptTarget.ES2022);
      const own = new Set(statements.flatMap(declared));
      return statements.some((statement) => !decorates(statement, own) && acts(statement));
    })
    .map(({ file }) => `./${file}`)
    .sort();
}

function declared(statement: ts.Statement): readonly string[] {
  if (ts.isClassDeclaration(statement)) return statement.name ? [statement.name.text] : [];
  if (!ts.isVariableStatement(statement)) return [];
  return statement.declarationList.declarations.flatMap(({ name }) => (ts.isIdentifier(name) ? [name.text] : []));
}

/** Whether it only finishes a class of the same module, as compiled decorators do: who does not use the class misses nothing. */
function decorates(statement: ts.Statement, own: ReadonlySet<string>): boolean {
  if (!ts.isExpressionStatement(statement) || !ts.isCallExpression(statement.expression)) return false;
  const { expression: called, arguments: given } = statement.expression;
  const target = given[1];
  return (
    ts.isIdentifier(called) &&
    called.text === '__decorate' &&
    target !== undefined &&
    ts.isPropertyAccessExpression(target) &&
    target.name.text === 'prototype' &&
    ts.isIdentifier(target.expression) &&
    own.has(target.expression.text)
  );
}

function acts(statement: ts.Statement): boolean {
  if (ts.isImportDeclaration(statement)) {
    // What a module of ours does, it says for itself.
    const from = (statement.moduleSpecifier as ts.StringLiteral).text;
    return statement.importClause === undefined && !from.startsWith('.');
  }
  return !(
    ts.isExportDeclaration(statement) ||
    ts.isExportAssignment(statement) ||
    ts.isVariableStatement(statement) ||
    ts.isFunctionDeclaration(statement) ||
    ts.isClassDeclaration(statement)
  );
}

/** Packages that the modules load or their types name. */
function needed(
  modules: readonly Module[],
  typePackages: ReadonlySet<string>,
  ours: Readonly<Record<string, string>>,
): Readonly<Record<string, string>> {
  const names = new Set<string>();
  for (const { code } of modules) {
    for (const [, name] of code.matchAll(
      /(?:^import |^export .*? from |^import .*? from |\bimport\()["']([^."'][^"']*)["']/gm,
    )) {
      names.add(/^(@[^/]+\/)?[^/]+/.exec(name!)![0]);
    }
  }
  const found = [...names].sort().map((name) => {
    const version = ours[name];
    if (!version) throw new Error(`${name} is used in the package and no dependency of the project`);
    return [name, version] as const;
  });
  const types = [...typePackages]
    .filter((name) => !names.has(name))
    .map((name) => {
      const version = projectDescription().devDependencies[`@types/${name}`];
      if (!version) throw new Error(`types of the package name ${name}, which has none in the project`);
      return [`@types/${name}`, version] as const;
    });
  return Object.fromEntries([...found, ...types]);
}
