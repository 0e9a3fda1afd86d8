import { html, nothing, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { Craft, Store } from '../../core/craft/shapes.ts';
import { balance as balanceOf, type LoadBalance } from '../../core/load/balance.ts';
import type { Load } from '../../core/load/shapes.ts';
import { OwnWidth } from '../curve-plot/own-width.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { aboardWords, totalWords, whoIs, deckWords as words } from '../words/en-deck.ts';
import { asked, type LoadAsk } from './aboard-asks.ts';
import './aboard-table.ts';
import type { AboardAsked, AboardTable } from './aboard-table.ts';
import { centreSign } from './balance-drawing.ts';
import { deckDrawing } from './deck-drawing.ts';
import { DeckEditor, type DeckKeeper } from './deck-editor.ts';
import { layOut, overboard, pieceAt } from './deck-layout.ts';
import { deckPlanStyles } from './deck-plan.styles.ts';
import { type Said, saidText } from './deck-said.ts';
import { type HullPlan, hullPlan, type Spot } from './hull-plan.ts';
import { movePad } from './move-pad.ts';
import { aboardId, fuelAboard, type Piece, pieces } from './pieces.ts';
import { type PlaceMark, placeMarks } from './place-marks.ts';
import { placeName } from './place-names.ts';
import { totals } from './totals.ts';
import { type Point, type View, viewOf } from './view.ts';

/** Those aboard changed; `live` while the change is still going on, such as in a drag. */
export type LoadEdited = CustomEvent<{ load: Load; live: boolean }>;
/** A tank or battery stands somewhere else. */
export type StoreMoved = CustomEvent<{ store: Store }>;

/** px from which the table stands beside the drawing, the share of the width it leaves, and how large the drawing gets. */
const WIDE = { from: 920, share: 0.44, gap: 24 };
const MOST = { width: 560, tall: 620, tallNarrow: 540 };

/**
 * @slot - figures that stand beside the drawing, between the totals and the table
 * @summary The boat from above with those aboard, their gear and the tank or battery, and what they do to its balance.
 * @fires load-edited - the user changed who or what is aboard or where
 * @fires store-moved - the user moved a tank or battery
 */
export class DeckPlan extends SpeakingElement implements DeckKeeper {
  static override styles = [tokens, controls, deckPlanStyles];

  @property({ attribute: false }) craft: Craft | undefined;
  @property({ attribute: false }) load: Load = { items: [] };
  /** Absent: worked out here from `craft` and `load`. */
  @property({ attribute: false }) balance: LoadBalance | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  @state() private note: Said | undefined;

  readonly #editor = new DeckEditor(this);
  readonly #own = new OwnWidth(this);
  #plan: HullPlan | undefined;
  #marks: readonly PlaceMark[] = [];
  #view: View | undefined;
  #pieces: readonly Piece[] = [];
  /** Where each piece is drawn, px, by key. */
  #drawn = new Map<string, Point>();
  #told: Load | undefined;
  #toldStore: Store | undefined;
  /** A balance given from outside that an edit here has overtaken. */
  #overtaken: LoadBalance | undefined;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('load') && this.load !== this.#told) this.#fresh();
    if (changed.has('craft') && this.craft?.store !== this.#toldStore) this.#fresh();
    const { craft } = this;
    if (!craft) return;
    if (changed.has('craft')) {
      this.#plan = hullPlan(craft.hull);
      this.#marks = placeMarks(craft.hull, craft.store.kind === 'battery');
    }
    const { hand } = this.#editor.moves;
    this.#pieces = pieces({ ...craft, store: hand?.store ?? craft.store }, hand?.load ?? this.load);
    this.#layOut(craft);
  }

  /** Another load or boat was set from outside. */
  #fresh(): void {
    this.#editor.reset();
    this.note = undefined;
    this.#overtaken = undefined;
  }

  #layOut({ hull }: Craft): void {
    const { width } = this.#own;
    if (width === 0 || !this.#plan) return;
    const { hand, settledLoad } = this.#editor.moves;
    const waiting = pieces(this.craft!, settledLoad).flatMap(({ key, place }) => (place ? [] : [key]));
    const wide = width >= WIDE.from;
    const room = wide ? (width - WIDE.gap) * WIDE.share : width;
    const paper = { width: Math.min(Math.floor(room), MOST.width), tallest: wide ? MOST.tall : MOST.tallNarrow };
    const view = viewOf(hull, this.#plan, paper, waiting.length);
    this.#view = view;
    this.#drawn = layOut({ hull, view, pieces: this.#pieces, waiting, hand });
  }

  override render() {
    const { craft } = this;
    const wide = this.#own.width >= WIDE.from;
    return html`
      <div class="plan ${wide ? 'wide' : ''}" @keydown=${this.#keyPressed}>
        <figure>
          <div
            class="water ${this.#editor.moves.hand?.by === 'pointer' ? 'dragging' : this.#editor.selected ? 'taken-up' : ''}"
          >
            ${craft ? this.#drawing(craft) : nothing}
          </div>
          ${craft ? this.#panel(craft) : nothing}
          <p id="keys" class="sr">${words.keys}</p>
        </figure>
        ${
          craft
            ? html`<div class="beside">
              ${this.#totals(craft)}
              <slot></slot>
              <homeleg-aboard-table
                .craft=${craft}
                  .load=${this.#editor.moves.settledLoad}
                .measures=${this.measures}
                .selected=${this.#editor.selected}
                @aboard-asked=${this.#asked}
              ></homeleg-aboard-table>
            </div>`
            : nothing
        }
      </div>
    `;
  }

  #drawing(craft: Craft) {
    if (!this.#view || !this.#plan) return nothing;
    return deckDrawing({
      craft,
      plan: this.#plan,
      marks: this.#marks,
      view: this.#view,
      pieces: this.#pieces,
      drawn: this.#drawn,
      balance: this.#shownBalance(craft),
      measures: this.measures,
      editor: this.#editor,
    });
  }

  #panel(craft: Craft) {
    const { selected } = this.#editor;
    const { note, measures } = this;
    const piece = this.#pieces.find(({ key }) => key === selected);
    return html`<div class="panel">
      <p role="status" class="said ${note?.kind ?? ''}">${note ? this.#saying(note, craft) : ''}</p>
      ${
        note?.kind === 'removed' && this.#editor.moves.canPutBack
          ? this.#tool(words.putBack, () => this.#editor.moves.putBack())
          : nothing
      }
      ${note ? nothing : html`<p class="hint">${this.#hint(craft, piece)}</p>`}
      ${
        piece
          ? this.#tools(piece, whoIs(piece))
          : html`<p class="hint">${words.figuresIn(measures.unit('mass'))} ${centreSign()} ${words.marks}</p>`
      }
    </div>`;
  }

  #hint({ hull }: Craft, piece: Piece | undefined) {
    if (!piece) return this.load.items.length > 0 ? words.hint : words.hintEmpty;
    const { measures } = this;
    return html`<b>${whoIs(piece)} ${measures.show('mass', piece.mass)}</b>, ${placeName(hull, piece, measures)}.
      ${piece.fixed ? words.refused.fixed : words.hintSelected}`;
  }

  #tools(piece: Piece, who: string) {
    const { key } = piece;
    return html`<div class="tools" role="group" aria-label=${words.move(who)}>
      ${
        piece.fixed
          ? nothing
          : html`${this.#tool(words.nextPlace, () => this.#editor.moves.toNextPlace(key))}
            ${movePad((x, y) => this.#editor.move(key, x, y))}`
      }
      ${aboardId(key) === undefined ? nothing : this.#tool(words.remove, () => this.#editor.remove(key))}
      ${this.#tool(words.done, () => this.#letGo(key))}
    </div>`;
  }

  #tool(label: string, pressed: () => void) {
    return html`<button type="button" @click=${pressed}>${label}</button>`;
  }

  #totals(craft: Craft) {
    const { hand } = this.#editor.moves;
    const shown = this.#shownBalance(craft);
    const load = hand?.load ?? this.load;
    const waiting = this.#pieces.filter(({ place }) => !place).length;
    return html`<section class="totals" aria-label=${totalWords.title}>
      <dl>
        ${totals(craft, load, shown, this.measures).map(
          ({ name, term, figure, notes, tone }) => html`<div class="total-${name} tone-${tone}">
            <dt>${term}</dt>
            <dd class="value">${figure}</dd>
            ${notes.length > 0 ? html`<dd class="note">${notes.join(', ')}</dd>` : nothing}
          </div>`,
        )}
      </dl>
      ${waiting > 0 ? this.#waiting(waiting) : nothing}
    </section>`;
  }

  #waiting(count: number) {
    return html`<div class="waiting">
      <p class="caution">${totalWords.unknown(count)}</p>
      <button type="button" class="primary" aria-describedby="steadiest" @click=${() => this.#loadAsked({ what: 'seat-everyone' })}>
        ${aboardWords.seatEveryone}
      </button>
      <p id="steadiest" class="hint">${aboardWords.seatEveryoneHint}</p>
    </div>`;
  }

  /** The one given, until an edit here overtakes it and before the next one comes. */
  #shownBalance(craft: Craft): LoadBalance {
    const { hand } = this.#editor.moves;
    if (this.balance && this.balance !== this.#overtaken && !hand) return this.balance;
    const now = hand ? { ...craft, store: hand.store } : craft;
    const load = hand?.load ?? this.load;
    return balanceOf(now, load, fuelAboard(now, load));
  }

  #saying(note: Said, craft: Craft): string {
    const balance = this.#shownBalance(craft);
    return saidText(note, craft.hull, { pieces: this.#pieces, balance, measures: this.measures });
  }

  #keyPressed(event: KeyboardEvent): void {
    if (event.key === 'Escape') this.#editor.cancel();
  }

  #letGo(key: string): void {
    this.#editor.select(undefined);
    this.focusPiece(key);
  }

  #asked({ detail }: AboardAsked): void {
    if (detail.what === 'place') {
      this.#editor.moves.put(detail.key, detail.to);
    } else if (detail.what === 'remove') {
      this.#editor.remove(detail.key);
      void this.updateComplete.then(() => this.#table?.focusRow(this.#editor.current));
    } else {
      this.#loadAsked(detail);
    }
  }

  #loadAsked(ask: LoadAsk): void {
    if (!this.craft) return;
    const { load, said } = asked(this.craft, this.load, ask);
    this.loadEdited(load, false);
    if (said) this.said(said);
  }

  get #table(): AboardTable | null {
    return this.renderRoot.querySelector('homeleg-aboard-table');
  }

  // What the editor needs.

  pieces(): readonly Piece[] {
    return this.#pieces;
  }

  frame(): HTMLElement | null {
    return this.renderRoot.querySelector('.water');
  }

  pxPerMetre(): number {
    return (this.#view?.scale ?? 1) * this.#shrunk().by;
  }

  drawnAt(key: string): Spot | undefined {
    const at = this.#drawn.get(key);
    return at && this.#view?.spot(at);
  }

  under(clientX: number, clientY: number): { spot: Spot; key: string | undefined; overboard: boolean } {
    const { left, top, by } = this.#shrunk();
    const view = this.#view;
    if (!view || !this.craft || !this.#plan) return { spot: { x: 0, y: 0 }, key: undefined, overboard: true };
    const point = { x: (clientX - left) / by, y: (clientY - top) / by };
    const spot = view.spot(point);
    return {
      spot,
      key: pieceAt(this.#pieces, this.#drawn, view, point),
      overboard: overboard(this.craft.hull, this.#plan, spot),
    };
  }

  loadEdited(load: Load, live: boolean): void {
    this.#overtaken = this.balance;
    this.#told = load;
    if (!live) this.load = load;
    this.requestUpdate();
    const detail = { load, live };
    this.dispatchEvent(new CustomEvent('load-edited', { detail, bubbles: true }) satisfies LoadEdited);
  }

  storeEdited(store: Store): void {
    if (!this.craft) return;
    this.#overtaken = this.balance;
    this.#toldStore = store;
    this.craft = { ...this.craft, store };
    this.dispatchEvent(new CustomEvent('store-moved', { detail: { store }, bubbles: true }) satisfies StoreMoved);
  }

  said(what: Said | undefined): void {
    this.note = what;
  }

  focusPiece(key: string): void {
    this.#editor.current = key;
    this.requestUpdate();
    void this.updateComplete.then(() => {
      const found = [...this.renderRoot.querySelectorAll<SVGElement>('.piece[data-key]')];
      found.find(({ dataset }) => dataset.key === key)?.focus({ preventScroll: true });
    });
  }

  /** Where the drawing is on the screen, and how much smaller than drawn. */
  #shrunk(): { left: number; top: number; by: number } {
    const box = this.renderRoot.querySelector('svg.deck')?.getBoundingClientRect();
    if (!box || !this.#view) return { left: 0, top: 0, by: 1 };
    return { left: box.left, top: box.top, by: box.width / this.#view.width || 1 };
  }
}

define('homeleg-deck-plan', DeckPlan);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-deck-plan': DeckPlan;
  }
}
