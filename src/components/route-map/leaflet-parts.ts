/*
 * What the map needs of Leaflet 1.9.4, taken from its source modules: 23 kB gzip instead of 43 for the whole. The 1.9
 * line is frozen, so the paths stay. Only ever imported on demand: Leaflet reads `window` while it loads.
 */
import 'leaflet/src/map/handler/Map.ScrollWheelZoom.js';
import 'leaflet/src/map/handler/Map.TouchZoom.js';
import type { Path, Renderer, TileLayer } from 'leaflet';
import { Map as LeafletMap } from 'leaflet/src/map/Map.js';

export { LayerGroup } from 'leaflet/src/layer/LayerGroup.js';
export { DivIcon } from 'leaflet/src/layer/marker/DivIcon.js';
export { Marker } from 'leaflet/src/layer/marker/Marker.js';
export { Polygon } from 'leaflet/src/layer/vector/Polygon.js';
export { Polyline } from 'leaflet/src/layer/vector/Polyline.js';
export { SVG } from 'leaflet/src/layer/vector/SVG.js';
export { LeafletMap };

// Stands in for the module that chooses between SVG and canvas and so would bring both: our paths name their renderer.
LeafletMap.include({
  getRenderer(this: LeafletMap, { options }: Path): Renderer | undefined {
    const { renderer } = options;
    if (renderer && !this.hasLayer(renderer)) this.addLayer(renderer);
    return renderer;
  },
});

/** What shows map pictures, a seventh of all this; a map without them does without it. */
export async function tileLayer(): Promise<typeof TileLayer> {
  return (await import('leaflet/src/layer/tile/TileLayer.js')).TileLayer;
}
