import { ENGLISH, type Language, speak } from '../components/words/spoken.ts';
import { siteTexts as english, type SiteTexts } from '../content/site/en.ts';

interface LanguageFile {
  readonly language: { readonly name: string; readonly reviewed: boolean };
  readonly words: Language['words'];
}

const words = import.meta.glob<LanguageFile>('../languages/*.ts', { eager: true });
const texts = import.meta.glob<{ readonly siteTexts: SiteTexts }>('../content/site/*.ts', { eager: true });

/** One language of the site: its pages, and what stands on them. */
export interface SiteLanguage {
  readonly tag: string;
  readonly name: string;
  readonly texts: SiteTexts;
  readonly reviewed: boolean;
  /** Says words of the elements in this language, at once. */
  say<T>(words: () => T): T;
}

/** English first; a language has pages once their texts are there. */
export const siteLanguages: readonly SiteLanguage[] = [
  { tag: 'en', name: 'English', texts: english, reviewed: true, say: (words) => speak(ENGLISH, words) },
  ...Object.entries(words).flatMap(([path, file]) => {
    const tag = /([\w-]+)\.ts$/.exec(path)![1]!;
    const ours = texts[`../content/site/${tag}.ts`];
    if (!ours) return [];
    const language: Language = { tag, words: file.words, reviewed: file.language.reviewed };
    return [
      {
        tag,
        name: file.language.name,
        texts: ours.siteTexts,
        reviewed: language.reviewed,
        say: <T>(said: () => T) => speak(language, said),
      },
    ];
  }),
];

/** The pages that are there in every language; the others are in English only. */
const IN_ALL =
  /^\/(?:(?:trials|engines|suit|hire|waters|search|embed|gallery)\/|guests\/[\w-]+\.html|checklists\/(?:[\w-]+\/)?)?(?:[?#].*)?$/;

/** What a page with `[...lang]` in its path is made for. */
export function languagePaths(): { params: { lang: string | undefined } }[] {
  return siteLanguages.map(({ tag }) => ({ params: { lang: tag === 'en' ? undefined : tag } }));
}

/** The language of an address, and the address of the same page in English. */
export function languageOf(path: string): { language: SiteLanguage; plain: string } {
  const [, tag, rest] = /^\/([\w-]+)(\/.*)?$/.exec(path) ?? [];
  const language = siteLanguages.find((one) => one.tag === tag && tag !== 'en');
  return language ? { language, plain: rest ?? '/' } : { language: siteLanguages[0]!, plain: path };
}

/** Where the English page `plain` stands in a language; the same where it is in English only. */
export function pathIn({ tag }: SiteLanguage, plain: string): string {
  return tag !== 'en' && IN_ALL.test(plain) ? `/${tag}${plain}` : plain;
}

/** Whether a page is there in every language. */
export function inAll(plain: string): boolean {
  return IN_ALL.test(plain);
}

/** Text with links to English pages, with the links of a language. */
export function linked(language: SiteLanguage, html: string): string {
  return html.replace(/href="(\/[^"]*)"/g, (_, plain: string) => {
    const path = pathIn(language, plain);
    const foreign = language.tag !== 'en' && path === plain;
    return `href="${path}"${foreign ? ' hreflang="en"' : ''}`;
  });
}
