import type { Position } from 'geojson';
import type { LayerGroup, Map as LeafletMap, Polyline, Renderer } from 'leaflet';
import type { LatLon, WatersFile, ZoneFeature, ZoneKind } from '../../core/route/shapes.ts';
import type { Measures } from '../units/measures.ts';
import { gridLabel, gridStep, gridValues } from './grid.ts';
import { inside, isZone, type LabelBox, type MapLabel, watersLabels, withoutOverlap } from './map-labels.ts';
import type { Leaflet } from './map-life.ts';
import { inView, type Spot } from './shown-handles.ts';
import { addPatterns } from './svg-patterns.ts';

const FILLS: Record<ZoneKind, string> = {
  land: 'none',
  shoal: 'url(#shoal)',
  'speed-limit': 'url(#speed-limit)',
  'keep-out': 'url(#keep-out)',
};
const ORDER: readonly ZoneKind[] = ['land', 'shoal', 'speed-limit', 'keep-out'];
/** Words in one view, and parts of the route they keep clear of. */
const MOST_WORDS = 60;
const MOST_AVOIDED = 300;

/** The ground under the route, from our own data: a grid of latitude and longitude, and the local waters if there are any. */
export class WatersLayer {
  #map: LeafletMap;
  #leaflet: Leaflet;
  #renderer: Renderer;
  #grid: Polyline;
  #zones: LayerGroup;
  #words: LayerGroup;
  #labels: readonly MapLabel[] = [];
  #avoid: readonly LatLon[] = [];

  constructor(map: LeafletMap, leaflet: Leaflet) {
    this.#map = map;
    this.#leaflet = leaflet;
    map.createPane('waters');
    map.createPane('words');
    this.#renderer = new leaflet.SVG({ pane: 'waters', padding: 0.4 }).addTo(map);
    const drawing = map.getPane('waters')?.querySelector('svg');
    if (drawing) addPatterns(drawing);
    this.#zones = new leaflet.LayerGroup().addTo(map);
    this.#grid = new leaflet.Polyline([], { ...this.#look('grid'), fill: false, noClip: true }).addTo(map);
    this.#words = new leaflet.LayerGroup().addTo(map);
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
    this.#labels = watersLabels(waters, measures);
    this.#grid.bringToFront();
    this.#viewMoved();
  }

  /** Keeps words off the route through these places. */
  keepClear(places: readonly LatLon[]): void {
    if (places === this.#avoid) return;
    this.#avoid = places;
    this.#viewMoved();
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
    const map = this.#map;
    const bounds = map.getBounds();
    const wide = bounds.pad(0.4);
    const size = map.getSize();
    const step = gridStep(
      { south: bounds.getSouth(), north: bounds.getNorth(), west: bounds.getWest(), east: bounds.getEast() },
      Math.max(2, size.y / 90),
    );
    const lats = gridValues(Math.max(-85, wide.getSouth()), Math.min(85, wide.getNorth()), step);
    const lons = gridValues(wide.getWest(), wide.getEast(), step);
    this.#grid.setLatLngs([
      ...lats.map((lat): [number, number][] => [
        [lat, wide.getWest()],
        [lat, wide.getEast()],
      ]),
      ...lons.map((lon): [number, number][] => [
        [wide.getSouth(), lon],
        [wide.getNorth(), lon],
      ]),
    ]);
    this.#write({ width: size.x, height: size.y }, { lats, lons, step });
  };

  /** Words where there is room: those of the waters first, then those of the grid along the left and lower side. */
  #write(view: { width: number; height: number }, grid: { lats: number[]; lons: number[]; step: number }): void {
    const map = this.#map;
    const spot = (at: LatLon) => map.latLngToContainerPoint([at.lat, at.lon]);
    this.#words.clearLayers();
    const words: Word[] = this.#labels.map(({ at, kind, text }) => ({ kind, text, at, spots: at.map(spot) }));
    const corner = map.containerPointToLatLng([2, view.height - 2]);
    for (const lat of grid.lats) {
      const at = { lat, lon: corner.lng };
      words.push({ kind: 'grid-lat', text: gridLabel(lat, 'lat', grid.step), at: [at], spots: [spot(at)] });
    }
    for (const lon of grid.lons) {
      const at = { lat: corner.lat, lon };
      words.push({ kind: 'grid-lon', text: gridLabel(lon, 'lon', grid.step), at: [at], spots: [spot(at)] });
    }
    const boxes = words.map((word) =>
      word.spots.map((at) => boxOf(word, at)).map((box) => (inside(box, view) ? box : NONE)),
    );
    const taken = [NONE, ...controlBoxes(view), ...routeBoxes(this.#avoid.map(spot), view)];
    withoutOverlap(boxes, taken, MOST_WORDS).forEach((chosen, i) => {
      const { kind, text, at, spots } = words[i]!;
      if (chosen >= 0) this.#word(at[chosen]!, kind, text);
      // A landing whose name finds no room keeps its mark.
      else if (kind === 'landing' && inView(spots[0]!, view)) this.#word(at[0]!, kind, '');
    });
  }

  #word({ lat, lon }: LatLon, kind: string, text: string): void {
    const word = document.createElement('span');
    word.textContent = text;
    const icon = new this.#leaflet.DivIcon({ html: word, className: `word ${kind}`, iconSize: [0, 0] });
    this.#words.addLayer(
      new this.#leaflet.Marker([lat, lon], { icon, pane: 'words', interactive: false, keyboard: false }),
    );
  }
}

interface Word {
  readonly kind: MapLabel['kind'] | 'grid-lat' | 'grid-lon';
  readonly text: string;
  readonly at: readonly LatLon[];
  readonly spots: readonly Spot[];
}

/** Stands for a place that is not free: it overlaps itself in `taken`. */
const NONE: LabelBox = { x: -1e6, y: -1e6, width: 1, height: 1 };

/** About the width of the words in the size that the style sheet gives them, and a little air. */
function boxOf({ kind, text }: Word, { x, y }: Spot): LabelBox {
  const width = text.length * 6.4 + 14;
  switch (kind) {
    case 'landing':
      return { x: x + width / 2, y, width: width + 16, height: 20 };
    case 'grid-lat':
    case 'grid-lon':
      return { x: x + width / 2, y: y - 8, width, height: 14 };
    default:
      return { x, y, width, height: 18 };
  }
}

/** Buttons at the upper corners, the scale bar and whose pictures these are below. */
function controlBoxes({ width, height }: { width: number; height: number }): LabelBox[] {
  return [
    { x: width - 30, y: 55, width: 60, height: 110 },
    { x: 60, y: 28, width: 120, height: 56 },
    { x: 70, y: height - 16, width: 140, height: 32 },
  ];
}

/** What the handles take up, and the line between them in small steps; as far as it is in view. */
function routeBoxes(spots: readonly Spot[], view: { width: number; height: number }): LabelBox[] {
  const boxes: LabelBox[] = [];
  spots.forEach((spot, i) => {
    if (boxes.length >= MOST_AVOIDED) return;
    if (inView(spot, view)) boxes.push({ ...spot, width: 30, height: 30 });
    const before = spots[i - 1] ?? spot;
    const steps = Math.min(60, Math.floor(Math.hypot(spot.x - before.x, spot.y - before.y) / 20));
    for (let step = 1; step < steps; step++) {
      const at = {
        x: before.x + ((spot.x - before.x) * step) / steps,
        y: before.y + ((spot.y - before.y) * step) / steps,
      };
      if (inView(at, view)) boxes.push({ ...at, width: 8, height: 8 });
    }
  });
  return boxes;
}
