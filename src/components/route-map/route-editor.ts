import type { Map as LeafletMap, LeafletMouseEvent, Point } from 'leaflet';
import type { LatLon, Waypoint } from '../../core/route/shapes.ts';
import { followPointer } from './follow-pointer.ts';
import { dress, Handles, setAttribute } from './handles.ts';
import { ARROW_KEYS } from './map-keys.ts';
import type { Leaflet } from './map-life.ts';
import type { RouteKeeper } from './route-keeper.ts';
import { inView, type Spot, shownHandles } from './shown-handles.ts';
import { addedAtEnd, deletedAt, type EditKind, insertedAt, movedTo, place, placeToInsert } from './waypoint-edits.ts';

/** CSS pixels one arrow key moves a waypoint; with Shift one. */
const NUDGE = 8;
/** A leg shorter than this on screen has no handle in its middle: it would sit on those of its ends. */
const LEG_WITH_MIDDLE = 96;
/** Where a waypoint with the focus is not under the buttons above or the help below. */
const CLEAR = {
  paddingTopLeft: [40, 70] as [number, number],
  paddingBottomRight: [60, 100] as [number, number],
  animate: false,
};
/** Editing the route on the map: handles on the waypoints and in the middle of legs; by pointer, taps alone, or keys. */
export class RouteEditor {
  #map: LeafletMap;
  #keeper: RouteKeeper;
  #ends = new AbortController();
  #handles: Handles;
  #middles: Handles;
  /** Breaks off the drag that is going on. */
  #dropDrag: (() => void) | undefined;
  /** The waypoint in the tab order. */
  #current = 0;
  /** A waypoint moved by keys, and where it was when it got the focus. */
  #nudged: { index: number; from: LatLon; pending: boolean } | undefined;

