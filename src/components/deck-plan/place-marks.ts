import { inflatable } from '../../core/craft/plan-form.ts';
import type { Hull, Station } from '../../core/craft/shapes.ts';
import { deckWords } from '../words/en-deck.ts';
import { bowTubeFrom } from './bow-tube.ts';
import type { Spot } from './hull-plan.ts';
import { apart } from './landing.ts';

/** Places nearer to each other than this share one mark, m: their words would lie on each other. */
const SAME_MARK = 0.2;

/** One or more places as they are marked on the boat. */
export interface PlaceMark {
  readonly spot: Spot;
  readonly stations: readonly Station[];
  /** Short words of what goes there. */
  readonly words: readonly string[];
  /** What the mark looks like: a seat goes before the rest. */
  readonly use: Station['use'];
}

const RANK: readonly Station['use'][] = ['helm', 'seat', 'bow-tube', 'gear', 'store'];

/** The places of a boat as marks, seats first. */
export function placeMarks(hull: Hull, battery: boolean): PlaceMark[] {
  const groups: Station[][] = [];
  const ordered = [...hull.stations].sort((a, b) => RANK.indexOf(a.use) - RANK.indexOf(b.use));
  for (const station of ordered) {
    const near = groups.find(([first]) => first!.use !== 'bow-tube' && apart(first!, station) < SAME_MARK);
    if (near) near.push(station);
    else groups.push([station]);
  }
  return groups.map((stations) => ({
    spot: spotOf(hull, stations[0]!),
    use: stations[0]!.use,
    stations,
    words: [...new Set(stations.map(({ use }) => wordFor(use, battery)))],
  }));
}

/** On an inflatable the word "no seat" stands on the tube itself. */
function spotOf(hull: Hull, { use, x, y }: Station): Spot {
  if (use !== 'bow-tube' || !inflatable(hull.form)) return { x, y };
  const { aft, fore } = bowTubeFrom(hull);
  return { x: (aft + fore) / 2, y: 0 };
}

function wordFor(use: Station['use'], battery: boolean): string {
  return use === 'store' && battery ? deckWords.batteryPlace : deckWords.places[use];
}
