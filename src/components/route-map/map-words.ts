import type { Map as LeafletMap, Marker } from 'leaflet';
import type { LatLon } from '../../core/route/shapes.ts';
import { gridLabel } from './grid.ts';
import { inside, type LabelBox, type MapLabel, withoutOverlap } from './map-labels.ts';
import type { Leaflet } from './map-life.ts';
import { inView, type Spot } from './shown-handles.ts';

/** Degrees of the grid lines in view, and minutes between them. */
export interface GridLines {
  readonly lats: readonly number[];
  readonly lons: readonly number[];
  readonly step: number;
}

interface Word {
  readonly kind: MapLabel['kind'] | 'grid-lat' | 'grid-lon';
  readonly text: string;
  readonly at: readonly LatLon[];
  readonly spots: readonly Spot[];
}

/** Words in one view, and parts of the route they keep clear of. */
const MOST_WORDS = 60;
const MOST_AVOIDED = 300;

/** The words on the map, where there is room: those of the waters first, then those of the grid. */
export class MapWords {
  #map: LeafletMap;
  #leaflet: Leaflet;
  #labels: readonly MapLabel[] = [];
  #grid: GridLines = { lats: [], lons: [], step: 1 };
  #route: readonly LatLon[] = [];
  #written = new Map<string, Marker>();

  constructor(map: LeafletMap, leaflet: Leaflet) {
    this.#map = map;
    this.#leaflet = leaflet;
    map.createPane('words');
  }

  say(labels: readonly MapLabel[]): void {
    this.#labels = labels;
  }

  /** Keeps words off the route through these places. */
  keepClear(places: readonly LatLon[]): void {
    if (places === this.#route) return;
    this.#route = places;
    this.write(this.#grid);
  }

  /** Writes what finds room in the view as it is now; words that stay are left alone. */
  write(grid: GridLines): void {
    this.#grid = grid;
    const map = this.#map;
    const { x: width, y: height } = map.getSize();
    const view = { width, height };
    const spot = (at: LatLon) => map.latLngToContainerPoint([at.lat, at.lon]);
    const words = this.#words(view).map((word) => ({ ...word, spots: word.at.map(spot) }));
    const boxes = words.map((word) =>
      word.spots.map((at) => boxOf(word, at)).map((box) => (inside(box, view) ? box : NONE)),
    );
    const taken = [NONE, ...controlBoxes(view), ...routeBoxes(this.#route.map(spot), view)];
    const kept = new Set<string>();
    for (const [i, chosen] of withoutOverlap(boxes, taken, MOST_WORDS).entries()) {
      const { kind, text, at, spots } = words[i]!;
      // A landing whose name finds no room keeps its mark.
      const bare = chosen < 0 && kind === 'landing' && inView(spots[0]!, view);
      if (chosen >= 0 || bare) kept.add(this.#word(at[bare ? 0 : chosen]!, kind, bare ? '' : text));
    }
    for (const [key, marker] of this.#written) {
      if (kept.has(key)) continue;
      marker.remove();
      this.#written.delete(key);
    }
  }

  /** In order of need; those of the grid stand along the left and the lower side. */
  #words({ height }: { height: number }): Omit<Word, 'spots'>[] {
    const { lats, lons, step } = this.#grid;
    const corner = this.#map.containerPointToLatLng([2, height - 2]);
    return [
      ...this.#labels,
      ...lats.map((lat) => ({
        kind: 'grid-lat' as const,
        text: gridLabel(lat, 'lat', step),
        at: [{ lat, lon: corner.lng }],
      })),
      ...lons.map((lon) => ({
        kind: 'grid-lon' as const,
        text: gridLabel(lon, 'lon', step),
        at: [{ lat: corner.lat, lon }],
      })),
    ];
  }

  #word({ lat, lon }: LatLon, kind: string, text: string): string {
    const key = `${kind} ${text} ${lat} ${lon}`;
    if (this.#written.has(key)) return key;
    const html = document.createElement('span');
    html.textContent = text;
    const icon = new this.#leaflet.DivIcon({ html, className: `word ${kind}`, iconSize: [0, 0] });
    const options = { icon, pane: 'words', interactive: false, keyboard: false };
    this.#written.set(key, new this.#leaflet.Marker([lat, lon], options).addTo(this.#map));
    return key;
  }
}

/** Stands for a place that is not free: it overlaps itself among the places taken. */
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

/** Buttons at the upper corners, the scale bar below. */
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
  for (const [i, spot] of spots.entries()) {
    if (boxes.length >= MOST_AVOIDED) break;
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
  }
  return boxes;
}
