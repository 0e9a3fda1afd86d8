import { readFileSync } from 'node:fs';
import type { CustomElement } from 'custom-elements-manifest/schema';
import { describe, expect, it } from 'vitest';
import { elementsManifest } from '../../scripts/package/manifest.ts';
import { elementReferences, marked, ofAll } from '../../src/layouts/element-reference.ts';

const manifest = elementsManifest();
const elements = manifest.modules.flatMap(
  ({ declarations = [] }) => declarations as unknown as (CustomElement & { tagName: string })[],
);
const references = elementReferences(manifest);

describe('the description of the elements', () => {
  it.each(elements.map((element) => [element.tagName, element] as const))(
    '%s says what each thing is that a page can set, call, hear or style',
    (_, element) => {
      expect(element.summary).toBeTruthy();
      const said = [
        ...(element.attributes ?? []),
        ...(element.members ?? []),
        ...(element.events ?? []),
        ...(element.slots ?? []),
        ...(element.cssParts ?? []),
        ...(element.cssProperties ?? []),
      ];
      expect(said.filter(({ description }) => !description).map(({ name }) => name)).toEqual([]);
    },
  );

  it('tells of every colour and measure that the elements take from a page, and of no other', () => {
    const sheet = readFileSync('src/components/theme/tokens.styles.ts', 'utf8');
    const taken = new Set([...sheet.matchAll(/var\((--homeleg-[\w-]+)/g)].map(([, name]) => name));
    const told = ofAll(references, 'cssProperties').map(({ name }) => name);
    expect(new Set(told)).toEqual(taken);
  });

  it('holds nothing private', () => {
    const text = JSON.stringify(manifest);
    expect(text).not.toContain('"privacy"');
    expect(text).not.toContain('"#');
    expect(text).not.toMatch(/src\/components/);
  });

  it('names every event that an element sends out of itself', () => {
    const named = new Set(elements.flatMap(({ events = [] }) => events.map(({ name }) => name)));
    expect(named).toContain('homeleg-plan');
    for (const name of named) expect(name).toMatch(/^homeleg-[a-z-]+$/);
  });
});

describe('elementReferences', () => {
  it('gives an example with everything, in the words of the page that uses it', () => {
    const planner = references.find(({ tag }) => tag === 'homeleg-planner')!;
    const example = (kind: 'attributes' | 'events', name: string) =>
      planner.told[kind].find((one) => one.name === name)?.example;
    expect(example('attributes', 'units')).toBe('<homeleg-planner units="metric"></homeleg-planner>');
    expect(example('attributes', 'trip')).toBe('planner.trip = myTrip;');
    expect(example('events', 'homeleg-plan')).toContain("planner.addEventListener('homeleg-plan'");
    for (const { told } of references) {
      for (const { example: shown } of Object.values(told).flat()) expect(shown).toBeTruthy();
    }
  });

  it('lets a builder choose among the words an attribute knows, and type any other', () => {
    const planner = references.find(({ tag }) => tag === 'homeleg-planner')!;
    const choice = (name: string) => planner.choices.find((one) => one.name === name);
    expect(choice('units')).toMatchObject({ words: ['metric', 'nautical', 'imperial'], usually: 'nautical' });
    expect(choice('zoom')?.kind).toBe('number');
    expect(choice('waters')).toMatchObject({ words: [], kind: 'text' });
  });
});

describe('marked', () => {
  it('marks code, and lets no mark-up through', () => {
    expect(marked('Set `waters` to <b>')).toBe('Set <code>waters</code> to &lt;b>');
  });
});
