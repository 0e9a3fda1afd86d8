import { html, nothing } from 'lit';
import { property } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { repeat } from 'lit/directives/repeat.js';
import type { Craft, Hull, Store } from '../../core/craft/shapes.ts';
import type { Aboard, Load } from '../../core/load/shapes.ts';
import { define } from '../define.ts';
import type { QuantityTyped } from '../field/quantity-field.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { dataName } from '../words/en-data.ts';
import { deckWords, whoIs, aboardWords as words } from '../words/en-deck.ts';
import type { LoadAsk, PieceAsk } from './aboard-asks.ts';
import { aboardTableStyles } from './aboard-table.styles.ts';
import { MOST_ABOARD } from './edit-load.ts';
import { person } from './landing.ts';
import { type Picker, placePicker } from './place-picker.ts';
import './mass-field.ts';
import { LEAST_SCALE, pieceDrawing } from './piece-drawing.ts';
import { aboardId, type Piece, pieces, storeIndex } from './pieces.ts';

export type AboardAsked = CustomEvent<LoadAsk | PieceAsk>;

const KINDS: readonly Aboard['kind'][] = ['adult', 'child', 'dog', 'gear'];

/** kg; outside these a figure is a slip of the finger rather than a weight. */
const MASS_LIMITS: Record<Aboard['kind'], readonly [number, number]> = {
  adult: [25, 300],
  child: [2, 120],
  dog: [0.5, 120],
  gear: [0.1, 1000],
};

/**
 * @summary Those aboard and their places as a table.
 * @fires aboard-asked - the user wants somebody added, changed, moved or removed
 */
export class AboardTable extends SpeakingElement {
  static override styles = [tokens, controls, aboardTableStyles];

  @property({ attribute: false }) craft: Craft | undefined;
  @property({ attribute: false }) load: Load = { items: [] };
  @property({ attribute: false }) measures: Measures = NAUTICAL;
  /** Key of the piece taken up on the drawing. */
  @property({ attribute: false }) selected: string | undefined;

  /** Puts the focus on the row of a piece, or on the first button to add one. */
  focusRow(key: string | undefined): void {
    const rows = [...this.renderRoot.querySelectorAll<HTMLElement>('[data-key]')];
    const row = rows.find(({ dataset }) => dataset.key === key);
    (row?.querySelector<HTMLElement>('.remove') ?? this.renderRoot.querySelector<HTMLElement>('.add button'))?.focus();
  }

  override render() {
    const { craft, load } = this;
    if (!craft) return nothing;
    const all = pieces(craft, load);
    const aboard = all.filter(({ key }) => aboardId(key) !== undefined);
    const stores = all.filter(({ key }) => storeIndex(key) !== undefined);
    const people = load.items.filter(({ kind }) => person(kind));
    return html`
      ${load.items.length === 0 ? html`<p>${words.nobody}</p>` : nothing}
      <table role="table">
        <caption class="sr">${words.title}</caption>
        <thead role="rowgroup">
          <tr role="row">
            <th role="columnheader" scope="col">${words.who}</th>
            <th role="columnheader" scope="col">${words.weight}</th>
            <th role="columnheader" scope="col">${words.place}</th>
            <th role="columnheader" scope="col"><span class="sr">${words.helm}</span></th>
            <th role="columnheader" scope="col"><span class="sr">${deckWords.remove}</span></th>
          </tr>
        </thead>
        <tbody role="rowgroup">
          ${repeat(
            aboard,
            ({ key }) => key,
            (piece, i) => this.#row(craft.hull, piece, load.items[i]!),
          )}
          ${repeat(
            stores,
            ({ key }) => key,
            (piece) => this.#storeRow(craft, piece),
          )}
        </tbody>
      </table>
      ${people.length > 0 && !people.some(({ helm }) => helm) ? html`<p class="hint">${words.noHelm}</p>` : nothing}
      ${people.length > 0 ? html`<p class="hint">${words.weightHint}</p>` : nothing}
      ${this.#adding()}
    `;
  }

  #adding() {
    const full = this.load.items.length >= MOST_ABOARD;
    return html`
      <div class="add" role="group" aria-label=${words.addTitle}>
        ${KINDS.map(
          (kind) => html`<button
            type="button"
            aria-label=${words.addName(words.add[kind])}
            ?disabled=${full}
            @click=${() => this.#ask({ what: 'add', kind })}
          >
            <span aria-hidden="true">+</span> ${words.add[kind]}
          </button>`,
        )}
      </div>
      ${full ? html`<p class="hint">${words.full}</p>` : nothing}
    `;
  }

