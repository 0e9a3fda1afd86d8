import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { afterAll, describe, expect, it } from 'vitest';
import { differences } from './differences.ts';
import { type Plain, plain } from './plain.ts';

const DEEPEST = 3;
const WIDEST = 200;

/** `npm run kept -- --mode write` keeps what is found now; the difference of the JSON then shows what has moved. */
const WRITING = import.meta.env.MODE === 'write';

/**
 * Holds every figure, text and reason of some answers against those kept in `NAME.json` beside this file. This says
 * that nothing moved unnoticed, not that it is right: what is right, the tests by subject say.
 */
export function keeping(name: string, answers: Readonly<Record<string, () => unknown>>): void {
  const file = new URL(`${name}.json`, import.meta.url);
  const kept: Readonly<Record<string, Plain>> =
    !WRITING && existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : {};
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

/** A question on a line of its own, and its fields where they do not fit into one: so a change stays readable. */
function written(value: Plain, depth = 0): string {
  const line = JSON.stringify(value);
  if (value === null || typeof value !== 'object' || depth > DEEPEST || (depth > 0 && line.length <= WIDEST))
    return line;
  const indent = ' '.repeat(depth + 1);
  const inner = Array.isArray(value)
    ? value.map((one) => indent + written(one, depth + 1))
    : Object.entries(value).map(([key, one]) => `${indent}${JSON.stringify(key)}:${written(one, depth + 1)}`);
  const [open, close] = Array.isArray(value) ? '[]' : '{}';
  return `${open}\n${inner.join(',\n')}\n${indent.slice(1)}${close}${depth === 0 ? '\n' : ''}`;
}
