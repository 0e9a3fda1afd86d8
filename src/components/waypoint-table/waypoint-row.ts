import { html, nothing } from 'lit';
import { live } from 'lit/directives/live.js';
import type { PlannedSpeed, Route } from '../../core/route/shapes.ts';
import { roleOf } from '../route-map/route-names.ts';
import { showPosition } from '../units/coordinates.ts';
import type { Measures, StoreKind } from '../units/measures.ts';
import type { LegSum } from './leg-sums.ts';
import { choiceOf, speedOptions } from './planned-speeds.ts';
import type { FieldName } from './row-edits.ts';
import { legFrom } from './typed-fields.ts';
import type { Typed } from './typed-texts.ts';
import { waypointWords as words } from './words.ts';

export type RowAct = 'up' | 'down' | 'insert' | 'delete';

/** What a row tells its table. */
export interface RowTells {
  typed(field: FieldName, text: string): void;
  entered(field: FieldName, text: string): void;
  speedChosen(choice: string): void;
  fillingUp(on: boolean): void;
  act(act: RowAct): void;
  toggled(): void;
}

export interface Row {
  readonly route: Route;
  readonly index: number;
  readonly out: LegSum | undefined;
  readonly home: LegSum | undefined;
  readonly store: StoreKind;
  readonly measures: Measures;
  /** Fields shown where there is no room for the whole table. */
  readonly open: boolean;
  typed(field: FieldName): Typed | undefined;
  readonly tells: RowTells;
}

export function tableHead() {
  const { number, name, place, fromBefore, stop, speed, nextLeg, actions } = words;
  const titles = [number, name, place, fromBefore, stop, speed, nextLeg, actions];
  return html`<thead role="rowgroup">
    <tr role="row">
      ${titles.map((title) => html`<th role="columnheader" scope="col">${title}</th>`)}
    </tr>
  </thead>`;
}

/** One waypoint: where it is, how long to stay, and the leg that starts there. A table row or a card, by the sheet. */
export function waypointRow(row: Row) {
  const { route, index, measures } = row;
  const { waypoints, shape } = route;
  const waypoint = waypoints[index]!;
  const number = index + 1;
  const last = index === waypoints.length - 1;
  const leg = legFrom(waypoints[index - 1], waypoint);
  const departs = !last || (shape === 'loop' && waypoints.length > 1);
  // Where the trip starts or ends nobody waits: that time is not part of it.
  const stops = index > 0 && !(last && shape === 'one-way');
  return html`
    <th role="rowheader" scope="row" class="number">
      <span class="count">${number}</span>
      <span>${roleOf(index, route) ?? nothing} <span class="where">${waypoint.name ?? showPosition(waypoint, measures.system)}</span></span>
    </th>
    <td role="cell" class="opener">
      <button
        type="button"
        class="quiet"
        data-field="open"
        aria-expanded=${row.open}
        aria-label=${row.open ? words.close(number) : words.open(number)}
        @click=${() => row.tells.toggled()}
      >
        ${row.open ? words.closeShort : words.openShort}
      </button>
    </td>
    <td role="cell" class="name">${textField(row, 'name', words.name, waypoint.name ?? '')}</td>
    <td role="cell" class="place">
      ${textField(row, 'place', words.place, showPosition(waypoint, measures.system))}
    </td>
    <td role="cell" class=${leg ? 'before' : 'before empty'}>
      ${
        leg
          ? html`${textField(row, 'bearing', words.bearing(index), measures.bearing(leg.trackDeg))}
            ${textField(row, 'distance', words.distance, measures.figure('distance', leg.distance), measures.unit('distance'))}`
          : nothing
      }
    </td>
    <td role="cell" class=${stops ? 'stop' : 'stop empty'}>
      ${stops ? textField(row, 'stop', words.stop, stopText(waypoint.stop, measures), measures.unit('time')) : nothing}
      ${stops && (waypoint.stop || waypoint.refill !== undefined) ? fillUpField(row, waypoint.refill) : nothing}
    </td>
    <td role="cell" class=${departs ? 'speed' : 'speed empty'}>${departs ? speedField(row, waypoint.speed) : nothing}</td>
    <td role="cell" class=${departs ? 'leg' : 'leg empty'}>${departs ? nextLeg(row) : nothing}</td>
    <td role="cell" class="acts">
      ${actButton(row, 'up', '↑', words.up(number), index > 0)} ${actButton(row, 'down', '↓', words.down(number), !last)}
      ${actButton(row, 'insert', words.insertShort, words.insert(number), true)}
      ${actButton(row, 'delete', words.deleteShort, words.delete(number), true)}
    </td>
  `;
}

