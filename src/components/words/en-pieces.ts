import type { Measure } from '../../core/trip/shapes.ts';
import type { Measures, StoreKind } from '../units/measures.ts';
import { listText } from './list-text.ts';
import { spoken } from './spoken.ts';

/** What sentences are put together from. */
export const pieceWords = spoken('pieceWords', {
  endless: 'more than there is',
  legs: (names: readonly string[], one: boolean) => ` on ${one ? 'leg' : 'legs'} ${listText(names)}`,
  legsFromTo: (first: number, last: number) => `${first} to ${last}`,
});

export function side(toStarboard: number | undefined): string {
  return toStarboard === undefined ? 'one side' : toStarboard < 0 ? 'port' : 'starboard';
}

export function holderOf(store: StoreKind): string {
  return store === 'fuel' ? 'tank' : 'battery';
}

export function showOr(
  none: string,
  measure: Measure | undefined,
  si: number | undefined,
  m: Measures,
  store: StoreKind,
) {
  if (measure === undefined || si === undefined || Number.isNaN(si)) return none;
  return Number.isFinite(si) ? m.show(measure, si, store) : pieceWords.endless;
}
