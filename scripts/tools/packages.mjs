// Runs on Node 20 with nothing installed: built-in modules only.
import { existsSync, readFileSync } from 'node:fs';
import { delimiter, join, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { runQuietly } from './run.mjs';

export const projectRoot = resolve(fileURLToPath(new URL('../..', import.meta.url)));

// npm brings the Node that the project is built with, whatever the machine has.
const broughtNode = join(
  projectRoot,
  'node_modules',
  'node',
  'bin',
  process.platform === 'win32' ? 'node.exe' : 'node',
);

/** The Node to run every step with: the one npm brought, else this one if it reads TypeScript by itself. */
export function projectNode() {
  if (existsSync(broughtNode)) return broughtNode;
  return process.features.typescript ? process.execPath : undefined;
}

/** Path of a program inside an installed package. */
export function packageFile(...parts) {
  return join(projectRoot, 'node_modules', ...parts);
}

/** Installs what the lock file asks for when anything of it is missing or of another version. Throws a plain message. */
export async function installPackages() {
  const wanted = readLock(join(projectRoot, 'package-lock.json'));
  const reason = missingReason(wanted, readLock(packageFile('.package-lock.json')), projectNode() !== undefined);
  if (!reason) return;
  console.log(`${reason} Installing, usually under a minute ...`);
  const npm = await runQuietly('npm', ['ci', '--include=dev', '--no-audit', '--no-fund', ...patience], {
    cwd: projectRoot,
    env: outsideEnvironment(),
    onPath: true,
    beat: (seconds) => console.log(`  still installing, ${seconds} s`),
  });
  if (npm.code !== 0) throw new Error(installFailure(npm));
  if (!projectNode()) {
    throw new Error(
      'Node.js 24 could not be set up inside the project: npm is told to run no install scripts, or this machine is of an unusual kind. Install Node.js 24 yourself and run this again.',
    );
  }
  console.log(`Installed in ${npm.seconds} s.`);
}

// npm waits minutes for a network that is not there; two short retries are enough to tell.
const patience = ['--fetch-retries=2', '--fetch-retry-mintimeout=1000', '--fetch-retry-maxtimeout=5000'];

/** Why an install is needed, or nothing. Optional packages are for other machines, so only wrong versions of them count. */
export function missingReason(wanted, present, nodePresent) {
  if (!present) return 'The packages are not installed yet.';
  for (const [place, asked] of Object.entries(wanted ?? {})) {
    if (place === '') continue;
    const found = present[place];
    if (found ? found.version !== asked.version : !asked.optional) return 'The list of packages has changed.';
  }
  return nodePresent ? undefined : 'The last installation did not finish.';
}

/** What to tell someone whose install failed. */
export function installFailure({ output, missing }) {
  if (missing) return 'npm was not found. It comes with Node.js: install Node.js 20 or later, then run this again.';
  if (/\b(ENOTFOUND|EAI_AGAIN|ECONNREFUSED|ECONNRESET|ETIMEDOUT|ENETUNREACH|EHOSTUNREACH)\b/.test(output)) {
    return [
      'The packages could not be fetched: no network, or the package registry does not answer.',
      'Connect once and run the same command again; afterwards Homeleg needs no network.',
    ].join('\n');
  }
  return `npm could not install the packages:\n\n${lastLines(output, 20)}`;
}

function lastLines(text, count) {
  return text.trimEnd().split('\n').slice(-count).join('\n');
}

function readLock(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8')).packages;
  } catch {
    return undefined;
  }
}

// `npm ci` deletes node_modules first, so neither npm nor its Node may be found in there.
function outsideEnvironment() {
  const env = { ...process.env };
  const inside = join(projectRoot, 'node_modules') + sep;
  const name = Object.keys(env).find((key) => key.toUpperCase() === 'PATH') ?? 'PATH';
  env[name] = (env[name] ?? '')
    .split(delimiter)
    .filter((folder) => !`${resolve(folder)}${sep}`.startsWith(inside))
    .join(delimiter);
  for (const key of ['NODE', 'npm_node_execpath', 'npm_execpath']) delete env[key];
  return env;
}
