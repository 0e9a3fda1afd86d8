import { globSync } from 'node:fs';
import { resolve } from 'node:path';
import { expect, it } from 'vitest';

const entries = globSync('src/components/*/define.ts').sort();
/** By these lit finds out about several copies of itself, and stands in for the registry; nothing else may be left. */
const LITS_OWN = /^(lit|reactiveElement|customElements$)/;

it.each(entries)('%s can be imported where a host renders its pages, and leaves nothing there', async (entry) => {
  expect(globalThis).not.toHaveProperty('document');
  const before = new Set(Object.getOwnPropertyNames(globalThis));
  await import(resolve(entry));
  const added = Object.getOwnPropertyNames(globalThis).filter((name) => !before.has(name));
  expect(added.filter((name) => !LITS_OWN.test(name))).toEqual([]);
});
