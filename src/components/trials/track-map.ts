import type { Map as LeafletMap, Polyline, Renderer } from 'leaflet';
import { html, type PropertyValues } from 'lit';
import { property } from 'lit/decorators.js';
import type { LatLon } from '../../core/route/shapes.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { drawingStyles } from '../route-map/drawing.styles.ts';
import { leafletStyles } from '../route-map/leaflet.styles.ts';
import { type Leaflet, MapLife } from '../route-map/map-life.ts';
import { panByMouse, zoomByWheel } from '../route-map/map-pan.ts';
import { showAll } from '../route-map/map-view.ts';
import { routeMapStyles } from '../route-map/route-map.styles.ts';
import { unbroken } from '../route-map/route-names.ts';
import { WatersLayer } from '../route-map/waters-layer.ts';
import { mapWords } from '../route-map/words.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { trackWords as words } from '../words/en-trials.ts';
import { trackMapStyles } from './track-map.styles.ts';
import type { Found, OpenTrack } from './track-work.ts';

/** Points of a track drawn on the map; a long one is thinned to these. */
const MOST_POINTS = 3000;

interface Layers {
  readonly map: LeafletMap;
  readonly leaflet: Leaflet;
  readonly renderer: Renderer;
  readonly end: AbortController;
  lines: Polyline[];
}

/**
 * @summary The tracks on a map with their stretches. Everything it shows stands in the plot and the table as well.
 */
export class TrackMap extends SpeakingElement {
  static override styles = [tokens, controls, leafletStyles, routeMapStyles, drawingStyles, trackMapStyles];

  @property({ attribute: false }) tracks: readonly OpenTrack[] = [];
  @property({ attribute: false }) found: readonly Found[] = [];
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  #layers: Layers | undefined;

  readonly #life = new MapLife(this, () => this.renderRoot.querySelector<HTMLElement>('#frame'), {
    begin: (map, leaflet) => this.#begin(map, leaflet),
    end: () => {
      this.#layers?.end.abort();
      this.#layers = undefined;
    },
  });

  override render() {
    const { failed } = this.#life;
    return html`<div class="picture" ?data-failed=${failed}>
      <div id="frame" role="region" aria-label=${words.mapOf} tabindex="0" @keydown=${this.#keyed}></div>
      <p class="wait" ?hidden=${this.#layers && !failed}>${failed ? mapWords.noMap : mapWords.loading}</p>
      <div class="zoom" ?hidden=${failed}>
        <button type="button" class="icon" aria-label=${mapWords.zoomIn} @click=${() => this.#zoom(1)}>+</button>
        <button type="button" class="icon" aria-label=${mapWords.zoomOut} @click=${() => this.#zoom(-1)}>\u2212</button>
      </div>
    </div>`;
  }

  protected override updated(changed: PropertyValues<this>): void {
    if (!this.#layers) return;
    if (changed.has('tracks')) showAll(this.#layers.map, this.#places());
    if (changed.has('tracks') || changed.has('found')) this.#draw(this.#layers);
  }

  #begin(map: LeafletMap, leaflet: Leaflet): void {
    showAll(map, this.#places());
    new WatersLayer(map, leaflet).draw(undefined, this.measures);
    const renderer = new leaflet.SVG({ padding: 0.4 }).addTo(map);
    const end = new AbortController();
    panByMouse(map.getContainer(), map, end.signal);
    zoomByWheel(map.getContainer(), map, end.signal);
    this.#layers = { map, leaflet, renderer, end, lines: [] };
    this.#draw(this.#layers);
  }

  #draw(layers: Layers): void {
    for (const line of layers.lines) line.remove();
    const line = (className: string, weight: number, places: readonly LatLon[]) =>
      new layers.leaflet.Polyline(unbroken(places, false), {
        className,
        weight,
        renderer: layers.renderer,
        interactive: false,
      }).addTo(layers.map);
    layers.lines = [
      ...this.tracks.map(({ track }) => line('track', 2, thinned(track.points))),
      ...this.found.map(({ track, stretch, run }) => {
        const open = this.tracks.find(({ id }) => id === track);
        const points = open?.track.points.slice(stretch.first, stretch.last + 1) ?? [];
        return line(run ? 'stretch' : 'stretch alone', 6, points);
      }),
    ];
  }

  #places(): readonly LatLon[] {
    return this.tracks.flatMap(({ track }) => thinned(track.points));
  }

  #zoom(by: number): void {
    const map = this.#layers?.map;
    map?.setZoom(Math.round(map.getZoom()) + by);
  }

  #keyed(event: KeyboardEvent): void {
    const by: Record<string, [number, number]> = {
      ArrowUp: [0, -90],
      ArrowDown: [0, 90],
      ArrowLeft: [-90, 0],
      ArrowRight: [90, 0],
    };
    const step = by[event.key];
    if (step) {
      event.preventDefault();
      this.#layers?.map.panBy(step, { animate: false });
    } else if (event.key === '+' || event.key === '-') {
      this.#zoom(event.key === '+' ? 1 : -1);
    }
  }
}

function thinned(points: readonly LatLon[]): readonly LatLon[] {
  const every = Math.ceil(points.length / MOST_POINTS);
  return every > 1 ? points.filter((_, i) => i % every === 0) : points;
}

define('homeleg-track-map', TrackMap);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-track-map': TrackMap;
  }
}
