// Serves the built site as a careful host would: strict content policy, right types, nothing outside the folder.
// Runs on Node 20: built-in modules only. `node scripts/serve.mjs [folder]`, PORT and HOST from the environment.
import { promises as files, readFileSync, realpathSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { gzip } from 'node:zlib';

const pack = promisify(gzip);

const types = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.geojson': 'application/geo+json; charset=utf-8',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.jpg': 'image/jpeg',
  '.webp': 'image/webp',
  '.ico': 'image/x-icon',
  '.gpx': 'application/gpx+xml; charset=utf-8',
  '.csv': 'text/csv; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.xml': 'application/xml; charset=utf-8',
  '.pdf': 'application/pdf',
};
const shrinks = new Set(Object.keys(types).filter((end) => !['.png', '.jpg', '.webp', '.ico', '.pdf'].includes(end)));

/** The policy the site is built for: nothing from elsewhere, no inline scripts or styles. */
export const contentPolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  // The street map's pictures, asked for only once its button is pressed.
  "img-src 'self' https://tile.openstreetmap.org",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  // The gallery's pages of others.
  "frame-src 'self'",
  "base-uri 'none'",
  "form-action 'self'",
  "frame-ancestors 'self'",
].join('; ');

/** The worker's own: it fetches the pictures of the street map that a reader asked it to keep. */
export const workerPolicy = contentPolicy.replace(
  "connect-src 'self'",
  "connect-src 'self' https://tile.openstreetmap.org",
);

const everywhere = {
  'Content-Security-Policy': contentPolicy,
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Permissions-Policy': 'geolocation=(self), camera=(), microphone=()',
};

/** Serves `folder`; resolves to `{ address, close }`, or throws an error with a `code` such as EADDRINUSE. */
export async function serve({ folder, port, host }) {
  const root = realpathSync(folder);
  const answer = (request, response) =>
    respond(root, request, response).catch(() => {
      // A file that went away meanwhile, as when the site is built anew.
      if (response.headersSent) response.destroy();
      else response.writeHead(404, { ...everywhere, 'Content-Type': 'text/plain' }).end('Not found');
    });
  return open({ port, host, answer });
}

/** Throws, with a `code`, if nothing can be served on this port. */
export async function tryPort({ port, host }) {
  const trial = await open({ port, host, answer: (_, response) => response.destroy() });
  await trial.close();
}

async function open({ port, host, answer }) {
  // Both loopback addresses, since browsers differ in which one "localhost" means.
  const hosts = host ? [host] : ['127.0.0.1', '::1'];
  const servers = [];
  for (const address of hosts) {
    try {
      servers.push(await listen(answer, port, address));
    } catch (error) {
      if (servers.length > 0 && (error.code === 'EADDRNOTAVAIL' || error.code === 'EAFNOSUPPORT')) continue;
      for (const server of servers) server.close();
      throw error;
    }
  }
  const close = () => Promise.all(servers.map(end));
  // Port 0 asks for any that is free.
  return { address: `http://${host ?? 'localhost'}:${servers[0].address().port}/`, close };
}

function end(server) {
  server.closeAllConnections();
  return new Promise((done) => server.close(done));
}

function listen(answer, port, host) {
  return new Promise((done, fail) => {
    const server = createServer(answer);
    server.once('error', fail);
    server.listen({ port, host, ipv6Only: host === '::1' }, () => done(server));
  });
}

async function respond(root, request, response) {
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    response.writeHead(405, { ...everywhere, Allow: 'GET, HEAD' }).end();
    return;
  }
  const cut = request.url.indexOf('?');
  const path = placeOf(cut < 0 ? request.url : request.url.slice(0, cut));
  const found = path === undefined ? undefined : await find(root, path);
  if (found?.folder) {
    const query = cut < 0 ? '' : request.url.slice(cut);
    // Rebuilt from the parts, so that "//elsewhere" cannot become an address of another host.
    const to = `/${path.split('/').filter(Boolean).map(encodeURIComponent).join('/')}/`;
    response.writeHead(308, { ...everywhere, Location: to + query }).end();
    return;
  }
  if (found) await send({ request, response, file: found.file, status: 200 });
  else await send({ request, response, file: join(root, '404.html'), status: 404 });
}

