import type { Map as LeafletMap, Polygon } from 'leaflet';
import type { LatLon } from '../../core/route/shapes.ts';
import type { RangeOutline } from '../../core/trip/range-outline.ts';
import type { Leaflet } from './map-life.ts';
import { unbroken } from './route-names.ts';

/** The outline of ranges on the map: out and home filled within a whole line, one way a dashed line. */
export class OutlineLayer {
  readonly map: LeafletMap;
  #outAndHome: Polygon;
  #oneWay: Polygon;

  constructor(map: LeafletMap, leaflet: Leaflet) {
    this.map = map;
    if (!map.getPane('outline')) map.createPane('outline');
    const renderer = new leaflet.SVG({ pane: 'outline', padding: 0.4 }).addTo(map);
    const shape = (className: string, weight: number, dashArray?: string): Polygon => {
      const line = {
        className,
        weight,
        renderer,
        interactive: false,
        ...(dashArray && { dashArray, lineCap: 'butt' as const }),
      };
      return new leaflet.Polygon([], { ...line, smoothFactor: 0.5 }).addTo(map);
    };
    this.#oneWay = shape('reach one-way', 2, '9 6');
    this.#outAndHome = shape('reach out-and-home', 2.5);
  }

  draw(outline: RangeOutline | undefined): void {
    this.#outAndHome.setLatLngs(round(outline, 'outAndHome'));
    this.#oneWay.setLatLngs(round(outline, 'oneWay'));
  }

  /** Brings all of it into view. */
  show({ points }: RangeOutline): void {
    const places = points.flatMap(({ outAndHome, oneWay }) => [outAndHome.at, oneWay.at]);
    this.map.fitBounds(unbroken(places, false), { padding: [24, 24], animate: false });
  }

  remove(): void {
    this.#outAndHome.remove();
    this.#oneWay.remove();
  }
}

function round(outline: RangeOutline | undefined, way: 'outAndHome' | 'oneWay'): [number, number][] {
  if (!outline) return [];
  const places: LatLon[] = outline.points.map((point) => point[way].at);
  return unbroken([outline.from, ...places], false).slice(1);
}
