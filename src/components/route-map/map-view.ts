import type { Map as LeafletMap } from 'leaflet';
import type { LatLon, WatersFile } from '../../core/route/shapes.ts';
import { unbroken } from './route-names.ts';

/** What there is to look at, in falling order. */
export interface ViewWishes {
  /** The view before a move in the page. */
  readonly last: { readonly center: [number, number]; readonly zoom: number } | undefined;
  readonly center: LatLon | undefined;
  readonly zoom: number | undefined;
  readonly places: readonly LatLon[];
  readonly waters: WatersFile | undefined;
}

const STILL = { animate: false };

/** Decides what the map shows when nobody has moved it yet, and when a route comes from elsewhere. */
export class MapView {
  /** Something was there to look at. */
  #framed = false;

  begin(map: LeafletMap, wishes: ViewWishes): void {
    const { last, center, zoom } = wishes;
    if (last) map.setView(last.center, last.zoom, STILL);
    else if (center) map.setView([center.lat, center.lon], zoom ?? 13, STILL);
    else this.#frame(map, wishes);
    this.#framed ||= last !== undefined || center !== undefined;
  }

  /** The user has begun to work with this view. */
  settle(): void {
    this.#framed = true;
  }

  /** Brings a route or waters that came later into view, unless some of the route is in it already. */
  follow(map: LeafletMap, wishes: ViewWishes): void {
    const bounds = map.getBounds();
    const { places } = wishes;
    const seen = places.some(({ lat, lon }) => bounds.contains([lat, lon]));
    if (!this.#framed || (places.length > 0 && !seen)) this.#frame(map, wishes);
  }

  #frame(map: LeafletMap, { places, waters }: ViewWishes): void {
    const [west, south, east, north] = waters?.bbox ?? [];
    this.#framed = true;
    if (places.length > 0) {
      showAll(map, places);
    } else if (west !== undefined && south !== undefined && east !== undefined && north !== undefined) {
      const corners: [number, number][] = [
        [south, west],
        [north, east],
      ];
      map.fitBounds(corners, STILL);
    } else {
      this.#framed = false;
      map.setView([30, 0], 2, STILL);
    }
  }
}

/** Shows the whole route, close up at most to a few hundred metres. */
export function showAll(map: LeafletMap, places: readonly LatLon[]): void {
  if (places.length > 0) map.fitBounds(unbroken(places, false), { padding: [48, 48], maxZoom: 15, ...STILL });
}