/** The path asked for, decoded and without steps upwards; nothing if it is not a sound one. */
function placeOf(url) {
  let path;
  try {
    path = decodeURIComponent(url);
  } catch {
    return undefined;
  }
  const unsound = path.includes('\0') || path.includes('\\') || path.split('/').includes('..');
  return unsound || !path.startsWith('/') ? undefined : path;
}

async function find(root, path) {
  try {
    const real = await files.realpath(join(root, path));
    if (real !== root && !real.startsWith(root + sep)) return undefined;
    const about = await files.stat(real);
    if (about.isFile()) return path.endsWith('/') ? undefined : { file: real };
    const index = join(real, 'index.html');
    if (!(await files.stat(index)).isFile()) return undefined;
    return path.endsWith('/') ? { file: index } : { folder: true };
  } catch {
    return undefined;
  }
}

async function send({ request, response, file, status }) {
  const end = extname(file).toLowerCase();
  const headers = { ...everywhere, 'Content-Type': types[end] ?? 'application/octet-stream', Vary: 'Accept-Encoding' };
  // Names under _astro and parts carry a hash of what is in them.
  const lasting = file.includes(`${sep}_astro${sep}`) || file.includes(`${sep}embed${sep}parts${sep}`);
  headers['Cache-Control'] = lasting ? 'public, max-age=31536000, immutable' : 'no-cache';
  if (file.endsWith(`${sep}sw.js`)) headers['Content-Security-Policy'] = workerPolicy;
  // Elsewhere a page of another site may load the elements from here.
  if (file.includes(`${sep}embed${sep}`)) headers['Access-Control-Allow-Origin'] = '*';
  // Whole files, not streams: they are small, and a reader who goes away half-way leaves nothing open.
  let body = await files.readFile(file);
  if (shrinks.has(end) && /\bgzip\b/.test(request.headers['accept-encoding'] ?? '')) {
    headers['Content-Encoding'] = 'gzip';
    body = await pack(body);
  }
  headers['Content-Length'] = body.length;
  response.writeHead(status, headers).end(request.method === 'HEAD' ? undefined : body);
}

/** The port asked for in the environment, or the usual one. Throws a plain message. */
export function portFrom(text, usual) {
  if (text === undefined || text === '') return usual;
  const port = Number(text);
  if (!Number.isInteger(port) || port < 1 || port > 65535) {
    throw new Error(`PORT is "${text}"; it should be a whole number from 1 to 65535, as in: PORT=8080 npm start`);
  }
  return port;
}

/** What to tell someone whose port cannot be had. */
export function listenFailure(error, port) {
  if (error.code === 'EADDRINUSE') {
    return `Port ${port} is already in use by another program. Choose another one: PORT=${port + 1} npm start`;
  }
  if (error.code === 'EACCES') {
    return `Port ${port} is reserved on this machine. Choose a higher one: PORT=8080 npm start`;
  }
  return `The site could not be served on port ${port}: ${error.message}`;
}

if (process.argv[1] && realpathSync(process.argv[1]) === fileURLToPath(import.meta.url)) {
  const folder = resolve(process.argv[2] ?? fileURLToPath(new URL('../dist', import.meta.url)));
  let port;
  try {
    port = portFrom(process.env.PORT, 4321);
    readFileSync(join(folder, 'index.html'));
    const site = await serve({ folder, port, host: process.env.HOST });
    console.log(`Serving ${site.address}`);
    for (const signal of ['SIGINT', 'SIGTERM']) process.once(signal, () => site.close().then(() => process.exit(0)));
  } catch (error) {
    const noSite = error.code === 'ENOENT' ? 'There is no built site yet: run npm run build first.' : undefined;
    console.error(noSite ?? (error.code ? listenFailure(error, port) : error.message));
    process.exit(1);
  }
}
