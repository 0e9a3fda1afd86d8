import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Engine } from './engine.ts';

type Answer = Readonly<Record<string, unknown>>;

/** Firefox speaks WebDriver BiDi itself, over a socket: no driver beside it is needed. */
export async function startFirefox(program: string): Promise<Engine> {
  const profile = mkdtempSync(join(tmpdir(), 'homeleg-firefox-'));
  const browser = spawn(program, ['--headless', '--no-remote', '--profile', profile, '--remote-debugging-port', '0'], {
    stdio: ['ignore', 'ignore', 'pipe'],
    env: { ...process.env, HOME: profile, MOZ_HEADLESS_WIDTH: '1200', MOZ_HEADLESS_HEIGHT: '900' },
  });
  const gone = new Promise<void>((done) => browser.once('exit', () => done()));
  const address = await listening(browser.stderr);
  const socket = new WebSocket(`${address}/session`);
  await new Promise((open, failed) => {
    socket.addEventListener('open', open, { once: true });
    socket.addEventListener('error', () => failed(new Error('Firefox does not answer')), { once: true });
  });
  const complaints: string[] = [];
  const waiting = new Map<number, { done: (answer: Answer) => void; failed: (error: Error) => void }>();
  socket.addEventListener('message', ({ data }) => {
    const told = JSON.parse(String(data));
    if (told.method === 'log.entryAdded' && told.params.level === 'error') complaints.push(told.params.text);
    const asked = waiting.get(told.id);
    waiting.delete(told.id);
    if (told.type === 'error') asked?.failed(new Error(`${told.error}: ${told.message}`));
    else asked?.done(told.result);
  });
  let count = 0;
  const ask = (method: string, params: object): Promise<Answer> =>
    new Promise((done, failed) => {
      const id = ++count;
      waiting.set(id, { done, failed });
      socket.send(JSON.stringify({ id, method, params }));
    });
  await ask('session.new', { capabilities: {} });
  await ask('session.subscribe', { events: ['log.entryAdded'] });
  // A window opened later has the focus; without it a press of the space bar ticks nothing.
  const { context } = (await ask('browsingContext.create', { type: 'window' })) as { context: string };
  return {
    name: 'Firefox',
    open: async (url) => {
      await ask('browsingContext.navigate', { context, url, wait: 'complete' });
    },
    run: async (body, given) => {
      const answer = await ask('script.callFunction', {
        functionDeclaration: `async (text) => { const given = JSON.parse(text); return JSON.stringify((await (async () => {${body}})()) ?? null); }`,
        awaitPromise: true,
        target: { context },
        arguments: [{ type: 'string', value: JSON.stringify(given ?? null) }],
      });
      const { type, result, exceptionDetails } = answer as {
        type: string;
        result?: { value: string };
        exceptionDetails?: { text: string };
      };
      if (type !== 'success' || !result) throw new Error(exceptionDetails?.text ?? 'the page answered nothing');
      return JSON.parse(result.value);
    },
    press: async (...keys) => {
      const actions = keys.flatMap((value) => [
        { type: 'keyDown', value },
        { type: 'keyUp', value },
      ]);
      await ask('input.performActions', { context, actions: [{ type: 'key', id: 'keys', actions }] });
    },
    complaints: () => complaints,
    close: async () => {
      await ask('browser.close', {}).catch(() => browser.kill());
      await Promise.race([gone, new Promise((next) => setTimeout(next, 5000))]);
      browser.kill('SIGKILL');
      rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
    },
  };
}

function listening(stream: NodeJS.ReadableStream): Promise<string> {
  return new Promise((found, failed) => {
    let heard = '';
    const late = setTimeout(() => failed(new Error(`Firefox did not start:\n${heard}`)), 90_000);
    stream.on('data', (part) => {
      heard += String(part);
      const [, address] = /WebDriver BiDi listening on (ws:\S+)/.exec(heard) ?? [];
      if (!address) return;
      clearTimeout(late);
      found(address);
    });
  });
}
