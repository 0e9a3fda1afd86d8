import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

/** Modules that do something where they are loaded: they have their own place. */
const OTHERS = ['track-worker.ts'];
const modules = readdirSync('src/components/trials').filter((name) => !OTHERS.includes(name));

describe('the trials page', () => {
  it.each(modules)('%s can be imported where there is no page', async (name) => {
    expect(globalThis).not.toHaveProperty('document');
    expect(Object.keys(await import(`../../../src/components/trials/${name}`))).toBeDefined();
  });
});
