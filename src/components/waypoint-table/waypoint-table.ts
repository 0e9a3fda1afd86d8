import { html, nothing, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import { guard } from 'lit/directives/guard.js';
import { repeat } from 'lit/directives/repeat.js';
import type { Route, WatersFile, Waypoint } from '../../core/route/shapes.ts';
import type { LegPlan } from '../../core/trip/shapes.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { toolButton } from '../route-map/map-controls.ts';
import { RouteHistory } from '../route-map/route-history.ts';
import type { RouteEdited } from '../route-map/route-map.ts';
import {
  addedAtEnd,
  changedAt,
  deletedAt,
  type EditKind,
  insertedAt,
  reordered,
  reversed,
} from '../route-map/waypoint-edits.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures, StoreKind } from '../units/measures.ts';
import type { PlaceAdded } from './add-waypoint.ts';
import { type LegSum, legSums, sailedAlong } from './leg-sums.ts';
import { speedOf } from './planned-speeds.ts';
import { type FieldName, rowEdit } from './row-edits.ts';
import { carryKeys } from './row-keys.ts';
import { tableFieldStyles } from './table-field.styles.ts';
import { placeForRow } from './typed-fields.ts';
import { TypedTexts } from './typed-texts.ts';
import { type RowAct, tableHead, waypointRow } from './waypoint-row.ts';
import { waypointTableStyles } from './waypoint-table.styles.ts';
import { waypointWords as words } from './words.ts';
import './add-waypoint.ts';
import './round-help.ts';
import './route-settings.ts';

export type { RouteSettingsEdited } from './route-settings.ts';

const NO_ROUTE: Route = { shape: 'out-and-home', waypoints: [], speed: 'best' };
/** Rows drawn at once; a longer route is shown in pages, so that a track of thousands stays quick. */
const PAGE = 25;

/**
 * @summary The route as a table: everything the map does, without it. Rows become cards where there is no room.
 * @fires route-edited - the waypoints as the user made them
 * @fires route-settings-edited - another shape of the trip or planned speed
 */
export class WaypointTable extends SpeakingElement {
  static override styles = [tokens, controls, tableFieldStyles, waypointTableStyles];

  @property({ attribute: false }) route: Route | undefined;
  /** Stretches of the plan for `route`. */
  @property({ attribute: false }) legs: readonly LegPlan[] | undefined;
  /** What a route can be taken round. */
  @property({ attribute: false }) waters: WatersFile | undefined;
  @property() departure: string | undefined;
  /** Counts trips: another one makes a fresh start, with nothing to undo. */
  @property({ type: Number }) fresh = 0;
  @property() store: StoreKind = 'fuel';
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  /** The last edit made here, until a route is given from outside. */
  @state() private draft: readonly Waypoint[] | undefined;
  @state() private page = 0;

  #history = new RouteHistory();
  /** Keys of the rows, and the waypoints they belong to. */
  #keys: number[] = [];
  #keyed: readonly Waypoint[] = [];
  #lastKey = 0;
  /** Rows whose fields are shown where the table has no room. */
  #opened = new Set<number>();
  #texts = new TypedTexts();
  #sums = new Map<number, LegSum>();
  /** What gets the focus once it is drawn. */
  #focusNext: { index: number; field: string } | undefined;

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has('fresh')) this.#history = new RouteHistory();
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
    const next = this.#focusNext && this.#keys[this.#focusNext.index];
    if (next !== undefined) this.#opened.add(next);
  }

  protected override updated(): void {
    const next = this.#focusNext;
    if (!next) return;
    this.#focusNext = undefined;
    const row = this.renderRoot.querySelector(`[data-row="${next.index}"]`);
    const field = row?.querySelector<HTMLElement>(`[data-field="${next.field}"]`);
    field?.focus();
    if (field instanceof HTMLInputElement) field.select();
  }

  override render() {
    const { measures } = this;
    const route = this.#route;
    const { waypoints } = route;
    const first = this.page * PAGE;
    const shown = waypoints.slice(first, first + PAGE);
    return html`
      <homeleg-route-settings
        .shape=${route.shape}
        .speed=${route.speed}
        .known=${this.#sums.get(0)?.speed}
        .measures=${measures}
      ></homeleg-route-settings>
      <div class="tools" role="group" aria-label=${words.tools}>
        ${toolButton(words.undo, this.#history.canUndo, () => this.#stepped('undone'))}
        ${toolButton(words.redo, this.#history.canRedo, () => this.#stepped('redone'))}
        ${toolButton(words.reverse, waypoints.length > 1, () => this.#edit(reversed(waypoints), 'reversed'))}
      </div>
      <homeleg-round-help
        .route=${route}
        .waters=${this.waters}
        .departure=${this.departure}
        .measures=${measures}
        @route-edited=${this.#roundMade}
      ></homeleg-round-help>
      ${shown.length === 0 ? html`<p class="hint">${words.empty}</p>` : this.#table(route, first, shown)}
      ${this.#pageButtons(first, shown.length)}
      <homeleg-add-waypoint
        .last=${waypoints.at(-1)}
        .measures=${measures}
        @place-added=${this.#added}
      ></homeleg-add-waypoint>
    `;
  }

  #table(route: Route, first: number, shown: readonly Waypoint[]) {
    return html`<table role="table">
      <caption class="sr">
        ${words.caption}
      </caption>
      ${tableHead()}
      <tbody role="rowgroup">
        ${repeat(
          shown,
          (_, i) => this.#keys[first + i],
          (_, i) => this.#row(route, first + i),
        )}
      </tbody>
    </table>`;
  }

  #row(route: Route, index: number) {
    const { waypoints, shape } = route;
    const { measures, store } = this;
    const key = this.#keys[index]!;
    // A row with something wrong in it stays open.
    const open = this.#opened.has(key) || this.#texts.wrong(key);
    const sailed = sailedAlong(index, route);
    const [out, home] = [sailed?.out, sailed?.home].map((leg) => (leg === undefined ? undefined : this.#sums.get(leg)));
    const around = [waypoints[index - 1], waypoints[index], waypoints[(index + 1) % waypoints.length]];
    const figures = [out, home].flatMap((sum) => [sum?.distance, sum?.time, sum?.use]);
    const place = [index, waypoints.length, shape, measures, store, open];
    const row = () =>
      waypointRow({
        route,
        index,
        out,
        home,
        store,
        measures,
        open,
        typed: (field) => this.#texts.get(key, field),
        tells: {
          typed: (field, text) => this.#texts.typed(key, field, text),
          entered: (field, text) => this.#entered(index, field, text),
          speedChosen: (choice) => this.#speedChosen(index, choice),
          fillingUp: (on) =>
            this.#edit(changedAt(this.#waypoints, index, { refill: on ? 1 : undefined }), 'changed', index),
          act: (act) => this.#act(index, act),
          toggled: () => this.#toggled(key),
        },
      });
    // While a waypoint is dragged on the map, only the rows it touches are drawn again.
    const seen = [...around, ...place, ...figures, this.#texts.version(key)];
    return html`<tr role="row" data-row=${index} class=${open ? 'open' : 'closed'}>
      ${guard(seen, row)}
    </tr>`;
  }

  #pageButtons(first: number, count: number) {
    if (this.#pages < 2) return nothing;
    const turn = (by: number) => {
      this.page += by;
    };
    return html`<nav class="pages" aria-label=${words.pages}>
      ${toolButton(words.previous, this.page > 0, () => turn(-1))}
      <span role="status">${words.shown(first + 1, first + count, this.#waypoints.length)}</span>
      ${toolButton(words.next, this.page < this.#pages - 1, () => turn(1))}
    </nav>`;
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

  #toggled(key: number): void {
    if (!this.#opened.delete(key)) this.#opened.add(key);
    this.requestUpdate();
  }

  /** Makes the edit that a field stands for; or keeps its text, with what is wrong beside it. */
  #entered(index: number, field: FieldName, text: string): void {
    const key = this.#keys[index]!;
    const read = rowEdit(this.#waypoints, { index, field, text }, this.measures);
    if (read.ok) this.#texts.accepted(key, field);
    else this.#texts.refused(key, field, read.problem);
    this.requestUpdate();
    if (read.ok) this.#edit(read.value.waypoints, read.value.what, index);
  }

  #speedChosen(index: number, choice: string): void {
    const speed = speedOf(choice, this.#sums.get(index)?.speed, this.measures);
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
        if (waypoints.length === 1) this.renderRoot.querySelector('homeleg-add-waypoint')?.focus();
        break;
      default:
        act satisfies never;
    }
  }

  #added = ({ detail: { at } }: PlaceAdded): void => {
    const waypoints = this.#waypoints;
    this.page = Math.floor(waypoints.length / PAGE);
    this.#edit(addedAtEnd(waypoints, at), 'added', waypoints.length);
  };

  #roundMade = (event: RouteEdited): void => {
    if (event.target === this) return;
    event.stopPropagation();
    this.#edit(event.detail.waypoints, 'inserted');
  };

  /** Takes legs, as they are sailed, round what they cross, in the words and with the distance of the tool here. */
  takeRound(legs: readonly number[] | undefined): void {
    const tool = this.renderRoot.querySelector('homeleg-round-help');
    tool?.scrollIntoView({ block: 'center' });
    void tool?.takeRound(legs);
  }

  #goTo(index: number, field: string): void {
    this.page = Math.max(0, Math.floor(index / PAGE));
    this.#focusNext = { index, field };
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
    const told = new CustomEvent('route-edited', { detail, bubbles: true, composed: true });
    this.dispatchEvent(told satisfies RouteEdited);
  }
}

define('homeleg-waypoint-table', WaypointTable);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-waypoint-table': WaypointTable;
  }
}
