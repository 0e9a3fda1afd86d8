import { spawnSync } from 'node:child_process';
import { globSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const files = globSync('src/core/**/*.ts').sort();

describe('the core', () => {
  it('runs in plain Node as it is written, file by file', () => {
    const program = files.map((file) => `await import(${JSON.stringify(`./${file}`)});`).join('\n');
    const run = spawnSync(process.execPath, ['--input-type=module', '--eval', program], { encoding: 'utf8' });
    expect(run.stderr).toBe('');
    expect(run.status).toBe(0);
  });

  it.each([
    ['the clock', /\bDate\.now\b|\bnew Date\(\s*\)|\bperformance\.now\b/],
    ['chance', /\bMath\.random\b|\bcrypto\b/],
    [
      'a page or a browser',
      /\b(?:document|window|localStorage|sessionStorage|navigator|HTMLElement)\s*[.(]|\bfetch\s*\(/,
    ],
    ['the machine', /from 'node:|\bprocess\./],
  ])('knows nothing of %s', (_, pattern) => {
    const asking = files.filter((file) => pattern.test(withoutComments(readFileSync(file, 'utf8'))));
    expect(asking).toEqual([]);
  });
});

function withoutComments(text: string): string {
  return text.replaceAll(/\/\*[\s\S]*?\*\/|(?<!:)\/\/.*$/gm, '');
}
