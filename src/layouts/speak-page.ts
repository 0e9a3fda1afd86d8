import { fetchLanguage, languageNow } from '../components/language/languages.ts';
import { speakOn } from '../components/words/spoken.ts';

/** Scripts of a page speak its language from here on; English if its words cannot be had. */
export async function speakPage(): Promise<void> {
  const { lang } = document.documentElement;
  if (!languageNow(lang)) await fetchLanguage(lang);
  const language = languageNow(lang);
  if (language) speakOn(language);
}
