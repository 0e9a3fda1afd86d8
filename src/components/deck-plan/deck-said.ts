import type { Hull } from '../../core/craft/shapes.ts';
import type { LoadBalance } from '../../core/load/balance.ts';
import type { Aboard } from '../../core/load/shapes.ts';
import type { Measures } from '../units/measures.ts';
import { totalWords, whoIs, deckWords as words } from '../words/en-deck.ts';
import { across, along } from './good-balance.ts';
import type { Piece } from './pieces.ts';
import { placeName } from './place-names.ts';

/** What there is to say about an edit; keys are those of pieces. */
export type Said =
  | { readonly kind: 'moved'; readonly key: string; readonly swapped?: string | undefined }
  | { readonly kind: 'seated' }
  | { readonly kind: 'removed'; readonly item: Aboard }
  | { readonly kind: 'refused'; readonly why: 'bow-tube' | 'fixed' | 'none' }
  | { readonly kind: 'taken'; readonly by: Aboard };

/** An edit in words: what changed, and how the boat lies now; or why nothing changed. */
export function saidText(
  said: Said,
  hull: Hull,
  now: { pieces: readonly Piece[]; balance: LoadBalance; measures: Measures },
): string {
  const balance = words.balanceSaid(
    totalWords.alongWords[along(now.balance, hull)],
    totalWords.acrossWords[across(now.balance, hull)],
  );
  const named = (key: string | undefined) => now.pieces.find((piece) => piece.key === key);
  switch (said.kind) {
    case 'moved': {
      const piece = named(said.key);
      if (!piece) return balance;
      const other = named(said.swapped);
      const swap = other ? ` ${words.swapped(whoIs(piece), whoIs(other))}` : '';
      return `${whoIs(piece)}: ${placeName(hull, piece, now.measures)}.${swap} ${balance}`;
    }
    case 'seated':
      return balance;
    case 'removed':
      return `${words.removed(whoIs(said.item))} ${balance}`;
    case 'refused':
      return words.refused[said.why];
    case 'taken':
      return words.taken(whoIs(said.by));
    default:
      return said satisfies never;
  }
}
