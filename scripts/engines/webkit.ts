import { spawn } from 'node:child_process';
import type { Engine } from './engine.ts';

/** The key under which WebDriver tells a session's options of WebKitGTK. */
const OPTIONS = 'webkitgtk:browserOptions';

/** WebKitGTK's small browser by its WebDriver, on a screen that nobody sees. */
export async function startWebKit(programs: { driver: string; browser: string; screen: string }): Promise<Engine> {
  const port = 20_000 + (process.pid % 20_000);
  const driver = spawn(
    programs.screen,
    ['-a', '-s', '-screen 0 1280x900x24', programs.driver, `--port=${port}`, '--host=127.0.0.1'],
    {
      stdio: ['ignore', 'pipe', 'pipe'],
      detached: true,
      env: { ...process.env, WEBKIT_DISABLE_COMPOSITING_MODE: '1', GDK_BACKEND: 'x11' },
    },
  );
  let said = '';
  for (const stream of [driver.stdout, driver.stderr]) stream.on('data', (part) => (said += String(part)));
  const ask = async (method: 'GET' | 'POST' | 'DELETE', path: string, body?: object) => {
    const answer = await fetch(`http://127.0.0.1:${port}${path}`, {
      method,
      ...(method === 'POST' && { body: JSON.stringify(body ?? {}), headers: { 'Content-Type': 'application/json' } }),
    });
    const { value } = (await answer.json()) as {
      value: { error?: string; message?: string; sessionId?: string } | null;
    };
    if (!answer.ok) throw new Error(`${path}: ${value?.error} ${value?.message}`);
    return value;
  };
  const kill = () => {
    try {
      // The screen and the browser go with the driver.
      process.kill(-driver.pid!, 'SIGTERM');
    } catch {
      // Gone already.
    }
  };
  try {
    await answering(
      () => ask('GET', '/status'),
      () => said,
    );
    const capabilities = {
      alwaysMatch: {
        [OPTIONS]: {
          binary: programs.browser,
          args: ['--automation', '--enable-write-console-messages-to-stdout=true'],
        },
      },
    };
    const session = `/session/${(await ask('POST', '/session', { capabilities }))?.sessionId}`;
    await ask('POST', `${session}/timeouts`, { script: 60_000, pageLoad: 60_000 });
    return {
      name: 'WebKit',
      open: async (url) => void (await ask('POST', `${session}/url`, { url })),
      run: async (body, given) => {
        const script = `const done = arguments[1]; const given = JSON.parse(arguments[0]);
          (async () => {${body}})().then((value) => done({ value: JSON.stringify(value ?? null) }), (error) => done({ error: String(error) }));`;
        const path = `${session}/execute/async`;
        const told = (await ask('POST', path, { script, args: [JSON.stringify(given ?? null)] })) as unknown as {
          value: string;
          error?: string;
        };
        if (told.error) throw new Error(told.error);
        return JSON.parse(told.value);
      },
      press: async (...keys) => {
        const actions = keys.flatMap((value) => [
          { type: 'keyDown', value },
          { type: 'keyUp', value },
        ]);
        await ask('POST', `${session}/actions`, { actions: [{ type: 'key', id: 'keys', actions }] });
      },
      complaints: () => said.split('\n').filter((line) => /CONSOLE.*\bERROR\b/.test(line)),
      close: async () => {
        await ask('DELETE', session).catch(() => undefined);
        kill();
      },
    };
  } catch (error) {
    kill();
    throw error;
  }
}

async function answering(ask: () => Promise<unknown>, said: () => string): Promise<void> {
  const end = Date.now() + 60_000;
  for (;;) {
    try {
      await ask();
      return;
    } catch {
      if (Date.now() > end) throw new Error(`WebKitWebDriver did not start:\n${said()}`);
      await new Promise((next) => setTimeout(next, 200));
    }
  }
}
