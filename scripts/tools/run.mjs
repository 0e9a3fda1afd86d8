import { spawn } from 'node:child_process';

const running = new Set();

/** Runs a program with its output on the screen; resolves to its exit code. */
export function runAloud(program, args, { cwd, env = process.env } = {}) {
  return new Promise((done) => {
    const child = follow(spawn(program, args, { cwd, env, stdio: ['ignore', 'inherit', 'inherit'] }));
    child.on('error', (error) => {
      console.error(`${program} did not start: ${error.message}`);
      done(1);
    });
    child.on('close', (code) => done(code ?? 1));
  });
}

/** Runs a program keeping its output for later; `beat` is called every ten seconds meanwhile. */
export function runQuietly(program, args, { cwd, env = process.env, onPath = false, beat } = {}) {
  return new Promise((done) => {
    const start = Date.now();
    const seconds = () => Math.round((Date.now() - start) / 1000);
    const pulse = beat && setInterval(() => beat(seconds()), 10_000);
    let output = '';
    // Windows finds npm, a command file, only through its shell.
    const shell = onPath && process.platform === 'win32';
    const child = follow(spawn(program, args, { cwd, env, shell, stdio: ['ignore', 'pipe', 'pipe'] }));
    const keep = (chunk) => {
      output = (output + chunk).slice(-200_000);
    };
    child.stdout.on('data', keep);
    child.stderr.on('data', keep);
    const end = (result) => {
      clearInterval(pulse);
      done({ output, seconds: seconds(), ...result });
    };
    child.on('error', (error) => end({ code: 1, missing: error.code === 'ENOENT', output: error.message }));
    child.on('close', (code) => end({ code: code ?? 1 }));
  });
}

/** Ends what is still running, and resolves when it has; used when the user stops the command. */
export async function stopAll() {
  const ended = [...running].map((child) => new Promise((done) => child.once('close', done)));
  for (const child of running) child.kill('SIGTERM');
  // A program that does not listen is ended all the same, so that nothing goes on unseen.
  const force = setTimeout(() => {
    for (const child of running) child.kill('SIGKILL');
  }, 3000);
  await Promise.all(ended);
  clearTimeout(force);
}

function follow(child) {
  running.add(child);
  child.on('close', () => running.delete(child));
  child.on('error', () => running.delete(child));
  return child;
}
