import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Problem } from '../../../src/core/units/result.ts';
import { faults as german } from '../../../src/languages/faults/de.ts';
import { faults as spanish } from '../../../src/languages/faults/es.ts';
import { faultIn } from '../../../src/languages/faults/fault-in.ts';
import { faults as french } from '../../../src/languages/faults/fr.ts';

const folder = 'src/core/files';

/** Every code that a reader of files gives, as it stands in the source. */
function codesOfReaders(): Set<string> {
  const found = new Set<string>();
  for (const file of readdirSync(folder)) {
    const text = readFileSync(`${folder}/${file}`, 'utf8');
    for (const [, code] of text.matchAll(/(?:code: |refusal\(|problem\(|fault\(|refused\()'([a-z-]+)'/g))
      found.add(code!);
  }
  return found;
}

/** Notes about a track or a trial and faults of the files the site itself ships; they stay English, and say so. */
const STAY_ENGLISH = new Set(
  'at-bound broken-off column-left-out gap half-reading long no-consumption no-constituents no-part no-span not-an-entry not-closed not-learned one-load repeated runs-disagree span-too-long too-short unknown-constituent unknown-kind wrong-reading wrong-system'.split(
    ' ',
  ),
);

describe('what a file is found wrong with', () => {
  it('has a sentence for every code of the readers in each language', () => {
    const codes = [...codesOfReaders()].filter((code) => !STAY_ENGLISH.has(code));
    expect(codes.length).toBeGreaterThan(30);
    for (const { said } of [german, french, spanish]) expect(codes.filter((code) => !(code in said))).toEqual([]);
  });

  it('is known by the same codes in every language', () => {
    expect(Object.keys(french.said)).toEqual(Object.keys(german.said));
    expect(Object.keys(spanish.said)).toEqual(Object.keys(german.said));
  });

  const problem = (more: Partial<Problem>): Problem => ({
    code: 'missing',
    path: '',
    message: 'The mass is missing',
    ...more,
  });

  it('tells the row, the field and the limit', () => {
    expect(faultIn(german, problem({ path: 'rows.7' }))).toBe('Zeile 7: fehlt');
    expect(faultIn(french, problem({ path: 'load.items.2.mass' }))).toBe('« load.items.2.mass »\u00a0: manque');
    expect(faultIn(spanish, problem({ code: 'too-many', path: 'boats', limit: 50 }))).toMatch(/boats.*50/);
  });

  it('stays English, and says so, where no sentence is known or a limit is not told', () => {
    for (const code of ['constructor', 'never-heard-of', 'too-many']) {
      expect(faultIn(german, problem({ code }))).toBe('(englisch) The mass is missing');
    }
  });
});
