import type { Map as LeafletMap, Marker, Polyline, Renderer } from 'leaflet';
import type { LatLon } from '../../core/route/shapes.ts';
import type { LegPlan, TurnBack } from '../../core/trip/shapes.ts';
import type { Leaflet } from './map-life.ts';
import { unbroken } from './route-names.ts';
import { mapWords } from './words.ts';

/** Something to beware of on the way, where it is. */
export interface Hazard {
  readonly at: LatLon;
  readonly text: string;
}

interface Mark extends Hazard {
  readonly kind: 'hazard' | 'turn-back';
}

/**
 * The route as a line. From the plan, the way home adds stripes and slowed water adds ticks, so that each is told by
 * its pattern; and the marks on it: where to turn back at the latest, and hazards.
 */
export class RouteLines {
  #map: LeafletMap;
  #leaflet: Leaflet;
  #renderer: Renderer;
  #slowed: Polyline;
  #casing: Polyline;
  #route: Polyline;
  #home: Polyline;
  #marks: Marker[] = [];

  constructor(map: LeafletMap, leaflet: Leaflet) {
    this.#map = map;
    this.#leaflet = leaflet;
    this.#renderer = new leaflet.SVG({ padding: 0.4 }).addTo(map);
    const line = (className: string, weight: number, dashArray?: string) =>
      new leaflet.Polyline([], {
        className,
        weight,
        ...(dashArray && { dashArray, lineCap: 'butt' }),
        renderer: this.#renderer,
        interactive: false,
        smoothFactor: 1,
      }).addTo(map);
    this.#slowed = line('slowed', 15, '2 7');
    this.#casing = line('casing', 8);
    this.#route = line('route', 5);
    this.#home = line('home', 2, '7 7');
    map.on('moveend', this.#turnMarks);
  }

  drawRoute(waypoints: readonly LatLon[], closed: boolean): void {
    const places = unbroken(waypoints, closed);
    this.#casing.setLatLngs(places);
    this.#route.setLatLngs(places);
  }

  /** Undefined while the legs known belong to the route before the last edit. */
  drawLegs(legs: readonly LegPlan[] | undefined): void {
    this.#home.setLatLngs(joined(legs?.filter((leg) => leg.part === 'home') ?? []));
    this.#slowed.setLatLngs(joined(legs?.filter((leg) => leg.limit !== undefined) ?? []));
  }

  drawMarks(turnBack: TurnBack | undefined, hazards: readonly Hazard[]): void {
    const marks: Mark[] = hazards.map(({ at, text }) => ({ at, text, kind: 'hazard' }));
    // A point beyond the turn of the trip is not on the line.
    if (turnBack?.onRoute) marks.push({ at: turnBack.at, text: mapWords.turnBack, kind: 'turn-back' });
    for (const marker of this.#marks.splice(marks.length)) marker.remove();
    for (const [i, mark] of marks.entries()) this.#drawMark(mark, i);
    this.#turnMarks();
  }

  /** New plans come with every frame of a drag, so marks are moved rather than made anew. */
  #drawMark({ at, text, kind }: Mark, i: number): void {
    this.#marks[i] ??= this.#newMark();
    const box = this.#marks[i].setLatLng([at.lat, at.lon]).getElement();
    if (!box) return;
    box.classList.toggle('hazard', kind === 'hazard');
    if (box.textContent !== text) box.firstElementChild!.textContent = text;
  }

  #newMark(): Marker {
    const html = document.createElement('span');
    const icon = new this.#leaflet.DivIcon({ html, className: 'mark', iconSize: [0, 0] });
    const options = { icon, interactive: false, keyboard: false, zIndexOffset: -1000 };
    return new this.#leaflet.Marker([0, 0], options).addTo(this.#map);
  }

  /** Words stand on the side where there is room for them. */
  #turnMarks = (): void => {
    const middle = this.#map.getSize().x / 2;
    for (const mark of this.#marks) {
      const { x } = this.#map.latLngToContainerPoint(mark.getLatLng());
      mark.getElement()?.classList.toggle('leftward', x > middle);
    }
  };
}

/** One line for each run of stretches that meet, so that dashes go on across the joins. */
function joined(legs: readonly LegPlan[]): [number, number][][] {
  const runs: LatLon[][] = [];
  let end: LatLon | undefined;
  for (const { from, to } of legs) {
    if (end && end.lat === from.lat && end.lon === from.lon) runs.at(-1)!.push(to);
    else runs.push([from, to]);
    end = to;
  }
  return runs.map((run) => unbroken(run, false));
}
