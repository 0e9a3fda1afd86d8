import type { Map as LeafletMap, Marker } from 'leaflet';
import type { LatLon } from '../../core/route/shapes.ts';
import type { Leaflet } from './map-life.ts';
import type { Drawing } from './route-keeper.ts';
import type { Spot } from './shown-handles.ts';

export interface Handle {
  readonly marker: Marker;
  readonly box: HTMLElement;
}

/** Nearer than this to a neighbour, a waypoint's hit area shrinks so that both can be hit. */
const CROWDED = 44;

/** Handles of one kind on the map, by the index of what they move. */
export class Handles {
  #map: LeafletMap;
  #leaflet: Leaflet;
  #className: string;
  #all = new Map<number, Handle>();

  constructor(map: LeafletMap, leaflet: Leaflet, className: string) {
    this.#map = map;
    this.#leaflet = leaflet;
    this.#className = className;
  }

  get(index: number): Handle | undefined {
    return this.#all.get(index);
  }

  boxes(): Iterable<[number, HTMLElement]> {
    return [...this.#all].map(([index, { box }]): [number, HTMLElement] => [index, box]);
  }

  /** Takes away all that are not wanted. */
  keep(wanted: ReadonlySet<number>): void {
    for (const [index, { marker }] of this.#all) {
      if (wanted.has(index)) continue;
      marker.remove();
      this.#all.delete(index);
    }
  }

  /** The handle there, moved; made where there is none yet. */
  put(index: number, at: LatLon, box: () => HTMLElement): Handle {
    const known = this.#all.get(index);
    if (known) {
      known.marker.setLatLng([at.lat, at.lon]);
      return known;
    }
    const made = this.#made(at, box());
    this.#all.set(index, made);
    return made;
  }

  #made(at: LatLon, box: HTMLElement): Handle {
    const icon = new this.#leaflet.DivIcon({ html: box, className: this.#className, iconSize: [44, 44] });
    const options = { icon, interactive: false, keyboard: false, autoPanOnFocus: false };
    const marker = new this.#leaflet.Marker([at.lat, at.lon], options).addTo(this.#map);
    // Leaflet listens on the frame around it; what happens on a handle is ours.
    for (const type of ['click', 'touchstart', 'mousedown'] as const) {
      box.addEventListener(type, (event) => event.stopPropagation(), { passive: true });
    }
    return { marker, box };
  }
}

/** Names a waypoint's handle, and shows whether it is selected, an end, in the tab order, or close to its neighbours. */
export function dress(
  { marker, box }: Handle,
  index: number,
  { selected, nameOf, roleOf }: Drawing,
  spots: readonly Spot[],
  current: number,
): void {
  marker.setZIndexOffset(index === selected ? 1000 : 0);
  setAttribute(box, 'aria-label', nameOf(index));
  setAttribute(box, 'aria-pressed', String(index === selected));
  setAttribute(box, 'tabindex', index === current ? '0' : '-1');
  const role = roleOf(index);
  // Drawn by the sheet: the name of the button says it in its own words.
  setAttribute(box, 'data-role', role ?? '');
  box.classList.toggle('end', role !== undefined);
  const near = (other: Spot | undefined) =>
    other !== undefined && Math.hypot(spots[index]!.x - other.x, spots[index]!.y - other.y) < CROWDED;
  box.classList.toggle('near', near(spots[index - 1]) || near(spots[index + 1]));
}

/** Only where it changes: a new tabindex on what has the focus makes the browser lay out the page at once. */
export function setAttribute(box: HTMLElement, name: string, value: string): void {
  if (box.getAttribute(name) !== value) box.setAttribute(name, value);
}
