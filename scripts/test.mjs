// `npm test`: every check of the project, in order, up to the first that fails. Runs on Node 20 with nothing installed.
// `npm test -- unit build` runs only the named steps; those marked `apart` run only when named. The last line is always "N passed, N failed".
import { mkdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { findBrowser } from './tools/browser.mjs';
import { browserCounts, stepCounts, unitCounts } from './tools/counts.mjs';
import { installPackages, packageFile, projectNode, projectRoot } from './tools/packages.mjs';
import { runAloud, stopAll } from './tools/run.mjs';

const reports = join(projectRoot, 'test-results');
const unitReport = join(reports, 'unit.json');
const browserReport = join(reports, 'browser.json');

// Colours only where somebody watches.
const onScreen = process.stdout.isTTY === true;
const plain = onScreen ? {} : { NO_COLOR: '1' };

const astro = packageFile('astro', 'bin', 'astro.mjs');
const steps = [
  {
    name: 'types',
    title: 'Type check',
    programs: [
      [astro, 'check', '--minimumSeverity', 'warning'],
      [packageFile('typescript', 'bin', 'tsc'), '--noEmit'],
    ],
  },
  {
    name: 'lint',
    title: 'Format, lint, what nobody uses',
    programs: [
      [
        packageFile('@biomejs', 'biome', 'bin', 'biome'),
        'ci',
        '--error-on-warnings',
        `--colors=${onScreen ? 'force' : 'off'}`,
      ],
      [packageFile('knip', 'bin', 'knip.js'), '--no-progress'],
    ],
  },
  {
    name: 'layers',
    title: 'Direction of dependencies',
    programs: [
      [
        packageFile('dependency-cruiser', 'bin', 'dependency-cruiser.mjs'),
        'src',
        '--config',
        '.dependency-cruiser.cjs',
      ],
    ],
  },
  {
    name: 'unit',
    title: 'Tests of the computation',
    programs: [
      [
        packageFile('vitest', 'vitest.mjs'),
        'run',
        '--silent=passed-only',
        '--reporter=default',
        '--reporter=json',
        `--outputFile.json=${unitReport}`,
      ],
    ],
    counts: () => unitCounts(unitReport),
    env: plain,
  },
  { name: 'build', title: 'Build of the site', programs: [[astro, 'build', '--silent']] },
  {
    name: 'browser',
    title: 'Tests in a real browser',
    programs: [[packageFile('@playwright', 'test', 'cli.js'), 'test', '--reporter=dot,json']],
    counts: () => browserCounts(browserReport),
  },
  {
    name: 'long',
    title: 'Long walks through the site in a real browser',
    apart: true,
    programs: [[packageFile('@playwright', 'test', 'cli.js'), 'test', '--reporter=dot,json']],
    counts: () => browserCounts(browserReport),
    env: { HOMELEG_LONG: '1' },
  },
  {
    name: 'package',
    title: 'The package, packed and installed by pages of other sites',
    apart: true,
    programs: [
      [
        packageFile('@playwright', 'test', 'cli.js'),
        'test',
        '--config=playwright.package.config.ts',
        '--reporter=dot,json',
      ],
    ],
    counts: () => browserCounts(browserReport),
  },
  {
    name: 'engines',
    title: 'The same walk in Chromium, Firefox and WebKit',
    apart: true,
    programs: [[join(projectRoot, 'scripts', 'engines', 'run.ts')]],
  },
];

/** Steps that need the browser. */
const SEES = ['browser', 'long', 'engines', 'package'];
/** Of these, those that see the built site. */
const SITE = ['browser', 'long', 'engines'];

const total = { passed: 0, failed: 0 };
let stopping = false;
for (const signal of ['SIGINT', 'SIGTERM']) {
  process.on(signal, async () => {
    stopping = true;
    await stopAll();
    finish(130);
  });
}

console.log('Homeleg: running the checks.');
try {
  const chosen = chooseSteps(process.argv.slice(2));
  await installPackages();
  const browser = chosen.some((step) => SEES.includes(step.name)) ? await findBrowser() : '';
  rmSync(reports, { recursive: true, force: true });
  mkdirSync(reports, { recursive: true });
  const env = {
    ...process.env,
    HOMELEG_BROWSER: browser,
    PLAYWRIGHT_JSON_OUTPUT_NAME: browserReport,
    ASTRO_TELEMETRY_DISABLED: '1',
  };
  let code = 0;
  for (const step of chosen) if (code === 0 && !stopping) code = (await passes(step, env)) ? 0 : 1;
  finish(code);
} catch (error) {
  if (!stopping) console.error(`\n${error.message}`);
  total.failed += 1;
  finish(1);
}

function chooseSteps(names) {
  const unknown = names.filter((name) => !steps.some((step) => step.name === name));
  if (unknown.length > 0) {
    throw new Error(`There is no step "${unknown[0]}". The steps are: ${steps.map((step) => step.name).join(', ')}.`);
  }
  // The browser sees the built site, so it is built anew for it.
  const wanted = names.some((name) => SITE.includes(name)) ? [...names, 'build'] : names;
  return names.length === 0 ? steps.filter((step) => !step.apart) : steps.filter((step) => wanted.includes(step.name));
}

async function passes(step, env) {
  console.log(`\n== ${step.title} (${step.name})`);
  const start = Date.now();
  let code = 0;
  for (const [program, ...args] of step.programs) {
    code ||= await runAloud(projectNode(), [program, ...args], { cwd: projectRoot, env: { ...env, ...step.env } });
  }
  // Tests that left no report did not run.
  if (step.counts && !step.counts()) code ||= 1;
  const counts = stepCounts({ code, counts: step.counts?.() });
  total.passed += counts.passed;
  total.failed += counts.failed;
  const seconds = ((Date.now() - start) / 1000).toFixed(1);
  const skipped = counts.skipped > 0 ? `, ${counts.skipped} skipped` : '';
  console.log(`-- ${step.name}: ${code === 0 ? 'passed' : 'FAILED'} in ${seconds} s${skipped}`);
  return code === 0;
}

function finish(code) {
  // Once stopped, only the stop itself may end the run.
  if (stopping && code !== 130) return;
  console.log(`\n${total.passed} passed, ${total.failed} failed`);
  process.exit(code);
}
