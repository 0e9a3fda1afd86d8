import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

/** The packed package, as a registry would hand it out. */
export function packed(): string {
  return process.env.HOMELEG_PACKED!;
}

/** An empty project somewhere else with the files of `site` in it, if any, and the packed package installed. */
export function project(name: string, site?: string): string {
  const folder = join(dirname(packed()), name);
  mkdirSync(folder, { recursive: true });
  if (site) cpSync(`tests/package/sites/${site}`, folder, { recursive: true });
  else writeFileSync(join(folder, 'package.json'), '{ "private": true, "type": "module" }');
  execFileSync('npm', ['install', '--no-audit', '--no-fund', '--prefer-offline', packed()], {
    cwd: folder,
    stdio: 'pipe',
  });
  return folder;
}

/** Runs a program that the project installed; throws with what it said if it fails. */
export function run(folder: string, program: string, ...args: readonly string[]): string {
  try {
    return execFileSync(join(folder, 'node_modules/.bin', program), args, {
      cwd: folder,
      encoding: 'utf8',
      stdio: 'pipe',
    });
  } catch (error) {
    const { stdout, stderr } = error as { stdout: string; stderr: string };
    throw new Error(`${program} ${args.join(' ')}\n${stdout}\n${stderr}`);
  }
}

/** Two trips of which the second has hardly anything in the tank. */
export function twoTrips(): readonly [unknown, unknown] {
  const read = (name: string) => JSON.parse(readFileSync(`shared/trips/${name}.json`, 'utf8'));
  const petrol = read('petrol-day');
  return [read('electric-tender'), { ...petrol, load: { ...petrol.load, fill: 0.05 } }];
}
