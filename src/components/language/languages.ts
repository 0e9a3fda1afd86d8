import { ENGLISH, type Language } from '../words/spoken.ts';

/** What a file of a language holds; the words are typed there. */
interface LanguageFile {
  readonly language: { readonly reviewed: boolean };
  readonly words: Language['words'];
}

/** One file is one language; its name is the tag. */
const FILES = import.meta.glob<LanguageFile>('../../languages/*.ts');

const known = new Map<string, Language>();
const coming = new Map<string, Promise<void>>();

/** The language of a `lang`, if it is there already: English always is, and stands for every language we lack. */
export function languageNow(lang: string): Language | undefined {
  const tag = tagOf(lang);
  const before = known.get(tag);
  if (before) return before;
  const load = fileOf(tag);
  if (load) return undefined;
  const language = /^en\b/.test(tag) ? { ...ENGLISH, tag } : ENGLISH;
  known.set(tag, language);
  return language;
}

/** Fetches the words of a language, once. Where they cannot be had, English is spoken. */
export function fetchLanguage(lang: string): Promise<void> {
  const tag = tagOf(lang);
  let fetched = coming.get(tag);
  if (!fetched) {
    fetched = fetchFile(tag);
    coming.set(tag, fetched);
  }
  return fetched;
}

async function fetchFile(tag: string): Promise<void> {
  try {
    const file = await fileOf(tag)?.();
    known.set(tag, file ? { tag, words: file.words, reviewed: file.language.reviewed } : ENGLISH);
  } catch {
    known.set(tag, ENGLISH);
  }
}

function fileOf(tag: string): (() => Promise<LanguageFile>) | undefined {
  const [primary] = tag.split('-');
  return FILES[`../../languages/${tag}.ts`] ?? FILES[`../../languages/${primary}.ts`];
}

/** A tag as browsers write it; what they cannot read is English. */
function tagOf(lang: string): string {
  try {
    return Intl.getCanonicalLocales(lang.trim() || 'en')[0] ?? 'en';
  } catch {
    return 'en';
  }
}
