import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import { guard } from 'lit/directives/guard.js';
import { live } from 'lit/directives/live.js';
import { repeat } from 'lit/directives/repeat.js';
import { destination } from '../../core/route/distance.ts';
import type { LatLon, PlannedSpeed, Route, Waypoint } from '../../core/route/shapes.ts';
import type { LegPlan } from '../../core/trip/shapes.ts';
import { define } from '../define.ts';
import { RouteHistory } from '../route-map/route-history.ts';
import type { RouteEdited } from '../route-map/route-map.ts';
import {
  addedAtEnd,
  changedAt,
  deletedAt,
  type EditKind,
  insertedAt,
  movedTo,
  reordered,
  reversed,
} from '../route-map/waypoint-edits.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures, StoreKind } from '../units/measures.ts';
import { type LegSum, legSums, sailedAlong } from './leg-sums.ts';
import { carryKeys } from './row-keys.ts';
import {
  legFrom,
  placeForRow,
  type Read,
  readBearing,
  readDistance,
  readPlace,
  readSpeed,
  readStop,
} from './typed-fields.ts';
import { type FieldName, type RowAct, speedOptions, type Typed, waypointRow } from './waypoint-row.ts';
import { waypointTableStyles } from './waypoint-table.styles.ts';
import { tableWords as words } from './words.ts';
import '../field/choice-field.ts';

export type RouteSettingsEdited = CustomEvent<{ shape?: Route['shape']; speed?: PlannedSpeed }>;

const NO_ROUTE: Route = { shape: 'out-and-home', waypoints: [], speed: 'best' };
const SHAPES = Object.entries(words.shapes).map(([value, label]) => ({ value, label }));
/** Rows drawn at once; a longer route is shown in pages, so that a track of thousands stays quick. */
const PAGE = 25;
/** A speed to begin with where none is known, m/s: 5 knots. */
const SOME_SPEED = 2.572;

/** Fields of the form that adds a waypoint, and of the route's own speed. */
type LooseField = 'add-place' | 'add-bearing' | 'add-distance' | 'route-speed';

/**
 * @summary The route as a table: everything the map does, without it. Rows become cards where there is no room.
 * @fires route-edited - the waypoints as the user made them
 * @fires route-settings-edited - another shape of the trip or planned speed
 */
export class WaypointTable extends LitElement {
  static override styles = [tokens, controls, waypointTableStyles];

  @property({ attribute: false }) route: Route | undefined;
  /** Stretches of the plan for `route`. */
  @property({ attribute: false }) legs: readonly LegPlan[] | undefined;
  @property() store: StoreKind = 'fuel';
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  /** The last edit made here, until a route is given from outside. */
  @state() private draft: readonly Waypoint[] | undefined;
  @state() private page = 0;

