import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { listenFailure, portFrom, serve, tryPort } from '../../scripts/serve.mjs';

interface Answer {
  status: number;
  headers: Record<string, string | string[] | undefined>;
  text: string;
}

const outside = mkdtempSync(join(tmpdir(), 'homeleg-serve-'));
const folder = join(outside, 'dist');
let port: number;
let site: { address: string; close(): Promise<unknown> };

// Sends the path as it stands; `fetch` would tidy "..", which is what is tried here.
function get(path: string, { method = 'GET', headers = {} } = {}): Promise<Answer> {
  return new Promise((done, fail) => {
    const asking = request({ host: '127.0.0.1', port, path, method, headers }, (response) => {
      let text = '';
      response.setEncoding('utf8');
      response.on('data', (part) => {
        text += part;
      });
      response.on('end', () => done({ status: response.statusCode!, headers: response.headers, text }));
    });
    asking.on('error', fail);
    asking.end();
  });
}

beforeAll(async () => {
  mkdirSync(join(folder, 'hire'), { recursive: true });
  mkdirSync(join(folder, '_astro'));
  mkdirSync(join(folder, 'empty'));
  mkdirSync(join(folder, 'embed'));
  writeFileSync(join(folder, 'embed', 'planner.js'), 'export {};');
  writeFileSync(join(outside, 'secret.txt'), 'secret');
  writeFileSync(join(folder, 'index.html'), '<h1>home</h1>');
  writeFileSync(join(folder, 'sw.js'), '');
  writeFileSync(join(folder, '404.html'), '<h1>nothing here</h1>');
  writeFileSync(join(folder, 'hire', 'index.html'), '<h1>hire</h1>');
  writeFileSync(join(folder, '_astro', 'a.js'), 'export {};');
  symlinkSync(join(outside, 'secret.txt'), join(folder, 'way-out.txt'));
  for (port = 4700; port < 4800; port++) {
    try {
      site = await serve({ folder, port, host: undefined });
      return;
    } catch {
      // Taken: the next one.
    }
  }
});

afterAll(async () => {
  await site.close();
  rmSync(outside, { recursive: true, force: true });
});

describe('the server of the built site', () => {
  it('gives a folder its page, and sends an address without the last slash there', async () => {
    expect(await get('/hire/')).toMatchObject({ status: 200, text: '<h1>hire</h1>' });
    const moved = await get('/hire?boat=1');
    expect(moved.status).toBe(308);
    expect(moved.headers.location).toBe('/hire/?boat=1');
  });

  it('sets a strict policy and the right type on everything', async () => {
    for (const [path, type] of [
      ['/', 'text/html; charset=utf-8'],
      ['/_astro/a.js', 'text/javascript; charset=utf-8'],
      ['/gone', 'text/html; charset=utf-8'],
    ] as const) {
      const { headers } = await get(path);
      expect(headers['content-type']).toBe(type);
      expect(headers['x-content-type-options']).toBe('nosniff');
      expect(headers['content-security-policy']).toContain("default-src 'none'");
      // One address outside, for pictures only: the street map a user may press for.
      const [policy, pictures] = [headers['content-security-policy'], "img-src 'self' https://tile.openstreetmap.org"];
      expect(policy).toContain(pictures);
      expect(String(policy).replace(pictures, '')).not.toMatch(/unsafe|\*|https?:/);
    }
  });

  it('lets only the worker fetch pictures of the street map, by an exception of its own', async () => {
    const policy = String((await get('/sw.js')).headers['content-security-policy']);
    expect(policy).toContain("connect-src 'self' https://tile.openstreetmap.org");
    expect((await get('/')).headers['content-security-policy']).toContain("connect-src 'self';");
  });

  it('lets a browser keep what carries a hash in its name, and nothing else', async () => {
    expect((await get('/_astro/a.js')).headers['cache-control']).toContain('immutable');
    expect((await get('/')).headers['cache-control']).toBe('no-cache');
  });

  it.each([
    '/../secret.txt',
    '/%2e%2e/secret.txt',
    '/hire/..%2f..%2fsecret.txt',
    '/..\\secret.txt',
    '/way-out.txt',
    '/index.html%00.txt',
    '/%zz',
    '/empty/',
    '/empty',
    '/hire/index.html/',
  ])('answers %s with the page for what is not there', async (path) => {
    expect(await get(path)).toMatchObject({ status: 404, text: '<h1>nothing here</h1>' });
  });

  it('never sends anybody to another host', async () => {
    for (const path of ['//hire', '///hire', '/.//hire']) {
      const { status, headers } = await get(path);
      expect([308, 404]).toContain(status);
      expect(headers.location ?? '/').not.toMatch(/^\/\//);
    }
  });

  it('packs text for those who can unpack it', async () => {
    expect((await get('/', { headers: { 'accept-encoding': 'gzip' } })).headers['content-encoding']).toBe('gzip');
    expect((await get('/')).headers['content-encoding']).toBeUndefined();
  });

  it('answers a question about the headers without a body, and refuses to be written to', async () => {
    expect(await get('/', { method: 'HEAD' })).toMatchObject({ status: 200, text: '' });
    expect((await get('/', { method: 'POST' })).status).toBe(405);
  });

  it('goes on when readers go away half-way', async () => {
    const leave = (after: number) =>
      new Promise<void>((done) => {
        const reader = connect(port, '127.0.0.1', () => {
          // Several at once, so that some are still being looked up when the reader leaves.
          reader.write('GET / HTTP/1.1\r\nHost: here\r\nAccept-Encoding: gzip\r\n\r\n'.repeat(8));
          setTimeout(() => reader.resetAndDestroy(), after);
        });
        reader.on('close', () => done());
        reader.on('error', () => {});
      });
    for (let i = 0; i < 30; i++) await Promise.all([leave(0), leave(1), leave(2), leave(4)]);
    expect((await get('/')).status).toBe(200);
  });

  it('lets another site load the elements, and nothing else', async () => {
    expect((await get('/embed/planner.js')).headers['access-control-allow-origin']).toBe('*');
    expect((await get('/')).headers['access-control-allow-origin']).toBeUndefined();
  });

  it('says which port is taken and how to choose another', async () => {
    const error = await tryPort({ port, host: undefined }).catch((taken: Error) => taken);
    expect(listenFailure(error, port)).toContain(`Port ${port} is already in use`);
    expect(listenFailure(error, port)).toContain(`PORT=${port + 1} npm start`);
  });

  it('takes the port from the environment if it is one', () => {
    expect(portFrom(undefined, 4321)).toBe(4321);
    expect(portFrom('', 4321)).toBe(4321);
    expect(portFrom('8080', 4321)).toBe(8080);
    for (const text of ['0', '65536', 'eighty', '80.5', '-1']) expect(() => portFrom(text, 4321)).toThrow(text);
  });
});