  #row(hull: Hull, piece: Piece, item: Aboard) {
    const who = whoIs(piece);
    const { key } = piece;
    const [min, max] = MASS_LIMITS[item.kind];
    return html`<tr role="row" data-key=${key} class=${key === this.selected ? 'selected' : ''}>
      <td role="cell" class="who"><div class="named">
        ${glyph(piece)}
        <input
          aria-label=${words.name(who)}
          placeholder=${deckWords.kinds[item.kind]}
          maxlength="60"
          autocomplete="off"
          enterkeyhint="done"
          .value=${dataName(item.name ?? '')}
          @change=${(event: Event) => this.#ask({ what: 'rename', key, name: valueIn(event).trim() })}
        /></div>
      </td>
      <td role="cell" class="mass">
        <homeleg-mass-field
          label=${words.weightOf(who)}
          measure="mass"
          required
          .min=${min}
          .max=${max}
          .measures=${this.measures}
          .value=${item.mass}
          @quantity-typed=${(event: QuantityTyped) => this.#weighed(event, key)}
        ></homeleg-mass-field>
      </td>
      <td role="cell" class="place">${this.#placePicker(hull, piece)}</td>
      <td role="cell" class="helm">
        ${
          person(item.kind)
            ? html`<label>
              <input
                type="radio"
                name="helm"
                aria-label=${words.steers(who)}
                .checked=${live(item.helm === true)}
                @change=${() => this.#ask({ what: 'steer', key })}
              />
              <span aria-hidden="true">${words.helm}</span>
            </label>`
            : nothing
        }
      </td>
      <td role="cell" class="out">
        <button
          type="button"
          class="quiet icon remove"
          aria-label=${words.removeOne(who)}
          @click=${() => this.#ask({ what: 'remove', key })}
        >
          <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true"><path d="M3 3L13 13M13 3L3 13" /></svg>
        </button>
      </td>
    </tr>`;
  }

  #storeRow({ hull, store }: Craft, piece: Piece) {
    const { measures } = this;
    return html`<tr role="row" data-key=${piece.key} class="holder ${piece.key === this.selected ? 'selected' : ''}">
      <td role="cell" class="who"><div class="named">${glyph(piece)}<span class="name">${whoIs(piece)}</span></div></td>
      <td role="cell" class="mass"><span class="figure">${measures.show('mass', piece.mass)}</span>${this.#holds(store)}</td>
      <td role="cell" class="place">
        ${piece.fixed ? html`<span class="figure">${words.fixed}</span>` : this.#placePicker(hull, piece)}
      </td>
      <td role="cell" class="helm"></td>
      <td role="cell" class="out"></td>
    </tr>`;
  }

  #holds({ kind }: Store) {
    if (kind === 'battery') return nothing;
    const { fill } = this.load;
    return html`<span class="hint">${fill === undefined ? words.halfFull : words.withFuel(this.measures.show('share', fill))}</span>`;
  }

  #placePicker(hull: Hull, piece: Piece) {
    const picked: Picker['picked'] = (to) => {
      this.#ask({ what: 'place', key: piece.key, to });
      // What was picked may be refused.
      this.requestUpdate();
    };
    return placePicker(piece, { hull, load: this.load, measures: this.measures, picked });
  }

  #weighed(event: QuantityTyped, key: string): void {
    event.stopPropagation();
    const { value } = event.detail;
    if (value !== undefined) this.#ask({ what: 'reweigh', key, mass: value });
  }

  #ask(detail: LoadAsk | PieceAsk): void {
    this.dispatchEvent(new CustomEvent('aboard-asked', { detail, bubbles: true }) satisfies AboardAsked);
  }
}

function glyph({ kind }: Piece) {
  return html`<svg class="glyph piece ${kind}" viewBox="-26 -26 52 52" width="34" height="34" aria-hidden="true">
    ${pieceDrawing(kind, '', LEAST_SCALE)}
  </svg>`;
}

function valueIn(event: Event): string {
  return (event.target as HTMLInputElement | HTMLSelectElement).value;
}

define('homeleg-aboard-table', AboardTable);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-aboard-table': AboardTable;
  }
}
