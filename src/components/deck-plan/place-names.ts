import type { Hull } from '../../core/craft/shapes.ts';
import type { Measures } from '../units/measures.ts';
import { commonWords } from '../words/en-common.ts';
import { dataName } from '../words/en-data.ts';
import { aboardWords, deckWords, pieceName, spotText, whoIs } from '../words/en-deck.ts';
import type { Piece } from './pieces.ts';
import { outside } from './room.ts';

/** Where a piece is, in words. */
export function placeName(hull: Hull, { place, station }: Piece, m: Measures): string {
  if (!place) return deckWords.placeUnknown;
  const label = hull.stations.find(({ id }) => id === station)?.label;
  const words =
    label !== undefined ? dataName(label) : `${commonWords.within(aboardWords.freeSpot)} ${spotText(place, m)}`;
  return outside(hull, place) && label === undefined ? `${words}, ${deckWords.outside}` : words;
}

/** What a piece is called to those who do not see it. */
export function fullName(hull: Hull, all: readonly Piece[], piece: Piece, m: Measures): string {
  const notes = [piece.helm && deckWords.steers, piece.fixed && deckWords.builtIn].filter((note) => note !== false);
  const place = placeName(hull, piece, m);
  const parts = { who: whoIs(piece), mass: m.show('mass', piece.mass), place, notes };
  return pieceName(parts, all.indexOf(piece), all.length);
}
