import { describe, expect, it } from 'vitest';
import { groups, leaves } from './group-words.ts';

interface LanguageFile {
  readonly language: { readonly name: string; readonly reviewed: boolean };
  readonly words: Readonly<Record<string, object>>;
}

const files = import.meta.glob<LanguageFile>('../../../src/languages/*.ts', { eager: true });
const languages = Object.entries(files).map(([path, file]) => [/([\w-]+)\.ts$/.exec(path)![1]!, file] as const);

it('can be any number of files, one for each language', () => {
  expect(new Set(languages.map(([, { language }]) => language.name)).size).toBe(languages.length);
});

/** Two words at least that are no names and figures. */
const SENTENCE = /\b[a-z]{3,}\b.*\b[a-z]{3,}\b/;

describe.each(languages)('the language %s', (tag, { language, words }) => {
  it('is a language that browsers know, and says its own name', () => {
    expect(Intl.DateTimeFormat.supportedLocalesOf(tag)).toEqual([tag]);
    expect(language.name).toMatch(/^\p{Lu}\p{L}+$/u);
  });

  it('has every word that English has, and none besides', () => {
    const missing: string[] = [];
    const extra: string[] = [];
    for (const [name, english] of groups) {
      const theirs = new Map(leaves(words[name] ?? {}));
      const ours = new Map(leaves(english));
      for (const key of ours.keys()) if (!theirs.has(key)) missing.push(`${name}.${key}`);
      for (const key of theirs.keys()) if (!ours.has(key)) extra.push(`${name}.${key}`);
    }
    for (const name of Object.keys(words)) if (!groups.has(name)) extra.push(name);
    expect({ missing, extra }).toEqual({ missing: [], extra: [] });
  });

  it('takes the same arguments as English, and gives lists as long', () => {
    const other: string[] = [];
    for (const [name, english] of groups) {
      const theirs = new Map(leaves(words[name] ?? {}));
      for (const [key, word] of leaves(english)) {
        const their = theirs.get(key);
        if (their === undefined) continue;
        const same = Array.isArray(word)
          ? Array.isArray(their) && their.length === word.length
          : typeof their === typeof word &&
            (typeof word !== 'function' || (their as () => string).length <= word.length);
        if (!same) other.push(`${name}.${key}`);
      }
    }
    expect(other).toEqual([]);
  });

  it('leaves no text as it is in English, but for words that are the same there', () => {
    const longSame: string[] = [];
    for (const [name, english] of groups) {
      const theirs = new Map(leaves(words[name] ?? {}));
      for (const [key, word] of leaves(english)) {
        if (typeof word === 'string' && SENTENCE.test(word) && theirs.get(key) === word)
          longSame.push(`${name}.${key}`);
      }
    }
    expect(longSame).toEqual([]);
  });
});
