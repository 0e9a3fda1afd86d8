import type { Position } from 'geojson';
import type { LayerGroup, Map as LeafletMap, Polyline, Renderer } from 'leaflet';
import type { LatLon, WatersFile, ZoneFeature, ZoneKind } from '../../core/route/shapes.ts';
import { turn } from '../turn.ts';
import type { Measures } from '../units/measures.ts';
import { gridStep, gridValues } from './grid.ts';
import { isZone, watersLabels } from './map-labels.ts';
import type { Leaflet } from './map-life.ts';
import { MapWords } from './map-words.ts';
import { addPatterns } from './svg-patterns.ts';

const FILLS: Record<ZoneKind, string> = {
  land: 'none',
  shoal: 'url(#shoal)',
  'speed-limit': 'url(#speed-limit)',
  'keep-out': 'url(#keep-out)',
};
/** Later kinds lie over earlier ones. */
const ORDER: readonly ZoneKind[] = ['land', 'shoal', 'speed-limit', 'keep-out'];
/** About so many CSS pixels between grid lines. */
const GRID = 90;

/** The ground under the route, from our own data: a grid of latitude and longitude, and local waters if there are any. */
export class WatersLayer {
  #map: LeafletMap;
  #leaflet: Leaflet;
  #renderer: Renderer;
  #grid: Polyline;
  #zones: LayerGroup;
  #words: MapWords;
  #drawn = 0;

  constructor(map: LeafletMap, leaflet: Leaflet) {
    this.#map = map;
    this.#leaflet = leaflet;
    map.createPane('waters');
    this.#renderer = new leaflet.SVG({ pane: 'waters', padding: 0.4 }).addTo(map);
    const drawing = map.getPane('waters')?.querySelector('svg');
    if (drawing) addPatterns(drawing);
    this.#zones = new leaflet.LayerGroup().addTo(map);
    this.#grid = new leaflet.Polyline([], { ...this.#look('grid'), noClip: true }).addTo(map);
    this.#words = new MapWords(map, leaflet);
    map.on('moveend', this.#viewMoved);
  }

  draw(waters: WatersFile | undefined, measures: Measures): void {
    this.#zones.clearLayers();
    const [west, south, east, north] = waters?.bbox?.length === 4 ? waters.bbox : [];
    if (west !== undefined && south !== undefined && east !== undefined && north !== undefined) {
      const corners: [number, number][] = [
        [south, west],
        [north, west],
        [north, east],
        [south, east],
      ];
      this.#zones.addLayer(new this.#leaflet.Polygon(corners, this.#look('known')));
    }
    const zones = (waters?.features ?? []).filter(isZone);
    for (const kind of ORDER) {
      for (const zone of zones) if (zone.properties.kind === kind) this.#zones.addLayer(this.#area(zone));
    }
    for (const { geometry, properties } of waters?.features ?? []) {
      if (geometry?.type !== 'LineString' || properties?.kind !== 'route') continue;
      const line = geometry.coordinates.map(([lon = 0, lat = 0]): [number, number] => [lat, lon]);
      if (properties.shape === 'loop' && line[0]) line.push(line[0]);
      this.#zones.addLayer(new this.#leaflet.Polyline(line, this.#look('set-route')));
    }
    this.#grid.bringToFront();
    // Words after the picture, so that a slow phone is not kept from answering by both at once.
    const drawn = ++this.#drawn;
    void turn().then(() => {
      if (drawn !== this.#drawn) return;
      this.#words.say(watersLabels(waters, measures));
      this.#viewMoved();
    });
  }

  /** Nothing more is written once the map is taken down. */
  end(): void {
    this.#drawn++;
  }

  /** Keeps words off the route through these places. */
  keepClear(places: readonly LatLon[]): void {
    this.#words.keepClear(places);
  }

  #area({ geometry, properties: { kind } }: ZoneFeature) {
    const turned = (rings: Position[][]) =>
      rings.map((ring) => ring.map(([lon = 0, lat = 0]): [number, number] => [lat, lon]));
    const places = geometry.type === 'Polygon' ? turned(geometry.coordinates) : geometry.coordinates.map(turned);
    return new this.#leaflet.Polygon(places, { ...this.#look(kind), fillColor: FILLS[kind], fillOpacity: 1 });
  }

  #look(className: string) {
    return { className, renderer: this.#renderer, interactive: false };
  }

  #viewMoved = (): void => {
    const bounds = this.#map.getBounds();
    const wide = bounds.pad(0.4);
    const [south, west, north, east] = [wide.getSouth(), wide.getWest(), wide.getNorth(), wide.getEast()];
    const step = gridStep(bounds.getNorth() - bounds.getSouth(), Math.max(2, this.#map.getSize().y / GRID));
    const lats = gridValues(Math.max(-85, south), Math.min(85, north), step);
    const lons = gridValues(west, east, step);
    this.#grid.setLatLngs([
      ...lats.map((lat): [number, number][] => [
        [lat, west],
        [lat, east],
      ]),
      ...lons.map((lon): [number, number][] => [
        [south, lon],
        [north, lon],
      ]),
    ]);
    this.#words.write({ lats, lons, step });
  };
}
