import type { Map as LeafletMap, Marker } from 'leaflet';
import { html, nothing, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { LatLon, WatersFile } from '../../core/route/shapes.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { drawingStyles } from '../route-map/drawing.styles.ts';
import { leafletStyles } from '../route-map/leaflet.styles.ts';
import {
  arrowButtons,
  attribution,
  selectionButtons,
  streetMapButton,
  zoomButtons,
} from '../route-map/map-controls.ts';
import { mapKeyStyles } from '../route-map/map-key.styles.ts';
import { mapKey } from '../route-map/map-key.ts';
import { ARROW_KEYS } from '../route-map/map-keys.ts';
import { type Layers, layersOn } from '../route-map/map-layers.ts';
import { type Leaflet, MapLife } from '../route-map/map-life.ts';
import { MapView, showAll } from '../route-map/map-view.ts';
import type { RouteKeeper } from '../route-map/route-keeper.ts';
import { routeMapStyles } from '../route-map/route-map.styles.ts';
import { scaleBar } from '../route-map/scale-bar.ts';
import { STREET_MAP, type TileState } from '../route-map/tiles.ts';
import { mapWords } from '../route-map/words.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { watersWords as words } from '../words/en-waters.ts';
import { watersMapStyles } from './waters-map.styles.ts';

/** The line being edited, of one feature. */
export interface Edited {
  readonly places: readonly LatLon[];
  readonly closed: boolean;
  /** One place only: a tap puts it there. */
  readonly single: boolean;
}

/** Other places on the line; `live` while a finger still holds one of them. */
export type PlacesEdited = CustomEvent<{ places: readonly LatLon[]; live: boolean }>;
/** A tap where nothing is being edited. */
export type PlaceTapped = CustomEvent<{ at: LatLon }>;

const NONE: Edited = { places: [], closed: false, single: false };
/** CSS pixels by which arrows move the map, and arrow buttons a point. */
const PAN = 90;
const NUDGE = 8;

/**
 * @summary Local waters on a map, and the outline of one feature to draw there by pointer, by taps alone, or by keys.
 * @fires places-edited - the outline as the user made it
 * @fires place-tapped - where the user wants to choose something
 */
export class WatersMap extends SpeakingElement {
  static override styles = [
    tokens,
    controls,
    leafletStyles,
    routeMapStyles,
    drawingStyles,
    mapKeyStyles,
    watersMapStyles,
  ];

  @property({ attribute: false }) waters: WatersFile | undefined;
  /** Undefined: nothing is being changed, and taps choose. */
  @property({ attribute: false }) edited: Edited | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  @state() private streetMap = false;
  @state() private tileState: TileState = 'none';
  @state() private selected: number | undefined;
  /** Of a drag that goes on. */
  @state() private draft: readonly LatLon[] | undefined;

  #layers: Layers | undefined;
  #view = new MapView();
  #streams: Marker[] = [];

  #keeper: RouteKeeper = {
    drawing: () => ({
      waypoints: this.#places,
      closed: this.edited?.closed ?? false,
      selected: this.selected,
      nameOf: (index) => words.point(index + 1, this.#places.length),
      roleOf: () => undefined,
    }),
    edited: ({ waypoints, live }) => this.#tell(waypoints, live),
    editDropped: () => {
      this.draft = undefined;
      this.#drawEdited();
    },
    selected: (index) => {
      this.selected = index;
    },
    thinned: () => {},
  };

  #life = new MapLife(this, () => this.renderRoot.querySelector<HTMLElement>('#frame'), {
    begin: (map, leaflet) => this.#begin(map, leaflet),
    end: () => {
      this.#layers?.editor.end();
      this.#layers = undefined;
      this.#streams = [];
    },
  });

  /** Brings places into view. */
  show(places: readonly LatLon[]): void {
    const map = this.#layers?.map;
    if (map && places.length > 0) showAll(map, places);
    this.#view.settle();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('edited')) return;
    this.draft = undefined;
    if (this.selected !== undefined && this.selected >= this.#places.length) this.selected = undefined;
    if (!this.edited) this.selected = undefined;
  }

  protected override updated(changed: PropertyValues): void {
    const layers = this.#layers;
    if (!layers) return;
    if (changed.has('waters') || changed.has('measures')) {
      layers.waters.draw(this.waters, this.measures);
      this.#drawStreams(layers);
      this.#view.follow(layers.map, this.#wishes);
    }
    if (changed.has('edited') || changed.has('selected')) this.#drawEdited();
    layers.tiles.show(this.streetMap ? STREET_MAP : undefined);
  }

  override render() {
    const { failed } = this.#life;
    const { selected, edited } = this;
    const map = this.#layers?.map;
    return html`
      <div class="picture" ?data-failed=${failed} data-pictures=${this.tileState}>
        <div
          id="frame"
          role="region"
          aria-label=${words.map}
          aria-describedby="map-keys"
          tabindex="0"
          @keydown=${this.#frameKeys}
        ></div>
        <p class="wait" ?hidden=${map && !failed}>${failed ? words.noMap : mapWords.loading}</p>
        <svg class="cross" viewBox="0 0 44 44" aria-hidden="true"><path d="M22 2v16M22 26v16M2 22h16M26 22h16" /></svg>
        <p id="map-keys" class="keys">${edited ? words.mapKeys : words.mapKeysChoose}</p>
        <p id="waypoint-keys" class="keys">${words.pointKeys}</p>
        ${failed ? nothing : streetMapButton(this.streetMap, (shown) => (this.streetMap = shown))}
        ${failed ? nothing : zoomButtons((by) => this.#zoomed(by))}
        <div class="foot" ?hidden=${failed}>
          ${map ? scaleBar(map, this.measures) : nothing} ${this.streetMap ? attribution('') : nothing}
        </div>
      </div>
      <p class="note" role="status">${this.tileState === 'failed' ? mapWords.noPictures : ''}</p>
      <div class="below" ?hidden=${failed}>
        ${arrowButtons(selected, (x, y) => this.#arrow(x, y))}
        ${
          selected !== undefined && edited && !edited.single
            ? selectionButtons(selected, this.#places.length, {
                insert: (index) => this.#layers?.editor.insert(index),
                delete: (index) => this.#layers?.editor.delete(index),
                letGo: () => this.#layers?.editor.letGo(selected),
              })
            : html`<p class="hint">
                ${!edited ? words.hintChoose : edited.single ? words.hintPoint : edited.closed ? words.hintArea : words.hintLine}
                <span class="fingers">${mapWords.hintFingers}</span>
              </p>`
        }
      </div>
      ${failed ? nothing : mapKey(this.waters, undefined, false)}
    `;
  }

  get #places(): readonly LatLon[] {
    return this.draft ?? this.edited?.places ?? NONE.places;
  }

  get #wishes() {
    const places = this.edited?.places ?? [];
    return { last: this.#life.lastView, center: undefined, zoom: undefined, places, waters: this.waters };
  }

  #begin(map: LeafletMap, leaflet: Leaflet): void {
    this.#view.begin(map, this.#wishes);
    const layers = layersOn(map, leaflet, this.#keeper, (state) => {
      this.tileState = state;
    });
    map.on('moveend', () => this.requestUpdate());
    this.#layers = layers;
    layers.waters.draw(this.waters, this.measures);
    this.#drawStreams(layers);
    this.#drawEdited();
  }

  #drawEdited(): void {
    const layers = this.#layers;
    if (!layers) return;
    layers.lines.drawRoute(this.#places, this.edited?.closed ?? false);
    if (!layers.editor.busy) layers.waters.keepClear(this.#places);
    layers.editor.draw();
  }

  /** Stream places are points that the planner's map leaves out; who draws them has to see them. */
  #drawStreams({ map, leaflet }: Layers): void {
    for (const marker of this.#streams.splice(0)) marker.remove();
    for (const { geometry, properties } of this.waters?.features ?? []) {
      if (geometry.type !== 'Point' || properties?.kind !== 'stream') continue;
      const [lon = 0, lat = 0] = geometry.coordinates;
      const box = document.createElement('span');
      box.textContent = String(properties.id ?? '~').slice(0, 3);
      const icon = new leaflet.DivIcon({ html: box, className: 'stream-place', iconSize: [0, 0] });
      this.#streams.push(new leaflet.Marker([lat, lon], { icon, interactive: false, keyboard: false }).addTo(map));
    }
  }

  #tell(places: readonly LatLon[], live: boolean): void {
    const { edited } = this;
    if (!edited) {
      const at = places.at(-1);
      if (at && !live) this.dispatchEvent(new CustomEvent('place-tapped', { detail: { at } }) satisfies PlaceTapped);
      return;
    }
    // A single place is where the last tap was.
    const told = edited.single ? places.slice(-1) : places;
    this.draft = told;
    this.#view.settle();
    this.#drawEdited();
    this.dispatchEvent(new CustomEvent('places-edited', { detail: { places: told, live } }) satisfies PlacesEdited);
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

  /** Keys on the map itself, and those that points leave to it. */
  #frameKeys = (event: KeyboardEvent): void => {
    const layers = this.#layers;
    if (!layers || event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey) return;
    const onMap = event.target === event.currentTarget;
    const [x, y] = (onMap && ARROW_KEYS[event.key]) || [];
    if (event.key === 'Escape') layers.editor.cancel();
    else if (event.key === '+' || event.key === '=') this.#zoomed(1);
    else if (event.key === '-') this.#zoomed(-1);
    else if (x !== undefined && y !== undefined) layers.map.panBy([x * PAN, y * PAN], { animate: false });
    else if (onMap && event.key === 'Enter') {
      const { lat, lng } = layers.map.getCenter();
      layers.editor.tapAt({ lat, lon: lng });
    } else return;
    event.preventDefault();
  };
}

define('homeleg-waters-map', WatersMap);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-waters-map': WatersMap;
  }
}
