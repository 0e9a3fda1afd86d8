import { spoken } from './spoken.ts';

/** What stands between and behind figures. Signs of units that are the same everywhere are not words. */
export const unitWords = spoken('unitWords', {
  fromTo: (low: string, high: string) => `${low} to ${high}`,
  under: (figure: string) => `under ${figure}`,
  days: 'd',
  /** Signs that differ between languages, by the English one; the one for percent with its space, if any. */
  signs: { '%': '%', kn: 'kn', NM: 'NM', mi: 'mi', mph: 'mph', gal: 'gal', lb: 'lb', ft: 'ft', hp: 'hp' },
});
