import { spoken, spokenNow } from './spoken.ts';

/** To be shown with every plan. */
export const cautionWords = spoken('cautionWords', {
  all: [
    'For planning ashore, not for navigation.',
    "The boat's plate, local rules and licensed practice come first.",
    'Engine failure, a turn of the weather and errors of position are not in the number.',
  ],
  unreviewed:
    'Nobody whose mother tongue this is has checked the words on safety in this language yet. The English words hold.',
});

/** What is said beside every plan; and where nobody has checked the words of this language, that too. */
export function cautions(): readonly string[] {
  return spokenNow().reviewed ? cautionWords.all : [...cautionWords.all, cautionWords.unreviewed];
}
