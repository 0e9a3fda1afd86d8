import type { Map as LeafletMap } from 'leaflet';
import type { Leaflet } from './map-life.ts';
import { panByMouse, zoomByWheel } from './map-pan.ts';
import { RouteEditor } from './route-editor.ts';
import type { RouteKeeper } from './route-keeper.ts';
import { RouteLines } from './route-lines.ts';
import { type TileState, Tiles } from './tiles.ts';
import { WatersLayer } from './waters-layer.ts';

/** What lies on a map while it lives, lowest first. */
export interface Layers {
  readonly map: LeafletMap;
  readonly leaflet: Leaflet;
  readonly tiles: Tiles;
  readonly waters: WatersLayer;
  readonly lines: RouteLines;
  readonly editor: RouteEditor;
}

/** Lays everything on a new map, and lets it be moved by mouse and wheel. */
export function layersOn(
  map: LeafletMap,
  leaflet: Leaflet,
  keeper: RouteKeeper,
  tilesTold: (state: TileState) => void,
): Layers {
  const layers: Layers = {
    map,
    leaflet,
    waters: new WatersLayer(map, leaflet),
    lines: new RouteLines(map, leaflet),
    editor: new RouteEditor(map, leaflet, keeper),
    tiles: new Tiles(map, leaflet, tilesTold),
  };
  const frame = map.getContainer();
  panByMouse(frame, map, layers.editor.signal);
  zoomByWheel(frame, map, layers.editor.signal);
  return layers;
}
