import { existsSync, globSync, readFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = resolve(dirname(fileURLToPath(import.meta.url)), '../..');
/** Where the package is put together; not under `dist`, which is served and emptied. */
export const packageFolder = join(root, 'dist-package');

/** An element that other sites may use: its folder has a `define.ts`, which registers it. */
export interface PublishedElement {
  /** Name of the folder, and of the package's entry. */
  readonly name: string;
  readonly tag: string;
  readonly className: string;
  /** Module of the class and module that registers it, from the project's root. */
  readonly module: string;
  readonly define: string;
}

/** All elements with a `define.ts`, the planner first. */
export function publishedElements(): readonly PublishedElement[] {
  return globSync('src/components/*/define.ts', { cwd: root })
    .map((file) => file.replaceAll('\\', '/'))
    .map((define) => {
      const folder = dirname(define);
      const name = folder.split('/').at(-1)!;
      const module = `${folder}/${name}.ts`;
      // A piece of other elements is registered by its own module already.
      const registered = [define, module].map(registeredIn).find(Boolean);
      if (!registered) throw new Error(`neither ${define} nor ${name}.ts registers an element`);
      return { name, ...registered, module, define };
    })
    .sort((a, b) => Number(b.name === 'planner') - Number(a.name === 'planner') || (a.name < b.name ? -1 : 1));
}

function registeredIn(file: string): { tag: string; className: string } | undefined {
  if (!existsSync(join(root, file))) return undefined;
  const [, tag, className] = /\bdefine\('(homeleg-[\w-]+)', (\w+)\)/.exec(readFileSync(join(root, file), 'utf8')) ?? [];
  return tag && className ? { tag, className } : undefined;
}

/** Tags of the languages that have a file. */
export function languageTags(): readonly string[] {
  return globSync('src/languages/*.ts', { cwd: root })
    .map((file) => /([\w-]+)\.ts$/.exec(file)![1]!)
    .sort();
}

/** Modules that a worker is started from; nothing imports them by name. */
export function workerModules(): readonly string[] {
  return globSync('src/components/**/*-worker.ts', { cwd: root }).map((file) => file.replaceAll('\\', '/'));
}

export interface Description {
  readonly version: string;
  readonly description: string;
  readonly license: string;
  readonly dependencies: Readonly<Record<string, string>>;
  readonly devDependencies: Readonly<Record<string, string>>;
}

export function projectDescription(): Description {
  return JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
}
