import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { contentPolicy, workerPolicy } from '../../scripts/serve.mjs';

interface Locked {
  readonly license?: string;
  readonly integrity?: string;
  readonly resolved?: string;
  readonly dev?: boolean;
  readonly hasInstallScript?: boolean;
}

const text = (file: string): string => readFileSync(new URL(`../../${file}`, import.meta.url), 'utf8');
const own = JSON.parse(text('package.json'));
const lock: Readonly<Record<string, Locked>> = JSON.parse(text('package-lock.json')).packages;
const packages = Object.entries(lock).filter(([path]) => path !== '');
const nameOf = (path: string) => path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length);

/** Licences that ask for no more than their text to be kept. */
const FREE = new Set(['MIT', 'ISC', 'Apache-2.0', 'BSD-2-Clause', 'BSD-3-Clause', '0BSD', 'MIT OR Apache-2.0']);
/** Read by hand, for their package files do not say it, or misspell it: both are BSD. */
const READ: Readonly<Record<string, RegExp>> = {
  suncalc: /Redistribution and use in source and binary forms/,
  'splaytree-ts': /Redistribution and use in source and binary forms/,
};
/** Of tools and test oracles, which nothing of the site is made of. */
const TOOLS = new Set([
  ...FREE,
  'MPL-2.0',
  'BlueOak-1.0.0',
  'CC0-1.0',
  'Python-2.0',
  'Unlicense',
  'LGPL-3.0-or-later',
  'Apache-2.0 AND LGPL-3.0-or-later',
  'Apache-2.0 AND LGPL-3.0-or-later AND MIT',
]);

describe('the lock file', () => {
  it('holds the sum of every package, and names no registry', () => {
    expect(packages.length).toBeGreaterThan(100);
    for (const [path, { integrity, resolved }] of packages) {
      expect(integrity, path).toMatch(/^sha512-/);
      expect(resolved, path).toBeUndefined();
    }
  });

  it('lets no package run a script when it is installed but those approved', () => {
    const scripted = packages.filter(([, one]) => one.hasInstallScript).map(([path]) => nameOf(path));
    expect(new Set(scripted)).toEqual(new Set(Object.keys(own.allowScripts)));
    // None of them is part of the site.
    for (const [path, one] of packages) if (one.hasInstallScript) expect(one.dev, path).toBe(true);
  });

  it('has only free licences in what the site is made of, and known ones in the tools', () => {
    for (const [path, { license, dev }] of packages) {
      const name = nameOf(path);
      if (READ[name]) expect(licenceFile(path)).toMatch(READ[name]);
      else expect([...(dev ? TOOLS : FREE)], `${path}: ${license}`).toContain(license);
    }
  });

  it('has a reason in DEVELOPERS.md for every package asked for', () => {
    const [, tables] = text('DEVELOPERS.md').split('## Dependencies');
    for (const name of [...Object.keys(own.dependencies), ...Object.keys(own.devDependencies)]) {
      // "workbox-precaching, -routing" is one row.
      const short = name.replace(/^workbox-/, '-');
      const rows = tables!.split('\n').filter((line) => line.startsWith('|'));
      expect(
        rows.some((row) => row.includes(name) || row.includes(short)),
        name,
      ).toBe(true);
    }
  });
});

describe('the headers for a host', () => {
  it('are those that the site is tried under', () => {
    const page = text('docs/host-headers.md');
    expect(page).toContain(`Content-Security-Policy: ${contentPolicy}\n`);
    const worker = workerPolicy.split('; ').find((part) => !contentPolicy.split('; ').includes(part));
    expect(page).toContain(`with \`${worker}\``);
    const served = text('scripts/serve.mjs');
    for (const line of ['X-Content-Type-Options: nosniff', 'Referrer-Policy: no-referrer']) {
      const [name, value] = line.split(': ');
      expect(page).toContain(line);
      expect(served).toContain(`'${name}': '${value}'`);
    }
    const permissions = /'Permissions-Policy': '([^']+)'/.exec(served)![1];
    expect(page).toContain(`Permissions-Policy: ${permissions}\n`);
  });
});

function licenceFile(path: string): string {
  for (const name of ['LICENSE', 'LICENSE.md', 'LICENSE.txt']) {
    try {
      return text(`${path}/${name}`);
    } catch {
      // Another spelling.
    }
  }
  return '';
}
