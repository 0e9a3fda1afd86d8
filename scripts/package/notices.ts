import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { projectDescription, root } from './published.ts';

/** Packages that the elements may hold; the rest of the project's are parts of the site alone. */
export function builtIn(): readonly string[] {
  return Object.keys(projectDescription().dependencies).filter((name) => !/^(workbox-|minisearch$)/.test(name));
}

interface Locked {
  readonly version: string;
  readonly license?: string;
  readonly dependencies?: Readonly<Record<string, string>>;
}

/** Licences of the packages named and of all that these need, as the lock has them, in their own words. */
export function thirdPartyNotices(names: Iterable<string>): string {
  const { packages } = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')) as {
    packages: Readonly<Record<string, Locked>>;
  };
  const found = withTheirs(
    [...names].map((name) => `node_modules/${name}`),
    packages,
  );
  const notices = [...found].sort().map((path) => {
    const name = path.split('node_modules/').at(-1)!;
    const { version, license } = packages[path]!;
    return `${name} ${version} (${license ?? 'see below'})\n\n${licenceText(path, license)}`;
  });
  const line = `\n\n${'-'.repeat(72)}\n\n`;
  return `What Homeleg is built with, and under which terms. Homeleg itself: see LICENSE.${line}${notices.join(line)}\n`;
}

function withTheirs(paths: readonly string[], packages: Readonly<Record<string, Locked>>): ReadonlySet<string> {
  const found = new Set(paths);
  for (const path of found) {
    const locked = packages[path];
    if (!locked) throw new Error(`package-lock.json has no ${path}`);
    for (const name of Object.keys(locked.dependencies ?? {})) found.add(placeOf(name, path, packages));
  }
  return found;
}

/** Where a package finds another one: in its own folder first, then outwards. */
function placeOf(name: string, from: string, packages: Readonly<Record<string, Locked>>): string {
  for (let at = from; ; at = at.slice(0, Math.max(0, at.lastIndexOf('/node_modules/')))) {
    const path = `${at && `${at}/`}node_modules/${name}`;
    if (packages[path] || at === '') return path;
  }
}

function licenceText(path: string, license: string | undefined): string {
  const folder = join(root, path);
  const file = existsSync(folder) && readdirSync(folder).find((name) => /^(licen[cs]e|copying)(\.|-|$)/i.test(name));
  if (file) return readFileSync(join(folder, file), 'utf8').trim();
  const { author, license: named = license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as {
    author?: string | { name: string };
    license?: string;
  };
  const by = typeof author === 'object' ? author.name : (author ?? 'its authors');
  const text = named && STANDARD[named]?.();
  if (!text) throw new Error(`${path} has no text of its licence ${named}`);
  return `Copyright (c) ${by}\n\n${text}`;
}

/** The usual words of a licence, for packages that hold only its name. */
const STANDARD: Readonly<Record<string, () => string>> = {
  MIT: () => withoutHolder(join(root, 'LICENSE')),
  'BSD-3-Clause': () => withoutHolder(join(root, 'node_modules/lit/LICENSE')),
  ISC: () => `ISC License

Permission to use, copy, modify, and/or distribute this software for any purpose with or without fee is hereby granted,
provided that the above copyright notice and this permission notice appear in all copies.

THE SOFTWARE IS PROVIDED "AS IS" AND THE AUTHOR DISCLAIMS ALL WARRANTIES WITH REGARD TO THIS SOFTWARE INCLUDING ALL
IMPLIED WARRANTIES OF MERCHANTABILITY AND FITNESS. IN NO EVENT SHALL THE AUTHOR BE LIABLE FOR ANY SPECIAL, DIRECT,
INDIRECT, OR CONSEQUENTIAL DAMAGES OR ANY DAMAGES WHATSOEVER RESULTING FROM LOSS OF USE, DATA OR PROFITS, WHETHER IN AN
ACTION OF CONTRACT, NEGLIGENCE OR OTHER TORTIOUS ACTION, ARISING OUT OF OR IN CONNECTION WITH THE USE OR PERFORMANCE OF
THIS SOFTWARE.`,
};

function withoutHolder(file: string): string {
  return readFileSync(file, 'utf8')
    .replace(/^Copyright.*\n+/m, '')
    .trim();
}
