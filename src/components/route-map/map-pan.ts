import type { Map as LeafletMap, PointExpression } from 'leaflet';
import { followPointer } from './follow-pointer.ts';

/** Moves the pane without redrawing what is on it; what Leaflet's own dragging calls, and fixed in 1.9. */
interface RawPan {
  _rawPanBy(offset: PointExpression): void;
}

/**
 * Dragging the map with a mouse. Leaflet's own would also drag with one finger, which belongs to the page's scrolling,
 * and marks the page's body and the element with classes while it lasts.
 */
export function panByMouse(frame: HTMLElement, map: LeafletMap, signal: AbortSignal): void {
  const raw = map as LeafletMap & RawPan;
  let last = { x: 0, y: 0 };
  followPointer(
    frame,
    {
      accepts: (event) => event.pointerType === 'mouse' && !(event.target as Element).closest('.handle'),
      begin() {
        last = { x: 0, y: 0 };
        frame.dataset.panning = '';
        map.stop().fire('movestart');
      },
      move(x, y) {
        raw._rawPanBy([last.x - x, last.y - y]);
        last = { x, y };
        map.fire('move');
      },
      end,
      cancel: end,
    },
    signal,
  );

  function end() {
    delete frame.dataset.panning;
    map.fire('moveend');
  }
}

/** The wheel zooms only a map that has the focus, or with Ctrl; otherwise it scrolls the page. */
export function zoomByWheel(frame: HTMLElement, map: LeafletMap, signal: AbortSignal): void {
  frame.addEventListener(
    'wheel',
    (event) => {
      // Switched before Leaflet's own listener has its turn.
      if (event.ctrlKey || frame.matches(':focus-within')) map.scrollWheelZoom.enable();
      else map.scrollWheelZoom.disable();
    },
    { signal, capture: true, passive: true },
  );
}
