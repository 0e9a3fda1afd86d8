import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from '@playwright/test';
import { packed, project, twoTrips } from './project.ts';

function node(folder: string, program: string): string {
  return execFileSync(process.execPath, ['--input-type=module', '--eval', program], { cwd: folder, encoding: 'utf8' });
}

function ours(program: string, ...args: readonly string[]): string {
  const found = spawned(join('node_modules/.bin', program), args);
  expect(found.code, found.said).toBe(0);
  return found.said;
}

function spawned(program: string, args: readonly string[]): { code: number; said: string } {
  try {
    return { code: 0, said: execFileSync(program, args, { encoding: 'utf8', stdio: 'pipe' }) };
  } catch (error) {
    const { status, stdout, stderr } = error as { status: number; stdout: string; stderr: string };
    return { code: status, said: stdout + stderr };
  }
}

test('the packed package is as registries, bundlers and TypeScript want it', () => {
  ours('publint', 'dist-package', '--strict');
  ours('attw', packed(), '--profile', 'esm-only', '--format', 'ascii');
});

test('every entry can be imported in plain Node, where there is no page', () => {
  const folder = project('node');
  const { exports } = JSON.parse(readFileSync(join(folder, 'node_modules/homeleg/package.json'), 'utf8')) as {
    exports: Record<string, unknown>;
  };
  // One script for a page only; files to copy; descriptions.
  const entries = Object.keys(exports).filter((path) => !/standalone|embed|\.json$/.test(path));
  expect(entries.length).toBeGreaterThan(15);
  const names = entries.map((path) => path.replace(/^\./, 'homeleg'));
  const said = node(
    folder,
    `const found = [];
    for (const name of ${JSON.stringify(names)}) found.push([name, Object.keys(await import(name))]);
    if ('document' in globalThis) throw new Error('there is a page');
    console.log(JSON.stringify(Object.fromEntries(found)));`,
  );
  const found = JSON.parse(said) as Record<string, readonly string[]>;
  expect(found['homeleg/planner']).toEqual(['Planner']);
  expect(found['homeleg/core']).toContain('planTrip');
  expect(found['homeleg/languages/de']).toEqual(['language', 'words']);

  writeFileSync(join(folder, 'trips.json'), JSON.stringify(twoTrips()));
  const answers = node(
    folder,
    `import { readFileSync } from 'node:fs';
    import { planTrip, readTrip } from 'homeleg/core';
    for (const given of JSON.parse(readFileSync('trips.json', 'utf8'))) {
      const trip = readTrip(given);
      const plan = planTrip(trip.value, undefined);
      console.log(plan.value.verdict);
    }`,
  );
  expect(answers.trim().split('\n')).toEqual(['marginal', 'no-go']);
});

test('a program that asks for one method of the core gets no element, and an unused class falls away', async () => {
  const { build } = await import('vite');
  const folder = project('shaken');
  const size = async (code: string) => {
    const entry = join(folder, 'entry.js');
    writeFileSync(entry, code);
    const built = await build({
      root: folder,
      configFile: false,
      logLevel: 'error',
      build: { write: false, rolldownOptions: { input: entry, preserveEntrySignatures: false } },
    });
    const { output } = built as { output: { type: string; code?: string }[] };
    return output.reduce((sum, { code: text = '' }) => sum + text.length, 0);
  };
  const whole = await size(`import { planTrip } from 'homeleg'; console.log(planTrip);`);
  const door = await size(`import { readProfile } from 'homeleg'; console.log(readProfile);`);
  const unused = await size(`import { Planner } from 'homeleg/planner'; import { planTrip } from 'homeleg/core';`);
  expect(door).toBeLessThan(whole / 2);
  expect(unused).toBeLessThan(whole);
});

test('the description of the elements names each tag, and every file it names is there', () => {
  const manifest = JSON.parse(readFileSync('dist-package/custom-elements.json', 'utf8')) as {
    modules: { path: string; declarations: { tagName: string; summary?: string }[] }[];
  };
  const tags = manifest.modules.flatMap(({ declarations }) => declarations.map(({ tagName }) => tagName));
  expect(tags).toEqual(expect.arrayContaining(['homeleg-planner', 'homeleg-reserve-check', 'homeleg-checklist']));
  for (const { path, declarations } of manifest.modules) {
    expect(readFileSync(join('dist-package', path), 'utf8')).toContain('class');
    for (const { summary } of declarations) expect(summary).toBeTruthy();
  }
});

test('the notices hold the licence of everything the package needs', () => {
  const notices = readFileSync('dist-package/THIRD-PARTY-NOTICES.txt', 'utf8');
  const { dependencies } = JSON.parse(readFileSync('dist-package/package.json', 'utf8')) as {
    dependencies: Record<string, string>;
  };
  for (const name of [...Object.keys(dependencies), 'lit-html', 'rbush'].filter(
    (one) => notices.includes(`${one} `) || one in dependencies,
  )) {
    expect(notices, name).toMatch(new RegExp(`^${name.replace('/', '\\/')} \\d`, 'm'));
  }
  expect(notices).not.toContain('undefined');
});