  #history = new RouteHistory();
  /** Keys of the rows, and the waypoints they belong to. */
  #keys: number[] = [];
  /** Rows whose fields are shown where the table has no room. */
  #open = new Set<number>();
  #keyed: readonly Waypoint[] = [];
  #lastKey = 0;
  /** By row key and field name, or by the name of a loose field. */
  #typed = new Map<string, Typed>();
  /** Counts changes of what is typed in a row, so that only that row is drawn again. */
  #typings = new Map<number, number>();
  #sums = new Map<number, LegSum>();
  /** What gets the focus once it is drawn. */
  #focusNext: { index: number; field: string } | undefined;

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has('route')) {
      this.draft = undefined;
      if (this.route) this.#history.follow(this.route.waypoints);
    }
    if (changed.has('legs')) this.#sums = legSums(this.legs ?? []);
    const waypoints = this.#waypoints;
    if (waypoints !== this.#keyed) {
      this.#keys = carryKeys(this.#keyed, this.#keys, waypoints, () => ++this.#lastKey);
      this.#keyed = waypoints;
    }
    this.page = Math.max(0, Math.min(this.page, this.#pages - 1));
  }

  protected override updated(): void {
    const next = this.#focusNext;
    if (!next) return;
    const key = this.#keys[next.index];
    if (key !== undefined && !this.#isOpen(key)) {
      // What gets the focus has to be seen; the next drawing brings it.
      this.#toggle(key);
      return;
    }
    this.#focusNext = undefined;
    const row = this.renderRoot.querySelector(`[data-row="${next.index}"]`);
    const field = row?.querySelector<HTMLElement>(`[data-field="${next.field}"]`);
    field?.focus();
    if (field instanceof HTMLInputElement) field.select();
  }

  override render() {
    const route = this.#route;
    const { waypoints } = route;
    const first = this.page * PAGE;
    const shown = waypoints.slice(first, first + PAGE);
    return html`
      ${this.#settings(route)}
      <div class="tools" role="group" aria-label=${words.tools}>
        ${this.#tool(words.undo, this.#history.canUndo, () => this.#stepped('undone'))}
        ${this.#tool(words.redo, this.#history.canRedo, () => this.#stepped('redone'))}
        ${this.#tool(words.reverse, waypoints.length > 1, () => this.#edit(reversed(waypoints), 'reversed'))}
      </div>
      ${
        shown.length === 0
          ? html`<p class="hint">${words.empty}</p>`
          : html`<table role="table">
              <caption class="sr">
                ${words.caption}
              </caption>
              ${this.#head()}
              <tbody role="rowgroup">
                ${repeat(
                  shown,
                  (_, i) => this.#keys[first + i],
                  (_, i) => this.#row(route, first + i),
                )}
              </tbody>
            </table>`
      }
      ${this.#pageButtons(first, shown.length)} ${this.#addForm(waypoints)}
    `;
  }

  #settings({ shape, speed }: Route) {
    const own = typeof speed === 'number';
    const choice = own ? 'own' : speed;
    return html`<div class="settings" role="group" aria-label=${words.settings}>
      <homeleg-choice-field
        .label=${words.shape}
        .choices=${SHAPES}
        .value=${shape}
        @choice-made=${(event: CustomEvent<{ value: Route['shape'] }>) => this.#set({ shape: event.detail.value })}
      ></homeleg-choice-field>
      <div class="planned">
        <div class="field">
          <label for="route-choice">${words.routeSpeed}</label>
          <select id="route-choice" .value=${live(choice)} @change=${this.#routeSpeedChosen}>
            ${speedOptions(choice, false)}
          </select>
        </div>
        ${
          own
            ? this.#looseField('route-speed', words.ownSpeed, {
                shown: this.measures.figure('speed', speed),
                unit: this.measures.unit('speed'),
              })
            : nothing
        }
      </div>
    </div>`;
  }

  #head() {
    const titles = [
      words.number,
      words.name,
      words.place,
      words.fromBefore,
      words.stop,
      words.speed,
      words.nextLeg,
      words.actions,
    ];
    return html`<thead role="rowgroup">
      <tr role="row">
        ${titles.map((title) => html`<th role="columnheader" scope="col">${title}</th>`)}
      </tr>
    </thead>`;
  }

  #row(route: Route, index: number) {
    const { waypoints, shape } = route;
    const { measures, store } = this;
    const key = this.#keys[index]!;
    const sailed = sailedAlong(index, route);
    const [out, home] = [sailed?.out, sailed?.home].map((leg) => (leg === undefined ? undefined : this.#sums.get(leg)));
    const waypoint = waypoints[index];
    const around = [waypoints[index - 1], waypoint, waypoints[(index + 1) % waypoints.length]];
    const figures = [out, home].flatMap((sum) => [sum?.distance, sum?.time, sum?.use]);
    const row = () =>
      waypointRow({
        route,
        index,
        out,
        home,
        store,
        measures,
        open: this.#isOpen(key),
        typed: (field) => this.#typed.get(`${key} ${field}`),
        tells: {
          typed: (field, text) => this.#typed.set(`${key} ${field}`, { text }),
          entered: (field, text) => this.#entered(index, field, text),
          speedChosen: (choice) => this.#speedChosen(index, choice),
          act: (act) => this.#act(index, act),
          toggled: () => this.#toggle(key),
        },
      });
    const seen = [
      ...around,
      index,
      waypoints.length,
      shape,
      measures,
      store,
      ...figures,
      this.#typings.get(key),
      this.#isOpen(key),
    ];
    return html`<tr role="row" data-row=${index} class=${this.#isOpen(key) ? 'open' : 'closed'}>
      ${guard(seen, row)}
    </tr>`;
  }

  /** A row with something wrong in it stays open. */
  #isOpen(key: number): boolean {
    if (this.#open.has(key)) return true;
    for (const [name, typed] of this.#typed) if (typed.problem && name.startsWith(`${key} `)) return true;
    return false;
  }

  #toggle(key: number): void {
    if (!this.#open.delete(key)) this.#open.add(key);
    this.requestUpdate();
  }

  #pageButtons(first: number, count: number) {
    const all = this.#waypoints.length;
    if (this.#pages < 2) return nothing;
    const turn = (by: number) => {
      this.page += by;
    };
    return html`<nav class="pages" aria-label=${words.pages}>
      ${this.#tool(words.previous, this.page > 0, () => turn(-1))}
      <span role="status">${words.shown(first + 1, first + count, all)}</span>
      ${this.#tool(words.next, this.page < this.#pages - 1, () => turn(1))}
    </nav>`;
  }

  #addForm(waypoints: readonly Waypoint[]) {
    const distance = { unit: this.measures.unit('distance') };
    return html`<form class="add" novalidate @submit=${this.#added}>
      <p class="label">${waypoints.length === 0 ? words.addStart : words.addNext}</p>
      ${this.#looseField('add-place', words.addPlace)}
      ${
        waypoints.length === 0
          ? nothing
          : html`${this.#looseField('add-bearing', words.addBearing, { unit: '°' })}
            ${this.#looseField('add-distance', words.addDistance, distance)}`
      }
      <button type="submit">${words.add}</button>
    </form>`;
  }

  #looseField(name: LooseField, label: string, { shown = '', unit = '' } = {}) {
    const typed = this.#typed.get(name);
    const problem = typed?.problem;
    const read = (event: Event) => (event.currentTarget as HTMLInputElement).value;
    return html`<div class="field ${name}">
      <label for=${name}>${label}</label>
      <span class="box">
        <input
          id=${name}
          .value=${live(typed?.text ?? shown)}
          inputmode=${name === 'add-place' ? 'text' : 'decimal'}
          autocomplete="off"
          spellcheck="false"
          maxlength="120"
          aria-invalid=${problem ? 'true' : nothing}
          aria-describedby=${problem ? `${name}-problem` : nothing}
          @input=${(event: Event) => this.#typed.set(name, { text: read(event) })}
          @change=${name === 'route-speed' ? (event: Event) => this.#routeSpeedEntered(read(event)) : nothing}
        />
        ${unit ? html`<span class="unit" aria-hidden="true">${unit}</span>` : nothing}
      </span>
      ${problem ? html`<p id="${name}-problem" class="problem">${problem}</p>` : nothing}
    </div>`;
  }

  /** Kept focusable while it can do nothing: undo pressed to the end must not lose the place. */
  #tool(label: string, possible: boolean, act: () => void) {
    return html`<button type="button" aria-disabled=${possible ? nothing : 'true'} @click=${() => possible && act()}>
      ${label}
    </button>`;
  }

  get #waypoints(): readonly Waypoint[] {
    return this.draft ?? this.route?.waypoints ?? NO_ROUTE.waypoints;
  }

  get #route(): Route {
    return { ...(this.route ?? NO_ROUTE), waypoints: this.#waypoints };
  }

  get #pages(): number {
    return Math.ceil(this.#waypoints.length / PAGE);
  }

  #entered(index: number, field: FieldName, text: string): void {
    const { measures } = this;
    const waypoints = this.#waypoints;
    const waypoint = waypoints[index]!;
    const change = (fields: Partial<Waypoint>) => changedAt(waypoints, index, fields);
    switch (field) {
      case 'name':
        this.#take(index, field, { ok: true, value: change({ name: text.trim() || undefined }) }, 'changed');
        break;
      case 'stop':
        this.#take(
          index,
          field,
          mapped(readStop(text, measures), (stop) => change({ stop })),
          'changed',
        );
        break;
      case 'speed':
        this.#take(
          index,
          field,
          mapped(readSpeed(text, measures), (speed) => change({ speed })),
          'changed',
        );
        break;
      case 'place':
        this.#take(
          index,
          field,
          mapped(readPlace(text), (at) => movedTo(waypoints, index, at)),
          'moved',
        );
        break;
      case 'bearing':
      case 'distance': {
        const before = waypoints[index - 1];
        const leg = legFrom(before, waypoint);
        if (!before || !leg) return;
        const read = field === 'bearing' ? readBearing(text, measures) : readDistance(text, measures);
        const to = (value: number): LatLon =>
          field === 'bearing' ? destination(before, value, leg.distance) : destination(before, leg.trackDeg, value);
        this.#take(
          index,
          field,
          mapped(read, (value) => movedTo(waypoints, index, to(value))),
          'moved',
        );
        break;
      }
      default:
        field satisfies never;
    }
  }

  /** Makes the edit that a field stands for; or keeps its text, with what is wrong beside it. */
  #take(index: number, field: FieldName, read: Read<Waypoint[]>, what: EditKind): void {
    const key = this.#keys[index]!;
    const name = `${key} ${field}`;
    if (read.ok) this.#typed.delete(name);
    else this.#typed.set(name, { text: this.#typed.get(name)?.text ?? '', problem: read.problem });
    this.#typings.set(key, (this.#typings.get(key) ?? 0) + 1);
    this.requestUpdate();
    if (read.ok) this.#edit(read.value, what, index);
  }

  #speedChosen(index: number, choice: string): void {
    const own = choice === 'own' ? (this.#sums.get(index)?.speed ?? SOME_SPEED) : undefined;
    const speed = own === undefined ? plannedSpeed(choice) : this.#rounded(own);
    this.#focusNext = { index, field: choice === 'own' ? 'speed' : 'choice' };
    this.#edit(changedAt(this.#waypoints, index, { speed }), 'changed', index);
  }

  #act(index: number, act: RowAct): void {
    const waypoints = this.#waypoints;
    switch (act) {
      case 'up':
      case 'down': {
        const by = act === 'up' ? -1 : 1;
        this.#goTo(index + by, act);
        this.#edit(reordered(waypoints, index, by), 'reordered', index + by);
        break;
      }
      case 'insert': {
        const at = placeForRow(this.#route, index + 1, this.measures);
        if (!at) return;
        this.#goTo(index + 1, 'place');
        this.#edit(insertedAt(waypoints, index + 1, at), 'inserted', index + 1);
        break;
      }
      case 'delete':
        this.#goTo(Math.min(index, waypoints.length - 2), 'delete');
        this.#edit(deletedAt(waypoints, index), 'deleted', index);
        if (waypoints.length === 1) this.#focusAddForm();
        break;
      default:
        act satisfies never;
    }
  }

  #added = (event: Event): void => {
    event.preventDefault();
    const waypoints = this.#waypoints;
    const text = (name: LooseField) => this.#typed.get(name)?.text ?? '';
    const last = waypoints.at(-1);
    const byBearing = last && text('add-place').trim() === '' && text('add-bearing') + text('add-distance') !== '';
    const reads: [LooseField, Read<number> | Read<LatLon>][] = byBearing
      ? [
          ['add-bearing', readBearing(text('add-bearing'), this.measures)],
          ['add-distance', readDistance(text('add-distance'), this.measures)],
        ]
      : [['add-place', readPlace(text('add-place'))]];
    for (const [name, read] of reads)
      this.#typed.set(name, { text: text(name), ...(!read.ok && { problem: read.problem }) });
    this.requestUpdate();
    const values = reads.flatMap(([, read]) => (read.ok ? [read.value] : []));
    if (values.length < reads.length) {
      this.#focusAddForm();
      return;
    }
    const [first, second] = values;
    const at = typeof first === 'number' ? destination(last!, first, second as number) : (first as LatLon);
    for (const name of ['add-place', 'add-bearing', 'add-distance']) this.#typed.delete(name);
    this.page = Math.floor(waypoints.length / PAGE);
    this.#edit(addedAtEnd(waypoints, at), 'added', waypoints.length);
    this.#focusAddForm(byBearing ? 'add-bearing' : 'add-place');
  };

  /** After the next drawing: the first field with a problem, or the one named. */
  async #focusAddForm(name: LooseField = 'add-place'): Promise<void> {
    await this.updateComplete;
    const wrong = this.renderRoot.querySelector<HTMLElement>('.add [aria-invalid]');
    (wrong ?? this.renderRoot.querySelector<HTMLElement>(`#${name}`))?.focus();
  }

  #goTo(index: number, field: string): void {
    this.page = Math.max(0, Math.floor(index / PAGE));
    this.#focusNext = { index, field };
  }

  #routeSpeedChosen = (event: Event): void => {
    const choice = (event.currentTarget as HTMLSelectElement).value;
    this.#typed.delete('route-speed');
    const speed = plannedSpeed(choice) ?? this.#rounded(this.#sums.get(0)?.speed ?? SOME_SPEED);
    this.#set({ speed });
  };

  #routeSpeedEntered(text: string): void {
    const read = readSpeed(text, this.measures);
    if (read.ok) this.#typed.delete('route-speed');
    else this.#typed.set('route-speed', { text, problem: read.problem });
    this.requestUpdate();
    if (read.ok) this.#set({ speed: read.value });
  }

  /** To the nearest half of the unit shown, and not nothing. */
  #rounded(speed: number): number {
    const shown = Math.max(0.5, Math.round(this.measures.fromSi('speed', speed) * 2) / 2);
    return this.measures.toSi('speed', shown);
  }

  #stepped(what: 'undone' | 'redone'): void {
    const waypoints = what === 'undone' ? this.#history.undo() : this.#history.redo();
    if (waypoints) this.#edit(waypoints, what);
  }

  #edit(waypoints: readonly Waypoint[], what: EditKind, index?: number): void {
    if (!this.#history.present) this.#history.follow(this.route?.waypoints ?? []);
    this.#history.follow(waypoints);
    this.draft = waypoints;
    // Figures of legs belong to the plan before this edit.
    this.#sums = new Map();
    const detail = { waypoints, live: false, what, ...(index !== undefined && { index }) };
    this.dispatchEvent(
      new CustomEvent('route-edited', { detail, bubbles: true, composed: true }) satisfies RouteEdited,
    );
  }

  #set(detail: RouteSettingsEdited['detail']): void {
    this.dispatchEvent(
      new CustomEvent('route-settings-edited', { detail, bubbles: true, composed: true }) satisfies RouteSettingsEdited,
    );
  }
}

function mapped<T, U>(read: Read<T>, to: (value: T) => U): Read<U> {
  return read.ok ? { ok: true, value: to(read.value) } : read;
}

/** Undefined for "as planned" and for a speed of one's own. */
function plannedSpeed(choice: string): PlannedSpeed | undefined {
  return choice === 'best' || choice === 'best-planing' ? choice : undefined;
}

define('homeleg-waypoint-table', WaypointTable);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-waypoint-table': WaypointTable;
  }
  interface HTMLElementEventMap {
    'route-settings-edited': RouteSettingsEdited;
  }
}
