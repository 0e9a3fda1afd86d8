import { execFileSync, type SpawnSyncOptions, spawnSync } from 'node:child_process';
import { existsSync, globSync } from 'node:fs';

/** Debian's packages with what is needed of each. */
const PACKAGES = ['firefox-esr', 'webkit2gtk-driver', 'xvfb', 'xauth'];

export interface Programs {
  readonly firefox: string;
  readonly driver: string;
  readonly browser: string;
  readonly screen: string;
}

/** The browsers on this machine; root on Debian gets what is missing installed, anybody else is told what to install. */
export function enginePrograms(): Programs {
  const before = look();
  if (before) return before;
  if (process.getuid?.() === 0 && onPath('apt-get')) {
    console.log(`Installing ${PACKAGES.join(', ')}.`);
    const options: SpawnSyncOptions = {
      stdio: ['ignore', 'ignore', 'inherit'],
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    };
    spawnSync('apt-get', ['update'], options);
    spawnSync('apt-get', ['install', '-y', '--no-install-recommends', ...PACKAGES], options);
    const after = look();
    if (after) return after;
  }
  throw new Error(
    `The other engines are not on this machine. Install Debian's packages and run this again:\n  apt-get install --no-install-recommends ${PACKAGES.join(' ')}`,
  );
}

function look(): Programs | undefined {
  const [firefox, driver, screen] = [
    onPath('firefox-esr') ?? onPath('firefox'),
    onPath('WebKitWebDriver'),
    onPath('xvfb-run'),
  ];
  const [browser] = globSync('/usr/lib/*/webkit2gtk-4.*/MiniBrowser').sort().reverse();
  return firefox && driver && browser && screen && existsSync(browser)
    ? { firefox, driver, browser, screen }
    : undefined;
}

function onPath(program: string): string | undefined {
  try {
    return execFileSync('/bin/sh', ['-c', `command -v ${program}`], { encoding: 'utf8' }).trim() || undefined;
  } catch {
    return undefined;
  }
}
