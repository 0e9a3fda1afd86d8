import { accessSync, constants, existsSync, readFileSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { runQuietly } from './run.mjs';

const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];
const usualPlaces = {
  darwin: [
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
  ],
  win32: ['C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe'],
};

/** Path of the browser the tests run in: named in HOMELEG_BROWSER, found, or installed on Debian as root. Throws a plain message. */
export async function findBrowser() {
  const named = process.env.HOMELEG_BROWSER;
  if (named) {
    if (!runs(named)) throw new Error(`HOMELEG_BROWSER is "${named}", which is no program that can be run.`);
    return named;
  }
  const found = onThisMachine();
  if (found) return found;
  if (!isDebian() || process.getuid?.() !== 0) throw new Error(noBrowser);

  console.log('No Chromium found. Installing it with apt-get, a minute or two ...');
  const beat = (seconds) => console.log(`  still installing, ${seconds} s`);
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  // The list of packages may be old or absent; if it cannot be renewed, the install itself will tell.
  await runQuietly('apt-get', ['update'], { env, beat });
  const install = await runQuietly('apt-get', ['install', '-y', '--no-install-recommends', 'chromium'], { env, beat });
  const installed = onThisMachine();
  if (install.code !== 0 || !installed) {
    throw new Error(`${noBrowser}\n\napt-get said:\n${install.output.trimEnd().split('\n').slice(-10).join('\n')}`);
  }
  return installed;
}

const noBrowser = [
  'The browser tests need Chromium or Google Chrome, and none was found.',
  'Install one, or name its program: HOMELEG_BROWSER=/path/to/chromium npm test',
  'The other tests run without it: npm test -- types lint layers unit build',
].join('\n');

function onThisMachine() {
  const folders = (process.env.PATH ?? '').split(delimiter).filter(Boolean);
  const onPath = names.flatMap((name) => folders.map((folder) => join(folder, name)));
  return [...onPath, ...(usualPlaces[process.platform] ?? [])].find(runs);
}

function runs(file) {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

function isDebian() {
  if (!existsSync('/etc/os-release')) return false;
  // Ubuntu's package of this name is only a pointer to another installer.
  return /^ID="?debian"?$/m.test(readFileSync('/etc/os-release', 'utf8'));
}
