import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { afterAll, describe, expect, it } from 'vitest';
import { differences } from './differences.ts';
import { type Plain, plain } from './plain.ts';

/** `npm run kept -- --mode write` keeps what is found now; the difference of the JSON then shows what has moved. */
const WRITING = import.meta.env.MODE === 'write';

/**
 * Holds every figure, text and reason of some answers against those kept in `NAME.json` beside this file. This says
 * that nothing moved unnoticed, not that it is right: what is right, the tests by subject say.
 */
export function keeping(name: string, answers: Readonly<Record<string, () => unknown>>): void {
  const file = new URL(`${name}.json`, import.meta.url);
  const kept: Readonly<Record<string, Plain>> = existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : {};
  const found: Record<string, Plain> = {};
  describe(`kept answers: ${name}`, () => {
    it('are of these questions and no others', () => {
      if (!WRITING) expect(Object.keys(kept)).toEqual(Object.keys(answers));
    });
    for (const [question, answer] of Object.entries(answers)) {
      it(question, () => {
        const now = plain(answer());
        found[question] = now;
        if (WRITING) return;
        const moved = differences(kept[question] ?? null, now);
        if (moved.length > 0) throw new Error(`${name}, ${question}:\n${moved.join('\n')}`);
      });
    }
  });
  if (WRITING) {
    afterAll(() => {
      expect(Object.keys(found)).toEqual(Object.keys(answers));
      writeFileSync(file, written(found));
    });
  }
}

/** One line for what fits into it, so that a change stays readable. */
function written(value: Plain, indent = '', before = 0): string {
  const line = JSON.stringify(value);
  if (indent !== '' && line.length + before + indent.length <= 160) return line;
  if (value === null || typeof value !== 'object') return line;
  const deeper = `${indent} `;
  if (Array.isArray(value)) {
    if (value.every((one) => one === null || typeof one !== 'object')) return line;
    return `[\n${value.map((one) => deeper + written(one, deeper)).join(',\n')}\n${indent}]`;
  }
  const fields = Object.entries(value).map(
    ([key, inner]) => `${deeper}${JSON.stringify(key)}:${written(inner, deeper, key.length + 3)}`,
  );
  return `{\n${fields.join(',\n')}\n${indent}}${indent === '' ? '\n' : ''}`;
}
