import type { Map as LeafletMap } from 'leaflet';
import { html, nothing } from 'lit';
import type { Measures } from '../units/measures.ts';
import { distanceBetween } from './route-names.ts';

/** CSS pixels the bar may take. */
const ROOM = 110;

/** The longest round distance, m, in the units of `measures` that is no longer than `most`, m. */
export function roundDistance(most: number, measures: Measures): number {
  const shown = measures.fromSi('distance', most);
  const power = 10 ** Math.floor(Math.log10(shown));
  const round = [5, 2, 1].find((figure) => figure * power <= shown) ?? 1;
  return measures.toSi('distance', round * power);
}

/** How long a distance is at the middle of the map. */
export function scaleBar(map: LeafletMap, measures: Measures) {
  const { x, y } = map.getSize();
  const at = (offset: number) => {
    const { lat, lng } = map.containerPointToLatLng([x / 2 + offset, y / 2]);
    return { lat, lon: lng };
  };
  const metresPerPixel = distanceBetween(at(-ROOM / 2), at(ROOM / 2)) / ROOM;
  // Seen from afar the middle of the world has no one scale.
  if (!(metresPerPixel > 0) || metresPerPixel > 20_000) return nothing;
  const distance = roundDistance(metresPerPixel * ROOM, measures);
  const width = Math.round(distance / metresPerPixel);
  return html`<p class="scale">
    ${measures.show('distance', distance)}
    <svg width=${width + 2} height="6" aria-hidden="true"><path d="M1 0v5h${width}v-5" stroke-width="1.5" /></svg>
  </p>`;
}