function textField(row: Row, field: FieldName, label: string, shown: string, unit?: string) {
  const { index, tells } = row;
  const typed = row.typed(field);
  const problem = typed?.problem;
  const id = `${field}-${index}`;
  const figure = field !== 'name' && field !== 'place';
  return html`<div class="field ${field}">
    <label for=${id}><span class="label">${label}</span></label>
    <span class="box">
      <input
        id=${id}
        data-field=${field}
        aria-label=${words.of(label, index + 1)}
        .value=${live(typed?.text ?? shown)}
        inputmode=${figure ? 'decimal' : 'text'}
        autocomplete="off"
        spellcheck="false"
        maxlength="120"
        aria-invalid=${problem ? 'true' : nothing}
        aria-describedby=${problem ? `${id}-problem` : nothing}
        @input=${(event: Event) => tells.typed(field, textOf(event))}
        @change=${(event: Event) => tells.entered(field, textOf(event))}
      />
      ${unit ? html`<span class="unit" aria-hidden="true">${unit}</span>` : nothing}
    </span>
    ${problem ? html`<p id="${id}-problem" class="problem">${problem}</p>` : nothing}
  </div>`;
}

function speedField(row: Row, speed: PlannedSpeed | undefined) {
  const { index, measures, tells } = row;
  const own = typeof speed === 'number';
  const id = `choice-${index}`;
  const choice = choiceOf(speed);
  return html`<div class="field choice">
      <label for=${id}><span class="label">${words.speed}</span></label>
      <select
        id=${id}
        data-field="choice"
        aria-label=${words.of(words.speed, index + 1)}
        .value=${live(choice)}
        @change=${(event: Event) => tells.speedChosen(textOf(event))}
      >
        ${speedOptions(choice, true)}
      </select>
    </div>
    ${own ? textField(row, 'speed', words.ownSpeed, measures.figure('speed', speed), measures.unit('speed')) : nothing}`;
}

/** Filled up means full: how much was left is not known beforehand. */
function fillUpField({ index, store, tells }: Row, refill: number | undefined) {
  const label = words.fillUp(store);
  return html`<label class="fill-up">
    <input
      type="checkbox"
      data-field="refill"
      aria-label=${words.of(label, index + 1)}
      .checked=${live(refill !== undefined)}
      @change=${(event: Event) => tells.fillingUp((event.currentTarget as HTMLInputElement).checked)}
    />
    <span>${label}</span>
  </label>`;
}

function nextLeg(row: Row) {
  const { route, index, out, home, measures } = row;
  const next = (index + 1) % route.waypoints.length;
  const { distance } = legFrom(route.waypoints[index], route.waypoints[next]!) ?? { distance: Number.NaN };
  const figures = out ? sumText(out, row) : measures.show('distance', distance);
  return html`<span class="label">${words.nextLeg}</span>
    <p><b>${words.legTo(next + 1)}</b> ${figures}</p>
    ${home ? html`<p><b>${words.legHome}</b> ${sumText(home, row)}</p>` : nothing}`;
}

function sumText({ distance, time, use }: LegSum, { measures, store }: Row): string {
  return `${measures.show('distance', distance)}, ${measures.time(time)}, ${measures.show('amount', use, store)}`;
}

/** Kept focusable at the ends of the table, where a row moved there has the focus on it. */
function actButton({ tells }: Row, act: RowAct, sign: string, label: string, possible: boolean) {
  return html`<button
    type="button"
    data-field=${act}
    aria-label=${label}
    aria-disabled=${possible ? nothing : 'true'}
    @click=${() => possible && tells.act(act)}
  >
    ${sign}
  </button>`;
}

function stopText(stop: number | undefined, measures: Measures): string {
  return stop ? measures.figure('time', stop) : '';
}

function textOf(event: Event): string {
  return (event.currentTarget as HTMLInputElement | HTMLSelectElement).value;
}
