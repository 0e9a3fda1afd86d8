import type { ReactiveController } from 'lit';
import { followPointer } from '../route-map/follow-pointer.ts';
import { DeckMoves, type LoadKeeper } from './deck-moves.ts';
import type { Spot } from './hull-plan.ts';
import { landing } from './landing.ts';
import { aboardId } from './pieces.ts';

/** What the editor must know of the drawing. */
export interface DeckKeeper extends LoadKeeper {
  /** The part of the page that the drawing fills, and what lies under a point of the screen. */
  frame(): HTMLElement | null;
  under(x: number, y: number): { spot: Spot; key: string | undefined; overboard: boolean };
  pxPerMetre(): number;
  /** Where a piece is drawn, m. */
  drawnAt(key: string): Spot | undefined;
  focusPiece(key: string): void;
}

const ARROWS: Record<string, readonly [number, number]> = {
  ArrowUp: [1, 0],
  ArrowDown: [-1, 0],
  ArrowLeft: [0, -1],
  ArrowRight: [0, 1],
};
/** m per press of an arrow key, and with Shift. */
const NUDGE = { fine: 0.05, coarse: 0.25 };

/** What pointers, taps and keys on the drawing do. */
export class DeckEditor implements ReactiveController {
  readonly #keeper: DeckKeeper;
  readonly moves: DeckMoves;
  #ends = new AbortController();
  #dropDrag: (() => void) | undefined;
  /** Key of the piece taken up by a tap or Enter. */
  selected: string | undefined;
  /** Key of the piece in the tab order. */
  current: string | undefined;

  constructor(keeper: DeckKeeper) {
    this.#keeper = keeper;
    this.moves = new DeckMoves(keeper);
    keeper.addController(this);
  }

  hostConnected(): void {
    this.#ends = new AbortController();
    const { signal } = this.#ends;
    void this.#keeper.updateComplete.then(() => {
      const frame = this.#keeper.frame();
      if (!frame || signal.aborted) return;
      this.#followDrags(frame, signal);
      frame.addEventListener('click', (event) => this.#tapped(event), { signal });
    });
  }

  hostDisconnected(): void {
    this.#ends.abort();
  }

  /** Another boat or load came from outside: nothing is taken up any more. */
  reset(): void {
    this.selected = undefined;
    this.moves.reset();
  }

  select(key: string | undefined): void {
    this.selected = key;
    if (key !== undefined) this.current = key;
    this.#keeper.said(undefined);
    this.#keeper.requestUpdate();
  }

  /** Enter, or a tap on a piece: takes it up, or lets go of it. */
  toggle(key: string): void {
    this.select(this.selected === key ? undefined : key);
  }

  /** Moves a piece by so much, m, as a finished edit; for buttons. */
  move(key: string, x: number, y: number): void {
    this.moves.nudge(key, x, y);
    this.moves.settle();
  }

  /** Takes one ashore; the piece after it comes into the tab order. */
  remove(key: string): void {
    if (aboardId(key) === undefined) return;
    this.moves.settle();
    const order = this.#order();
    const place = order.indexOf(key);
    this.selected = undefined;
    this.current = order[place + 1] ?? order[place - 1];
    this.moves.remove(key);
  }

  key(event: KeyboardEvent, key: string): void {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const order = this.#order();
    const place = order.indexOf(key);
    const arrow = ARROWS[event.key];
    const goes: Record<string, number> = { PageDown: place + 1, PageUp: place - 1, Home: 0, End: order.length - 1 };
    const next = goes[event.key];
    const size = event.shiftKey ? NUDGE.coarse : NUDGE.fine;
    if (arrow) this.moves.nudge(key, arrow[0] * size, arrow[1] * size);
    else if (next !== undefined) this.#keeper.focusPiece(order[Math.min(order.length - 1, Math.max(0, next))]!);
    else if (event.key === 'Enter' || event.key === ' ') this.toggle(key);
    else if (event.key === 'n' || event.key === 'N') this.moves.toNextPlace(key);
    else if (event.key === 'Delete' || event.key === 'Backspace') this.#deleted(key);
    else if (event.key === 'Escape') this.cancel();
    else return;
    event.preventDefault();
    event.stopPropagation();
  }

  /** A key let go ends the edit it made. */
  keyLetGo(): void {
    this.moves.settle();
  }

  /** The focus came to a piece. */
  reached(key: string): void {
    if (this.current === key) return;
    this.current = key;
    this.#keeper.requestUpdate();
  }

  /** The focus left a piece. */
  left(): void {
    if (this.#dropDrag) return;
    this.moves.settle();
    this.moves.keepKeys();
  }

  /** Escape: breaks off a drag, takes back what the arrows did, or lets go of the selection. */
  cancel(): void {
    if (this.#dropDrag) this.#dropDrag();
    else if (!this.moves.takeBackKeys()) this.select(undefined);
  }

  #order(): string[] {
    return this.#keeper.pieces().map(({ key }) => key);
  }

  #deleted(key: string): void {
    this.remove(key);
    if (this.current) this.#keeper.focusPiece(this.current);
  }

  #followDrags(frame: HTMLElement, signal: AbortSignal): void {
    let key = '';
    let grabbed = false;
    let from: Spot = { x: 0, y: 0 };
    const drop = followPointer(
      frame,
      {
        accepts: ({ clientX, clientY }) => {
          key = this.#keeper.under(clientX, clientY).key ?? '';
          grabbed = this.moves.piece(key)?.fixed === false;
          return grabbed;
        },
        begin: () => {
          this.moves.settle();
          this.moves.keepKeys();
          this.#dropDrag = drop;
          from = this.#keeper.drawnAt(key) ?? from;
          this.select(undefined);
          this.current = key;
        },
        move: (x, y) => {
          const scale = this.#keeper.pxPerMetre();
          this.moves.hold(key, 'pointer', { x: from.x - y / scale, y: from.y + x / scale });
        },
        end: () => {
          this.#dropDrag = undefined;
          this.moves.settle();
        },
        cancel: () => {
          this.#dropDrag = undefined;
          this.moves.drop();
        },
      },
      signal,
    );
    // A finger on a piece moves it, beside one it scrolls the page; browsers ignore touch-action inside a drawing.
    const keepPage = (event: TouchEvent) => {
      if (grabbed && event.cancelable) event.preventDefault();
    };
    frame.addEventListener('touchmove', keepPage, { passive: false, signal });
  }

  #tapped({ detail, target, clientX, clientY }: MouseEvent): void {
    // A click without a pointer comes from assistive technology, on the piece itself.
    if (detail === 0) {
      const key = (target as Element).closest<SVGElement>('[data-key]')?.dataset.key;
      if (key) this.toggle(key);
      return;
    }
    const { selected } = this;
    const { spot, key, overboard } = this.#keeper.under(clientX, clientY);
    if (key !== undefined) {
      this.toggle(key);
      this.#keeper.focusPiece(key);
    } else if (selected !== undefined) {
      if (overboard) this.select(undefined);
      else this.#putAt(selected, spot);
    }
  }

  #putAt(key: string, spot: Spot): void {
    const piece = this.moves.piece(key);
    const hull = this.#keeper.craft?.hull;
    if (!piece || !hull) return;
    if (piece.fixed) this.#keeper.said({ kind: 'refused', why: 'fixed' });
    else if (this.moves.put(key, landing(hull, piece.kind, spot))) this.selected = undefined;
  }
}
