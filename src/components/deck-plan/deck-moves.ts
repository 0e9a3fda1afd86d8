import type { ReactiveControllerHost } from 'lit';
import type { Craft, Store } from '../../core/craft/shapes.ts';
import type { Aboard, Load } from '../../core/load/shapes.ts';
import type { Said } from './deck-said.ts';
import { moved, putBack, putDown, removed, seatOf } from './edit-load.ts';
import type { Spot } from './hull-plan.ts';
import { freeSpot, heightFor, type Landing, landing, onBowTube } from './landing.ts';
import { aboardId, aboardKey, type Piece, storeIndex, storeMoved } from './pieces.ts';
import { aboardAt } from './room.ts';
import { nextFreePlace, nextStorePlace } from './seats.ts';

/** Whoever keeps the load: told what the user does to it. */
export interface LoadKeeper extends ReactiveControllerHost {
  readonly craft: Craft | undefined;
  readonly load: Load;
  /** As drawn. */
  pieces(): readonly Piece[];
  loadEdited(load: Load, live: boolean): void;
  storeEdited(store: Store): void;
  said(what: Said | undefined): void;
}

/** A piece between where it was and where it will be. */
export interface InHand {
  readonly key: string;
  readonly by: 'pointer' | 'keys';
  readonly landing: Landing;
  /** As they would be if it were put down now. */
  readonly load: Load;
  readonly store: Store;
}

interface Before {
  readonly load: Load;
  readonly store: Store;
}

/** Moves of pieces from being taken up to being put down, and the way back. */
export class DeckMoves {
  readonly #keeper: LoadKeeper;
  /** As all was when the piece in hand was taken up: live edits may come back from outside as the load. */
  #base: Before | undefined;
  /** As all was before the arrow keys that Escape takes back. */
  #beforeKeys: (Before & { readonly key: string }) | undefined;
  #gone: { readonly item: Aboard; readonly index: number } | undefined;
  hand: InHand | undefined;

  constructor(keeper: LoadKeeper) {
    this.#keeper = keeper;
  }

  /** The load without what is still in hand. */
  get settledLoad(): Load {
    return this.#base?.load ?? this.#keeper.load;
  }

  get canPutBack(): boolean {
    return this.#gone !== undefined;
  }

  /** Nothing is in hand and nothing can be taken back any more. */
  reset(): void {
    this.#forget();
    this.#beforeKeys = undefined;
    this.#gone = undefined;
  }

  piece(key: string): Piece | undefined {
    return this.#keeper.pieces().find((piece) => piece.key === key);
  }

  /** Takes a piece to a spot without putting it down; a pointer finds places, keys go exactly there. */
  hold(key: string, by: InHand['by'], spot: Spot): void {
    const { craft } = this.#keeper;
    const piece = this.piece(key);
    if (!craft || !piece) return;
    const { hull } = craft;
    this.#base ??= { load: this.#keeper.load, store: craft.store };
    const { load, store } = this.#base;
    const to: Landing =
      by === 'keys' ? { at: { ...spot, z: heightFor(hull, piece.kind, spot) } } : landing(hull, piece.kind, spot);
    const id = aboardId(key);
    const put = id === undefined ? undefined : putDown(hull, load, id, to);
    const before = this.hand;
    this.hand = {
      key,
      by,
      landing: to,
      load: put && 'load' in put ? put.load : load,
      store: id === undefined && !('refused' in to) ? storeMoved(store, storeIndex(key)!, placeOf(to)) : store,
    };
    const same = before !== undefined && samePlace(before.landing, to);
    if (!same && id !== undefined) this.#keeper.loadEdited(this.hand.load, true);
    else if (!same) this.#keeper.storeEdited(this.hand.store);
    this.#keeper.requestUpdate();
  }

