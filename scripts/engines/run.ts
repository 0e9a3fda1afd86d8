/** npm run test:engines: one walk through the built site in Chromium, Firefox and WebKit, and the same figures in each. */
import { resolve } from 'node:path';
import { serve } from '../serve.mjs';
import { startChromium } from './chromium.ts';
import type { Engine } from './engine.ts';
import { startFirefox } from './firefox.ts';
import { enginePrograms } from './programs.ts';
import { type Figures, walk } from './walk.ts';
import { startWebKit } from './webkit.ts';

/** Engines may round their own sines and powers in the last place. */
const APART = 1e-9;

const port = Number(process.env.HOMELEG_TEST_PORT || 4396);
const programs = enginePrograms();
const site = await serve({ folder: resolve(import.meta.dirname, '../../dist'), port, host: undefined });
const faults: string[] = [];
let first: Figures | undefined;
const starts: readonly (() => Promise<Engine>)[] = [
  startChromium,
  () => startFirefox(programs.firefox),
  () => startWebKit(programs),
];
try {
  for (const start of starts) {
    const engine = await start();
    const began = Date.now();
    try {
      const figures = await walk(engine, site.address);
      first ??= figures;
      for (const fault of differences(first, figures)) faults.push(`${engine.name}: ${fault}`);
      for (const line of engine.complaints()) faults.push(`${engine.name} complains: ${line}`);
      console.log(
        `${engine.name}: ${figures.verdict}, ${figures.distance} m, ${figures.left} left; ${((Date.now() - began) / 1000).toFixed(0)} s`,
      );
    } catch (error) {
      faults.push(`${engine.name}: ${error instanceof Error ? error.message : error}`, ...engine.complaints());
    } finally {
      await engine.close();
    }
  }
} finally {
  await site.close();
}
for (const fault of faults) console.error(fault);
console.log(faults.length === 0 ? 'Every engine says the same.' : `${faults.length} faults.`);
process.exit(faults.length === 0 ? 0 : 1);

/** Where figures are further apart than rounding, or words differ. */
function differences(a: object, b: object, path = ''): string[] {
  return Object.entries(a).flatMap(([key, mine]) => {
    const theirs = (b as Record<string, unknown>)[key];
    const place = path + key;
    if (typeof mine === 'object' && mine !== null) return differences(mine, theirs as object, `${place}.`);
    const same =
      typeof mine === 'number' && typeof theirs === 'number'
        ? Math.abs(mine - theirs) <= APART * Math.abs(mine)
        : mine === theirs;
    return same ? [] : [`${place} is ${theirs}, in Chromium ${mine}`];
  });
}
