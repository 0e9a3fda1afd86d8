import type { Map as LeafletMap } from 'leaflet';
import { html, nothing, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { LatLon, Route, WatersFile, Waypoint } from '../../core/route/shapes.ts';
import type { Waters } from '../../core/route/waters.ts';
import type { LegPlan, Trip, TurnBack } from '../../core/trip/shapes.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { turn } from '../turn.ts';
import { parsePosition } from '../units/coordinates.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { drawingStyles } from './drawing.styles.ts';
import { HowFar } from './how-far.ts';
import { leafletStyles } from './leaflet.styles.ts';
import {
  arrowButtons,
  attribution,
  hints,
  selectionButtons,
  streetMapButton,
  toolButton,
  zoomButtons,
} from './map-controls.ts';
import { mapKeyStyles } from './map-key.styles.ts';
import { mapKey } from './map-key.ts';
import { ARROW_KEYS, undoKey } from './map-keys.ts';
import { type Layers, layersOn } from './map-layers.ts';
import { type Leaflet, MapLife } from './map-life.ts';
import { MapView, showAll, type ViewWishes } from './map-view.ts';
import { PictureKeeper } from './picture-keeper.ts';
import { markLive, RouteHistory } from './route-history.ts';
import type { Drawing, RouteKeeper } from './route-keeper.ts';
import type { Hazard } from './route-lines.ts';
import { routeMapStyles } from './route-map.styles.ts';
import { closes, roleOf, waypointNames } from './route-names.ts';
import { scaleBar } from './scale-bar.ts';
import { tileTemplate } from './tile-template.ts';
import { STREET_MAP, savesData, type TileState } from './tiles.ts';
import { type EditKind, type RouteEdit, reversed } from './waypoint-edits.ts';
import { WindAndStream } from './wind-and-stream.ts';
import { mapWords as words } from './words.ts';

export type RouteEdited = CustomEvent<RouteEdit>;

const NO_ROUTE: Route = { shape: 'out-and-home', waypoints: [], speed: 'best' };
/** CSS pixels by which arrows move the map, and arrow buttons a waypoint. */
const PAN = 90;
const NUDGE = 8;
/** More stretches than this are not drawn while a waypoint is being dragged. */
const LIVE_LEGS = 200;
/**
 * @summary The route on a map, and drawing it there by pointer, by taps alone, or by keys. Works without a network.
 * @fires route-edited - the waypoints as the user made them; `live` while the edit is still going on
 */
export class RouteMap extends SpeakingElement {
  static override styles = [tokens, controls, leafletStyles, routeMapStyles, drawingStyles, mapKeyStyles];

  @property({ attribute: false }) route: Route | undefined;
  @property({ attribute: false }) waters: WatersFile | undefined;
  /** Stretches of the plan for `route`. */
  @property({ attribute: false }) legs: readonly LegPlan[] | undefined;
  /** Counts trips: another one makes a fresh start, with nothing to undo. */
  @property({ type: Number }) fresh = 0;
  /** What is planned, and on which waters: asked how far it goes from here. */
  @property({ attribute: false }) trip: Trip | undefined;
  @property({ attribute: false }) chart: Waters | undefined;
  @property({ attribute: false }) turnBack: TurnBack | undefined;
  @property({ attribute: false }) hazards: readonly Hazard[] = [];
  @property({ attribute: false }) measures: Measures = NAUTICAL;
  /** Address template of map pictures with {z}, {x} and {y}: shown at once. "none" takes the choice away. */
  @property() tiles = '';
  /** Whose pictures they are; plain text. */
  @property({ attribute: 'tiles-attribution' }) tilesAttribution = '';
  /** Middle of the first view, "46.0, -32.0"; without it the route decides, then the waters. */
  @property() center = '';
  @property({ type: Number }) zoom: number | undefined;

  /** Undefined until the user pressed "Street map". */
  @state() private streetMapPressed: boolean | undefined;
  @state() private tileState: TileState = 'none';
  @state() private selected: number | undefined;
  @state() private thinned = false;
  /** The last edit made here, until a route is given from outside. */
  @state() private draft: readonly Waypoint[] | undefined;

  #layers: Layers | undefined;
  #history = new RouteHistory();
  #view = new MapView();
  #howFar = new HowFar(this);
  #flows = new WindAndStream(this);
  #keeps = new PictureKeeper(this);
  #drawing: Drawing | undefined;
  #drawn: { waypoints: readonly Waypoint[]; closed: boolean } | undefined;
  /** `legs` are those of the route before the last edit. */
  #legsStale = false;

  #keeper: RouteKeeper = {
    drawing: () => this.#drawingNow(),
    edited: (edit) => this.#edited(edit),
    // Told as one more live edit, so that nothing counts as changed.
    editDropped: () => {
      const waypoints = this.#history.present ?? this.route?.waypoints ?? [];
      this.#edited({ waypoints, live: true, what: 'moved' });
      this.#drawing = undefined;
    },
    selected: (index) => this.#select(index),
    thinned: (some) => {
      this.thinned = some;
    },
  };

  #life = new MapLife(this, () => this.renderRoot.querySelector<HTMLElement>('#frame'), {
    begin: (map, leaflet) => this.#begin(map, leaflet),
    end: () => {
      this.#layers?.editor.end();
      this.#layers?.waters.end();
      this.#layers = undefined;
    },
  });

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has('legs')) this.#legsStale = false;
    if (changed.has('fresh')) this.#history = new RouteHistory();
    const given = changed.has('route') && !this.#layers?.editor.busy;
    if (given) {
      this.draft = undefined;
      if (this.route) this.#history.follow(this.route.waypoints);
    }
    if (given || changed.has('measures')) this.#drawing = undefined;
    if (changed.has('tiles') || changed.has('streetMapPressed')) this.tileState = 'none';
    if (this.selected !== undefined && this.selected >= this.#waypoints.length) this.#select(undefined);
  }

  protected override updated(changed: PropertyValues): void {
    const layers = this.#layers;
    if (!layers) return;
    const has = (...names: string[]) => names.some((name) => changed.has(name));
    if (has('waters', 'measures')) layers.waters.draw(this.waters, this.measures);
    if (has('legs', 'draft', 'trip')) this.#drawLegs(layers);
    if (has('turnBack', 'hazards')) layers.lines.drawMarks(this.turnBack, this.hazards);
    layers.tiles.show(this.#tileUrl, this.#keeps.on);
    if (has('route', 'measures', 'selected')) this.#drawRoute(layers);
    if (has('center', 'zoom')) this.#view.begin(layers.map, { ...this.#wishes, last: undefined });
    else if (has('route', 'waters') && !layers.editor.busy) this.#view.follow(layers.map, this.#wishes);
  }

  override render() {
    const { failed } = this.#life;
    const { selected } = this;
    const waypoints = this.#waypoints;
    const map = this.#layers?.map;
    return html`
      <div class="tools" role="group" aria-label=${words.tools} @keydown=${this.#undoKeys}>
        ${toolButton(words.undo, this.#history.canUndo, () => this.#stepped('undone'))}
        ${toolButton(words.redo, this.#history.canRedo, () => this.#stepped('redone'))}
        ${toolButton(words.reverse, waypoints.length > 1, () => this.#changed(reversed(waypoints), 'reversed'))}
        ${failed ? nothing : toolButton(words.fit, waypoints.length > 0, () => map && showAll(map, waypoints))}
        ${this.#howFar.button()}
      </div>
      <div class="picture" ?data-failed=${failed} data-pictures=${this.tileState}>
        <div
          id="frame"
          role="region"
          aria-label=${words.map}
          aria-describedby="map-keys"
          tabindex="0"
          @keydown=${this.#frameKeys}
        ></div>
        <p class="wait" ?hidden=${map && !failed}>${failed ? (failed === 'policy' ? words.noMapPolicy : words.noMap) : words.loading}</p>
        <svg class="cross" viewBox="0 0 44 44" aria-hidden="true"><path d="M22 2v16M22 26v16M2 22h16M26 22h16" /></svg>
        <p id="map-keys" class="keys">${selected === undefined ? words.mapKeys : words.mapKeysSelected}</p>
        <p id="waypoint-keys" class="keys">${words.waypointKeys}</p>
        ${
          failed || this.#noPictures
            ? nothing
            : streetMapButton(this.#tileUrl !== undefined, (shown) => {
                this.streetMapPressed = shown;
              })
        }
        ${failed ? nothing : zoomButtons((by) => this.#zoomed(by))}
        <div class="foot" ?hidden=${failed}>
          ${map ? scaleBar(map, this.measures) : nothing}
          ${this.#tileUrl === undefined ? nothing : attribution(this.tilesAttribution)}
        </div>
      </div>
      <p class="note" role="status">${this.tileState === 'failed' ? words.noPictures : ''}</p>
      ${this.#keeps.choice(this.#tileUrl)}
      <div class="below" ?hidden=${failed} @keydown=${this.#undoKeys}>
        ${arrowButtons(selected, (x, y) => this.#arrow(x, y))}
        ${
          selected === undefined
            ? hints(waypoints.length, this.thinned)
            : selectionButtons(selected, waypoints.length, {
                insert: (index) => this.#layers?.editor.insert(index),
                delete: (index) => this.#layers?.editor.delete(index),
                letGo: () => this.#layers?.editor.letGo(selected),
              })
        }
      </div>
      ${this.#howFar.panel(this, this.#layers)}
      ${failed ? nothing : mapKey(this.waters, this.legs, this.#howFar.shown, this.#flows.key())}
    `;
  }

  #begin(map: LeafletMap, leaflet: Leaflet): void {
    this.#view.begin(map, this.#wishes);
    const layers = layersOn(map, leaflet, this.#keeper, (state) => {
      this.tileState = state;
    });
    // The scale bar goes with the view.
    map.on('moveend', () => this.requestUpdate());
    this.#layers = layers;
    this.#drawn = undefined;
    this.#drawLegs(layers);
    layers.lines.drawMarks(this.turnBack, this.hazards);
    this.#drawRoute(layers);
    layers.tiles.show(this.#tileUrl, this.#keeps.on);
    void turn().then(() => {
      if (layers === this.#layers) layers.waters.draw(this.waters, this.measures);
    });
  }

  get #waypoints(): readonly Waypoint[] {
    return this.draft ?? this.route?.waypoints ?? NO_ROUTE.waypoints;
  }

  get #wishes(): ViewWishes {
    return {
      last: this.#life.lastView,
      center: parsePosition(this.center),
      zoom: this.zoom,
      places: this.#waypoints,
      waters: this.waters,
    };
  }

  /** Where map pictures come from, if any are wanted: the page named them, or the user pressed for them. */
  /** The page wants none; or its address is none of pictures, and no other is asked in its place. */
  get #noPictures(): boolean {
    return this.tiles !== '' && !tileTemplate(this.tiles);
  }

  get #tileUrl(): string | undefined {
    if (this.#noPictures) return undefined;
    return (this.streetMapPressed ?? (this.tiles !== '' && !savesData())) ? this.tiles || STREET_MAP : undefined;
  }

  #drawingNow(): Drawing {
    const route = { ...(this.route ?? NO_ROUTE), waypoints: this.#waypoints };
    this.#drawing ??= {
      waypoints: route.waypoints,
      closed: closes(route),
      selected: this.selected,
      nameOf: waypointNames(route, this.measures),
      roleOf: (index) => roleOf(index, route),
    };
    return this.#drawing;
  }

  #drawRoute(layers: Layers): void {
    const { waypoints, closed } = this.#drawingNow();
    if (this.#drawn?.waypoints !== waypoints || this.#drawn.closed !== closed) {
      layers.lines.drawRoute(waypoints, closed);
      this.#drawn = { waypoints, closed };
    }
    if (!layers.editor.busy) layers.waters.keepClear(waypoints);
    layers.editor.draw();
  }

  #drawLegs(layers: Layers): void {
    const { editor, lines } = layers;
    const { legs } = this;
    const tooMany = editor.busy && (legs?.length ?? 0) > LIVE_LEGS;
    const drawn = this.#legsStale || tooMany ? undefined : legs;
    lines.drawLegs(drawn);
    this.#flows.draw(layers, this.#legsStale || editor.busy ? undefined : legs, this.trip);
  }

  #select(index: number | undefined): void {
    this.selected = index;
    this.#drawing = undefined;
  }

  /** Draws an edit at once, and tells of it. */
  #edited(edit: RouteEdit): void {
    const { waypoints, live } = edit;
    if (!this.#history.present) this.#history.follow(this.route?.waypoints ?? []);
    if (waypoints !== this.#history.present) markLive(waypoints, live);
    this.#history.follow(waypoints);
    this.draft = waypoints;
    this.#view.settle();
    this.#legsStale = true;
    // While dragging nobody asks for names; all of them would be worked out in every frame.
    this.#drawing = live && this.#drawing ? { ...this.#drawing, waypoints } : undefined;
    if (this.#layers) this.#drawRoute(this.#layers);
    const told = new CustomEvent('route-edited', { detail: edit, bubbles: true, composed: true });
    this.dispatchEvent(told satisfies RouteEdited);
  }

  #changed(waypoints: readonly Waypoint[], what: EditKind): void {
    this.#select(undefined);
    this.#edited({ waypoints, live: false, what });
  }

  #stepped(what: 'undone' | 'redone'): void {
    const waypoints = what === 'undone' ? this.#history.undo() : this.#history.redo();
    if (waypoints) this.#changed(waypoints, what);
  }

  #zoomed(by: number): void {
    const map = this.#layers?.map;
    map?.setZoom(Math.round(map.getZoom()) + by);
  }

  #arrow(x: number, y: number): void {
    const { selected } = this;
    if (selected !== undefined) this.#layers?.editor.move(selected, x * NUDGE, y * NUDGE);
    else this.#layers?.map.panBy([x * PAN, y * PAN], { animate: false });
  }

  #undoKeys = (event: KeyboardEvent): void => {
    const what = undoKey(event);
    // With nothing of the route to undo, the key goes on to the whole trip.
    if (!what || !(what === 'undone' ? this.#history.canUndo : this.#history.canRedo)) return;
    event.preventDefault();
    this.#stepped(what);
  };

  /** Keys on the map itself, and those that waypoints leave to it. */
  #frameKeys = (event: KeyboardEvent): void => {
    this.#undoKeys(event);
    const layers = this.#layers;
    if (!layers || event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey) return;
    const onMap = event.target === event.currentTarget;
    const [x, y] = (onMap && ARROW_KEYS[event.key]) || [];
    if (event.key === 'Escape') layers.editor.cancel();
    else if (event.key === '+' || event.key === '=') this.#zoomed(1);
    else if (event.key === '-') this.#zoomed(-1);
    else if (x !== undefined && y !== undefined) layers.map.panBy([x * PAN, y * PAN], { animate: false });
    else if (onMap && event.key === 'Enter') layers.editor.tapAt(middle(layers.map));
    else return;
    event.preventDefault();
  };
}

function middle(map: LeafletMap): LatLon {
  const { lat, lng } = map.getCenter();
  return { lat, lon: lng };
}

define('homeleg-route-map', RouteMap);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-route-map': RouteMap;
  }
  interface HTMLElementEventMap {
    'route-edited': RouteEdited;
  }
}