  constructor(map: LeafletMap, leaflet: Leaflet, keeper: RouteKeeper) {
    this.#map = map;
    this.#handles = new Handles(map, leaflet, 'waypoint');
    this.#middles = new Handles(map, leaflet, 'middle-box');
    this.#keeper = keeper;
    map.on('click', this.#mapTapped).on('moveend', this.draw);
  }

  /** A drag or a key press is going on: the route must not be changed from outside. */
  get busy(): boolean {
    return this.#dropDrag !== undefined || this.#nudged?.pending === true;
  }

  get signal(): AbortSignal {
    return this.#ends.signal;
  }

  end(): void {
    this.#ends.abort();
    this.#map.off('click', this.#mapTapped).off('moveend', this.draw);
  }

  /** Brings the handles in line with the drawing and the view. */
  draw = (): void => {
    if (this.busy) return;
    const drawing = this.#keeper.drawing();
    const { waypoints, closed, selected } = drawing;
    const count = waypoints.length;
    this.#current = Math.max(0, Math.min(this.#current, count - 1));
    const spots = waypoints.map((waypoint) => this.#spot(waypoint));
    const size = this.#map.getSize();
    const view = { width: size.x, height: size.y };
    const always = new Set([0, count - 1, this.#current, selected ?? 0]);
    const shown = shownHandles(spots, view, always);
    this.#handles.keep(new Set(shown));
    for (const index of shown) {
      const handle = this.#handles.put(index, waypoints[index]!, () => this.#waypointButton(index));
      dress(handle, index, drawing, spots, this.#current);
    }
    const here = spots.reduce((sum, spot) => sum + Number(inView(spot, view)), 0);
    this.#keeper.thinned(shown.filter((index) => inView(spots[index]!, view)).length < here);

    const legs = new Map<number, LatLon>();
    for (let index = 1; index < count + Number(closed && count > 2); index++) {
      const a = spots[index - 1]!;
      const b = spots[index % count]!;
      const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
      if (Math.hypot(a.x - b.x, a.y - b.y) < LEG_WITH_MIDDLE || !inView(middle, view)) continue;
      if (legs.size < 100) legs.set(index, this.#placeAt(middle));
    }
    this.#middles.keep(new Set(legs.keys()));
    for (const [index, at] of legs) this.#middles.put(index, at, () => this.#middle(index, at));
  };

  /** Moves the waypoint by CSS pixels, as a finished edit; for buttons. */
  move(index: number, x: number, y: number): void {
    const { waypoints } = this.#keeper.drawing();
    const at = waypoints[index];
    if (!at) return;
    const spot = this.#spot(at);
    this.#commit(movedTo(waypoints, index, this.#placeAt({ x: spot.x + x, y: spot.y + y })), 'moved', index);
    this.#show(index);
  }

  /** Puts a new waypoint before or after one, on the leg there, and selects it so that the next tap moves it. */
  insert(index: number): void {
    const { waypoints, closed } = this.#keeper.drawing();
    const beside = waypoints[index] ?? waypoints[index - 1];
    if (!beside) return;
    const spot = this.#spot(beside);
    const at = placeToInsert(waypoints, index, closed) ?? this.#placeAt({ x: spot.x + 60, y: spot.y });
    this.#commit(insertedAt(waypoints, index, at), 'inserted', index);
    this.select(index);
  }

  delete(index: number): void {
    const { waypoints } = this.#keeper.drawing();
    this.#keeper.selected(undefined);
    this.#nudged = undefined;
    this.#commit(deletedAt(waypoints, index), 'deleted', index);
    if (waypoints.length > 1) this.#focus(Math.min(index, waypoints.length - 2));
    else this.#map.getContainer().focus();
  }

  /** Selects a waypoint and brings it into view and focus; undefined lets go. */
  select(index: number | undefined): void {
    this.#keeper.selected(index);
    this.draw();
    if (index !== undefined) this.#focus(index);
  }

  /** Ends the selection and gives the waypoint the focus that its buttons had. */
  letGo(index: number): void {
    this.#keeper.selected(undefined);
    this.#focus(index);
  }

  /** What a tap on the water, or Enter at the cross, does there: moves the selected waypoint, or adds one at the end. */
  tapAt(at: LatLon): void {
    const { waypoints, selected } = this.#keeper.drawing();
    if (selected === undefined) {
      this.#commit(addedAtEnd(waypoints, at), 'added', waypoints.length);
      return;
    }
    this.#keeper.selected(undefined);
    this.#commit(movedTo(waypoints, selected, at), 'moved', selected);
  }

  /** Escape: breaks off a drag, takes back a move by keys, or lets go of the selection. */
  cancel(): void {
    const { selected, waypoints } = this.#keeper.drawing();
    const nudged = this.#nudged;
    this.#nudged = undefined;
    if (this.#dropDrag) this.#dropDrag();
    else if (nudged?.pending) this.#dropped();
    else if (nudged) this.#commit(movedTo(waypoints, nudged.index, nudged.from), 'moved', nudged.index);
    else if (selected !== undefined) this.select(undefined);
  }

  #mapTapped = ({ latlng }: LeafletMouseEvent): void => {
    this.tapAt({ lat: latlng.lat, lon: latlng.lng });
  };

  #spot({ lat, lon }: LatLon): Point {
    return this.#map.latLngToContainerPoint([lat, lon]);
  }

  #placeAt({ x, y }: Spot): LatLon {
    const { lat, lng } = this.#map.containerPointToLatLng([x, y]);
    return { lat, lon: lng };
  }

  #waypointButton(index: number): HTMLButtonElement {
    const button = document.createElement('button');
    button.type = 'button';
    button.className = 'handle';
    button.setAttribute('aria-describedby', 'waypoint-keys');
    const dot = document.createElement('span');
    dot.className = 'dot';
    dot.textContent = String(index + 1);
    button.append(dot);
    const move = (): [EditKind, readonly Waypoint[]] => ['moved', this.#keeper.drawing().waypoints];
    this.#followDrag(button, index, this.#handles, move);
    button.addEventListener('click', () => {
      this.select(this.#keeper.drawing().selected === index ? undefined : index);
    });
    button.addEventListener('focus', () => {
      if (this.#current === index) return;
      this.#current = index;
      for (const [other, box] of this.#handles.boxes()) setAttribute(box, 'tabindex', other === index ? '0' : '-1');
    });
    button.addEventListener('keydown', (event) => this.#waypointKey(event, index));
    button.addEventListener('keyup', () => this.#settleNudge());
    button.addEventListener('blur', () => {
      this.#settleNudge();
      this.#nudged = undefined;
    });
    return button;
  }

  /** Not a button: keys have "insert before" and "insert after" for this. */
  #middle(index: number, at: LatLon): HTMLElement {
    const box = document.createElement('span');
    box.className = 'handle middle';
    const grown = (): [EditKind, readonly Waypoint[]] => {
      const { waypoints, closed } = this.#keeper.drawing();
      return ['inserted', insertedAt(waypoints, index, placeToInsert(waypoints, index, closed) ?? at)];
    };
    this.#followDrag(box, index, this.#middles, grown);
    box.addEventListener('click', () => this.insert(index));
    return box;
  }

  #followDrag(box: HTMLElement, index: number, handles: Handles, begun: () => [EditKind, readonly Waypoint[]]): void {
    const self = () => handles.get(index);
    let what: EditKind = 'moved';
    let waypoints: readonly Waypoint[] = [];
    let from: Spot = { x: 0, y: 0 };
    const over = () => {
      this.#dropDrag = undefined;
      delete this.#map.getContainer().dataset.dragging;
      self()?.marker.setZIndexOffset(0);
    };
    const drop = followPointer(
      box,
      {
        begin: () => {
          this.#settleNudge();
          [what, waypoints] = begun();
          const { lat, lng } = self()!.marker.setZIndexOffset(1000).getLatLng();
          from = this.#spot({ lat, lon: lng });
          this.#dropDrag = drop;
          this.#map.getContainer().dataset.dragging = '';
        },
        move: (x, y) => {
          const at = place(this.#placeAt({ x: from.x + x, y: from.y + y }));
          waypoints = movedTo(waypoints, index, at);
          self()?.marker.setLatLng([at.lat, at.lon]);
          this.#keeper.edited({ waypoints, live: true, what, index });
        },
        end: () => {
          over();
          this.#commit(waypoints, what, index);
        },
        cancel: () => {
          over();
          this.#dropped();
        },
      },
      this.signal,
    );
  }

  #waypointKey(event: KeyboardEvent, index: number): void {
    const arrow = ARROW_KEYS[event.key];
    const last = this.#keeper.drawing().waypoints.length - 1;
    const goes: Record<string, number> = { PageDown: index + 1, PageUp: index - 1, Home: 0, End: last };
    const next = goes[event.key];
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    if (arrow) this.#nudge(index, arrow, event.shiftKey ? 1 : NUDGE);
    else if (next !== undefined) this.#focus(Math.max(0, Math.min(last, next)));
    else if (event.key === 'Delete' || event.key === 'Backspace') this.delete(index);
    else return;
    event.preventDefault();
    event.stopPropagation();
  }

  #nudge(index: number, [x, y]: readonly [number, number], size: number): void {
    const { waypoints } = this.#keeper.drawing();
    const now = waypoints[index]!;
    this.#nudged ??= { index, from: { lat: now.lat, lon: now.lon }, pending: true };
    this.#nudged.pending = true;
    const spot = this.#spot(now);
    const at = place(this.#placeAt({ x: spot.x + x * size, y: spot.y + y * size }));
    this.#handles.get(index)?.marker.setLatLng([at.lat, at.lon]);
    this.#keeper.edited({ waypoints: movedTo(waypoints, index, at), live: true, what: 'moved', index });
    this.#show(index);
  }

  /** A key let go ends the edit it made; the place to go back to on Escape is kept until the focus leaves. */
  #settleNudge(): void {
    if (!this.#nudged?.pending) return;
    this.#nudged.pending = false;
    this.#commit(this.#keeper.drawing().waypoints, 'moved', this.#nudged.index);
  }

  #commit(waypoints: readonly Waypoint[], what: EditKind, index: number): void {
    this.#keeper.edited({ waypoints, live: false, what, index });
    this.draw();
  }

  #dropped(): void {
    this.#keeper.editDropped();
    this.draw();
  }

  #focus(index: number): void {
    this.#current = index;
    this.draw();
    this.#show(index);
    this.#handles.get(index)?.box.focus({ preventScroll: true });
  }

  #show(index: number): void {
    const at = this.#keeper.drawing().waypoints[index];
    if (at) this.#map.panInside([at.lat, at.lon], CLEAR);
  }
}
