import type { BadCaseKind } from '../../core/trip/shapes.ts';
import { listText } from './list-text.ts';
import { spoken } from './spoken.ts';

/** What goes wrong on a bad day; `further` is said after another one that speaks of the way home already. */
export const badCaseWords = spoken('badCaseWords', {
  first: {
    'home-slow': 'home at low speed',
    'home-headwind': 'home against a headwind',
    'wind-fresher': 'with more wind than forecast',
    'home-foul-stream': 'home against the stream',
    'home-on-hump': 'home without getting onto the plane',
    'less-in-tank': 'with less aboard to start with',
    'cold-battery': 'with a cold battery',
  } satisfies Record<BadCaseKind, string>,
  further: {
    'home-slow': 'at low speed',
    'home-headwind': 'against a headwind',
    'home-foul-stream': 'against the stream',
    'home-on-hump': 'without getting onto the plane',
  },
});

/** "home at low speed, against a headwind and with less aboard to start with". */
export function badCaseText(kinds: readonly BadCaseKind[]): string {
  let home = false;
  const parts = kinds.map((kind) => {
    const further: Partial<Record<BadCaseKind, string>> = badCaseWords.further;
    const words = (home && further[kind]) || badCaseWords.first[kind];
    home ||= kind in badCaseWords.further;
    return words;
  });
  return listText(parts);
}
