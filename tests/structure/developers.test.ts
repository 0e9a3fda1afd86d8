import { existsSync, globSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const guide = readFileSync('DEVELOPERS.md', 'utf8');
const named = [
  ...new Set([...guide.matchAll(/`([\w./*-]+\/[\w.*-]+\.(?:ts|mjs|json|astro|cjs))`/g)].map(([, path]) => path!)),
];
/** NAME and TAG stand for what the reader chooses, `built` for what a build writes; nl.ts is an example; what starts with / is on the site. */
const chosen = /NAME|TAG|nl\.ts|custom-elements|^\//;
/** Where the guide lets a path start: at the project's root, or at the core in the way of a trip. */
const roots = ['.', 'src/core'];

describe("the developers' guide", () => {
  it('names files at all', () => expect(named.length).toBeGreaterThan(30));

  it.each(named.filter((path) => !chosen.test(path)))('names %s, which is there', (path) => {
    const found = roots.some((root) => existsSync(`${root}/${path}`) || globSync(`${root}/${path}`).length > 0);
    expect(found, path).toBe(true);
  });
});
