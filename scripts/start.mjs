// `npm start`: installs what is missing, builds the site and serves it. Runs on Node 20 with nothing installed.

import { listenFailure, portFrom, serve, tryPort } from './serve.mjs';
import { installPackages, packageFile, projectNode, projectRoot } from './tools/packages.mjs';
import { runQuietly, stopAll } from './tools/run.mjs';

console.log('Homeleg: getting the site ready.');

let site;
let stopping = false;
for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, stop);

try {
  const port = portFrom(process.env.PORT, 4321);
  const host = process.env.HOST;
  const portTaken = (error) => {
    throw new Error(listenFailure(error, port));
  };
  // Asked before the long work, so that nobody waits for an install to hear about a taken port.
  await tryPort({ port, host }).catch(portTaken);
  await installPackages();
  await buildSite();
  site = await serve({ folder: `${projectRoot}/dist`, port, host }).catch(portTaken);
  console.log(`\nHomeleg is ready: ${site.address}\nPress Ctrl+C to stop.`);
} catch (error) {
  if (!stopping) {
    console.error(`\n${error.message}`);
    process.exit(1);
  }
}

async function buildSite() {
  console.log('Building the site ...');
  const build = await runQuietly(projectNode(), [packageFile('astro', 'bin', 'astro.mjs'), 'build'], {
    cwd: projectRoot,
    env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1' },
    beat: (seconds) => console.log(`  still building, ${seconds} s`),
  });
  if (build.code !== 0) throw new Error(`The site could not be built:\n\n${build.output.trimEnd()}`);
  console.log(`Built in ${build.seconds} s.`);
}

async function stop() {
  if (stopping) return;
  stopping = true;
  await stopAll();
  await site?.close();
  console.log('\nStopped.');
  process.exit(0);
}
