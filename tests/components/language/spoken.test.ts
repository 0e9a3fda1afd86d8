import { describe, expect, it } from 'vitest';
import { measuresFor } from '../../../src/components/units/measures.ts';
import { cautions } from '../../../src/components/words/en-cautions.ts';
import { compassPoint } from '../../../src/components/words/en-compass.ts';
import { verdictWords } from '../../../src/components/words/en-verdict.ts';
import { ENGLISH, type Language, speak, spoken, spokenNow } from '../../../src/components/words/spoken.ts';
import { groups, sharedNames } from './group-words.ts';

const PLATT: Language = {
  tag: 'nds',
  reviewed: false,
  words: { boatWords: { bow: 'Vörpiek', sides: { port: 'Backbord' }, aboard: (n: number) => `${n} Lüüd` } },
};

const boatWords = spoken('boatWords', {
  bow: 'Bow',
  stern: 'Stern',
  sides: { port: 'port', starboard: 'starboard' },
  aboard: (n: number) => `${n} aboard`,
});

describe('spoken', () => {
  it('gives the words of the language spoken at that moment, and English afterwards', () => {
    expect(speak(PLATT, () => [boatWords.bow, boatWords.aboard(2)])).toEqual(['Vörpiek', '2 Lüüd']);
    expect(boatWords.bow).toBe('Bow');
  });

  it('says in English what a language does not have, deep inside too', () => {
    expect(speak(PLATT, () => [boatWords.stern, boatWords.sides.port, boatWords.sides.starboard])).toEqual([
      'Stern',
      'Backbord',
      'starboard',
    ]);
  });

  it('lets one language be spoken within another, also when something fails', () => {
    speak(PLATT, () => {
      expect(() => speak(ENGLISH, () => JSON.parse(boatWords.bow))).toThrow(/Bow/);
      expect(boatWords.bow).toBe('Vörpiek');
    });
    expect(spokenNow()).toBe(ENGLISH);
  });

  it('adds to the cautions of an unreviewed language that the English ones hold', () => {
    const english = cautions();
    expect(speak(PLATT, () => cautions().length)).toBe(english.length + 1);
    expect(speak({ ...PLATT, reviewed: true }, () => cautions())).toEqual(english);
  });

  it('has no two groups of one name, of which a language could give only one', () => {
    expect(sharedNames).toEqual([]);
  });

  it('knows every group under the name of its constant', () => {
    for (const [name, group] of groups) {
      const marked = { tag: 'nds', reviewed: true, words: { [name]: { 'only here': 'here' } } };
      expect(
        speak(marked, () => Reflect.get(group, 'only here')),
        name,
      ).toBe('here');
    }
  });
});

describe('figures in a language', () => {
  it('have its decimal sign, and a sign of the unit that is usual there', () => {
    const german: Language = {
      tag: 'de',
      reviewed: true,
      words: { unitWords: { signs: { NM: 'sm', '%': '\u00a0%' } } },
    };
    const m = measuresFor('nautical', 'de');
    expect(speak(german, () => m.show('distance', 12.34 * 1852))).toBe('12,3\u00a0sm');
    expect(speak(german, () => m.show('share', 0.25))).toBe('25\u00a0%');
    expect(m.show('share', 0.25)).toBe('25%');
  });

  it('stay in English where nothing else is said', () => {
    expect(compassPoint(90)).toBe('E');
    expect(verdictWords.go).toBe('Home with reserve');
  });
});
