import type { Map as LeafletMap, TileLayer } from 'leaflet';
import type { Leaflet } from './map-life.ts';

/** Pictures of the street map that anyone may show with attribution; asked for only after a press. */
export const STREET_MAP = 'https://tile.openstreetmap.org/{z}/{x}/{y}.png';

/** The reader asked for little data: pictures then wait for a press. */
export function savesData(): boolean {
  const { connection } = navigator as Navigator & { connection?: { saveData?: boolean } };
  return connection?.saveData === true || matchMedia('(prefers-reduced-data: reduce)').matches;
}

/** What came of asking: nothing yet, or some pictures, or only refusals. */
export type TileState = 'none' | 'shown' | 'failed';

/** Map pictures under everything else. None is requested before `show`. */
export class Tiles {
  #map: LeafletMap;
  #leaflet: Leaflet;
  #layer: TileLayer | undefined;
  #url = '';
  #kept = false;
  /** Counts what was asked to be shown. */
  #shown = 0;
  #told: (state: TileState) => void;

  constructor(map: LeafletMap, leaflet: Leaflet, told: (state: TileState) => void) {
    this.#map = map;
    this.#leaflet = leaflet;
    this.#told = told;
  }

  /**
   * An address template with {z}, {x} and {y}; undefined takes the pictures away. `kept` ones are asked for across
   * origins, by which the worker of the site knows them.
   */
  show(url: string | undefined, kept = false): void {
    if ((url ?? '') === this.#url && kept === this.#kept) return;
    this.#url = url ?? '';
    this.#kept = kept;
    this.#layer?.remove();
    this.#layer = undefined;
    // Pictures are sharp at whole zoom levels only.
    this.#map.options.zoomSnap = url ? 1 : 0.25;
    if (url) void this.#lay(url, kept);
  }

  async #lay(url: string, kept: boolean): Promise<void> {
    const shown = ++this.#shown;
    const LayerOfTiles = await this.#leaflet.tileLayer().catch(() => undefined);
    // Taken away or changed meanwhile, or the map is gone.
    if (shown !== this.#shown || url !== this.#url || !this.#map.getPane('tilePane')) return;
    if (!LayerOfTiles) {
      this.#told('failed');
      return;
    }
    const layer = new LayerOfTiles(url, { maxZoom: 19, ...(kept && { crossOrigin: 'anonymous' }) });
    let loaded = 0;
    layer.on('tileload', () => {
      loaded++;
      this.#told('shown');
    });
    layer.on('tileerror', () => {
      if (loaded === 0) this.#told('failed');
    });
    this.#layer = layer.addTo(this.#map);
    if (this.#map.getZoom() % 1 !== 0) this.#map.setZoom(Math.round(this.#map.getZoom()));
  }
}
