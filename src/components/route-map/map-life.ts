import type { Map as LeafletMap } from 'leaflet';
import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** The parts of Leaflet in use, once loaded. */
export type Leaflet = typeof import('./leaflet-parts.ts');

/** What is shown on a map while it lives. */
export interface Scene {
  begin(map: LeafletMap, leaflet: Leaflet): void;
  end(): void;
}

/**
 * Makes the map when its frame is first seen with a size, keeps it at that size, and takes it down when the element
 * leaves the page; moved in the page, it comes back with the same view. A frame that is never shown loads nothing.
 */
export class MapLife implements ReactiveController {
  #host: ReactiveControllerHost;
  #frame: () => HTMLElement | null;
  #scene: Scene;
  #visit = 0;
  #map: LeafletMap | undefined;
  #size: ResizeObserver | undefined;
  #view: { center: [number, number]; zoom: number } | undefined;

  /** Leaflet could not be loaded or started, as under a policy that forbids what it does. */
  failed: false | 'policy' | 'other' = false;

  constructor(host: ReactiveControllerHost, frame: () => HTMLElement | null, scene: Scene) {
    this.#host = host;
    this.#frame = frame;
    this.#scene = scene;
    host.addController(this);
  }

  get map(): LeafletMap | undefined {
    return this.#map;
  }

  /** The view before the last move in the page, if there was one. */
  get lastView() {
    return this.#view;
  }

  async hostConnected(): Promise<void> {
    const visit = ++this.#visit;
    await this.#host.updateComplete;
    const frame = this.#frame();
    if (visit !== this.#visit || !frame) return;
    let asked = false;
    this.#size = new ResizeObserver(([entry]) => {
      if (!entry || entry.contentRect.width === 0 || entry.contentRect.height === 0) return;
      if (asked) this.#map?.invalidateSize({ animate: false });
      else this.#load(frame, visit);
      asked = true;
    });
    this.#size.observe(frame);
  }

  hostDisconnected(): void {
    this.#visit++;
    this.#size?.disconnect();
    this.#size = undefined;
    if (!this.#map) return;
    const { lat, lng } = this.#map.getCenter();
    this.#view = { center: [lat, lng], zoom: this.#map.getZoom() };
    this.#scene.end();
    this.#map.remove();
    // A zoom that was still going on ends in a timer: it finds nobody to tell, and this instead of nothing.
    this.#map.off();
    (this.#map as LeafletMap & { _mapPane: HTMLElement })._mapPane = document.createElement('div');
    this.#map = undefined;
  }

  async #load(frame: HTMLElement, visit: number): Promise<void> {
    try {
      const leaflet = await import('./leaflet-parts.ts');
      if (visit !== this.#visit) return; // removed or moved while loading
      const still = matchMedia('(prefers-reduced-motion: reduce)').matches;
      this.#map = new leaflet.LeafletMap(frame, {
        scrollWheelZoom: false,
        trackResize: false,
        zoomAnimation: !still,
        fadeAnimation: !still,
        markerZoomAnimation: !still,
        zoomSnap: 0.25,
        minZoom: 2,
        maxZoom: 18,
      });
      this.#scene.begin(this.#map, leaflet);
    } catch (error) {
      console.warn('The map cannot be shown here.', error);
      this.failed = refusedByPolicy(error) ? 'policy' : 'other';
      this.#map = undefined;
    }
    this.#host.requestUpdate();
  }
}

/** Where the page requires Trusted Types, the library fails while it loads, as it writes markup. */
function refusedByPolicy(error: unknown): boolean {
  return error instanceof TypeError && /Trusted|Content Security Policy|CSP/.test(error.message);
}
