import { html, nothing } from 'lit';
import { live } from 'lit/directives/live.js';
import type { Hull, Position, Station } from '../../core/craft/shapes.ts';
import type { Load } from '../../core/load/shapes.ts';
import '../field/quantity-field.ts';
import type { QuantityTyped } from '../field/quantity-field.ts';
import type { Measures } from '../units/measures.ts';
import { dataName } from '../words/en-data.ts';
import { whoIs, aboardWords as words } from '../words/en-deck.ts';
import type { PieceAsk } from './aboard-asks.ts';
import { takenBy } from './edit-load.ts';
import { freeSpot, type PieceKind, placesFor, reachFor } from './landing.ts';
import { aboardId, type Piece } from './pieces.ts';
import { sideAt } from './room.ts';

type Place = Extract<PieceAsk, { what: 'place' }>['to'];

/** What the picker stands on, and whom it tells. */
export interface Picker {
  readonly hull: Hull;
  readonly load: Load;
  readonly measures: Measures;
  readonly picked: (to: Place) => void;
}

/** Values of the two choices that are no station; ids of stations are never so short and odd. */
const UNKNOWN = '?';
const FREE = '@';

/** Where a piece stands, as a list of places; a free spot also in figures, which need no pointer. */
export function placePicker(piece: Piece, picker: Picker) {
  const { hull, measures } = picker;
  const { key, kind, place, station } = piece;
  const places = placesFor(hull, kind);
  const at = hull.stations.find(({ id }) => id === station);
  const value = place === undefined ? UNKNOWN : at ? at.id : FREE;
  return html`
    <select
      aria-label=${words.placeOf(whoIs(piece))}
      @change=${(event: Event) => picker.picked(pickedPlace(hull, piece, (event.target as HTMLSelectElement).value))}
    >
      ${[...places, ...(at && !places.includes(at) ? [at] : [])].map((each) => option(each, key, value, picker.load))}
      <option value=${FREE} .selected=${live(value === FREE)}>${words.freeSpot}</option>
      ${
        aboardId(key) === undefined
          ? nothing
          : html`<option value=${UNKNOWN} .selected=${live(value === UNKNOWN)}>${words.notKnown}</option>`
      }
    </select>
    ${value === FREE && place ? spotFields(hull, kind, { at: place, measures, picked: picker.picked }) : nothing}
  `;
}

function option(station: Station, key: string, value: string, load: Load) {
  const id = aboardId(key);
  const by = id === undefined ? undefined : takenBy(load, id, { station });
  // Who has no place to give in exchange cannot take one.
  return html`<option
    value=${station.id}
    ?disabled=${by !== undefined && value === UNKNOWN}
    .selected=${live(station.id === value)}
  >
    ${by ? words.taken(dataName(station.label), whoIs(by)) : dataName(station.label)}
  </option>`;
}

function pickedPlace(hull: Hull, { kind, place }: Piece, value: string): Place {
  if (value === UNKNOWN) return undefined;
  const station = hull.stations.find(({ id }) => id === value);
  return station ? { station } : { at: freeSpot(hull, kind, place) };
}

function spotFields(
  hull: Hull,
  kind: PieceKind,
  { at, measures, picked }: { at: Position } & Pick<Picker, 'measures' | 'picked'>,
) {
  const { aft, fore } = reachFor(hull, kind);
  const side = sideAt(hull, at.x);
  const field = (axis: 'x' | 'y', label: string, [least, most]: readonly [number, number]) =>
    html`<homeleg-quantity-field
      label=${label}
      measure="length"
      required
      .min=${least}
      .max=${most}
      .measures=${measures}
      .value=${at[axis]}
      @quantity-typed=${(event: QuantityTyped) => {
        event.stopPropagation();
        const { value } = event.detail;
        if (value !== undefined) picked({ at: { ...at, [axis]: value } });
      }}
    ></homeleg-quantity-field>`;
  return html`<div class="spot">
    ${field('x', words.forward, [aft, fore])} ${field('y', words.starboard, [-side, side])}
    </div>
    <p class="hint">${words.spotHint}</p>`;
}
