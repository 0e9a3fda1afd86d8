import { spokenNow } from './spoken.ts';

/** "one, two and three" in the language spoken now. */
export function listText(parts: readonly string[]): string {
  const { tag } = spokenNow();
  // Plain English without the comma before "and", as everywhere else here.
  return new Intl.ListFormat(tag === 'en' ? 'en-GB' : tag, { type: 'conjunction' }).format(parts);
}