  /** Moves a piece by so much, m, until it is settled. */
  nudge(key: string, x: number, y: number): void {
    const { craft, load } = this.#keeper;
    const piece = this.piece(key);
    if (!craft || !piece) return;
    if (piece.fixed) {
      this.#keeper.said({ kind: 'refused', why: 'fixed' });
      return;
    }
    if (this.#beforeKeys?.key !== key) this.#beforeKeys = { key, load, store: craft.store };
    const held = this.hand?.key === key ? placeOf(this.hand.landing) : piece.place;
    const from = held ?? freeSpot(craft.hull, piece.kind, undefined);
    const to = aboardAt(craft.hull, { x: from.x + x, y: from.y + y });
    if (onBowTube(craft.hull, piece.kind, to)) this.#keeper.said({ kind: 'refused', why: 'bow-tube' });
    else this.hold(key, 'keys', to);
  }

  /** Puts down what is in hand. */
  settle(): void {
    const { hand } = this;
    if (!hand) return;
    if (this.put(hand.key, hand.landing)) this.#forget();
    else this.drop();
  }

  /** What is in hand goes back to where it was. */
  drop(): void {
    const { hand } = this;
    const base = this.#base;
    this.#forget();
    if (hand && base) {
      if (aboardId(hand.key) === undefined) this.#keeper.storeEdited(base.store);
      else this.#keeper.loadEdited(base.load, false);
    }
    this.#keeper.requestUpdate();
  }

  /** Takes back what the arrow keys did since the piece got the focus. False: they did nothing. */
  takeBackKeys(): boolean {
    const before = this.#beforeKeys;
    this.#beforeKeys = undefined;
    if (!before) return false;
    this.#forget();
    if (aboardId(before.key) !== undefined) this.#keeper.loadEdited(before.load, false);
    else this.#keeper.storeEdited(before.store);
    this.#keeper.said({ kind: 'moved', key: before.key });
    return true;
  }

  /** From here on Escape does not take back what the arrow keys did. */
  keepKeys(): void {
    this.#beforeKeys = undefined;
  }

  /** A finished move; undefined: nobody knows where. False: refused, and nothing was told but why. */
  put(key: string, to: Landing | undefined): boolean {
    const { craft } = this.#keeper;
    if (!craft) return false;
    const { load, store } = this.#base ?? { load: this.#keeper.load, store: craft.store };
    const id = aboardId(key);
    if (id === undefined) {
      if (!to || 'refused' in to) return false;
      this.#keeper.storeEdited(storeMoved(store, storeIndex(key)!, placeOf(to)));
      this.#keeper.said({ kind: 'moved', key });
      return true;
    }
    const put = to ? putDown(craft.hull, load, id, to) : { load: moved(load, id, undefined) };
    if ('refused' in put) {
      this.#keeper.said(
        put.refused === 'taken' ? { kind: 'taken', by: put.by } : { kind: 'refused', why: put.refused },
      );
      return false;
    }
    const other = load.items.find(
      (item, i) => item.id !== id && seatOf(craft.hull, item) && changedPlace(item, put.load.items[i]),
    );
    this.#keeper.loadEdited(put.load, false);
    this.#keeper.said({ kind: 'moved', key, swapped: other && aboardKey(other.id) });
    return true;
  }

  /** To the next free place, going forward and round again. */
  toNextPlace(key: string): void {
    const { craft, load } = this.#keeper;
    const piece = this.piece(key);
    if (!craft || !piece) return;
    const item = load.items.find(({ id }) => id === aboardId(key));
    const station = item ? nextFreePlace(craft.hull, load, item) : nextStorePlace(craft.hull, piece);
    if (piece.fixed) this.#keeper.said({ kind: 'refused', why: 'fixed' });
    else if (!station) this.#keeper.said({ kind: 'refused', why: 'none' });
    else this.put(key, { station });
  }

  /** One fewer aboard, who can be put back until something else is removed. */
  remove(key: string): void {
    const { load } = this.#keeper;
    const index = load.items.findIndex(({ id }) => id === aboardId(key));
    const item = load.items[index];
    if (!item) return;
    this.reset();
    this.#gone = { item, index };
    this.#keeper.loadEdited(removed(load, item.id), false);
    this.#keeper.said({ kind: 'removed', item });
  }

  putBack(): void {
    const gone = this.#gone;
    this.#gone = undefined;
    if (!gone) return;
    this.#keeper.loadEdited(putBack(this.#keeper.load, gone.item, gone.index), false);
    this.#keeper.said({ kind: 'moved', key: aboardKey(gone.item.id) });
  }

  #forget(): void {
    this.hand = undefined;
    this.#base = undefined;
  }
}

function placeOf(to: Landing) {
  return 'station' in to ? to.station : to.at;
}

function samePlace(a: Landing, b: Landing): boolean {
  const [one, other] = [placeOf(a), placeOf(b)];
  return 'refused' in a === 'refused' in b && one.x === other.x && one.y === other.y;
}

function changedPlace(before: Aboard, after: Aboard | undefined): boolean {
  return before.station !== after?.station || before.at !== after?.at;
}
