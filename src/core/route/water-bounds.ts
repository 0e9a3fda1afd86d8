import type { Position } from 'geojson';
import type { ChartBox } from './edge-tree.ts';
import type { WatersFile } from './shapes.ts';

/** Lines of positions, grouped as polygons are. */
type Lines = readonly (readonly (readonly Position[])[])[];

/** The file's bbox, east below west meaning that it spans 180 degrees; else the extent of the places, the narrower way round. */
export function boundsOf(file: WatersFile, shapes: Lines): ChartBox | undefined {
  if (file.bbox) {
    const high = file.bbox.length === 6 ? 3 : 2;
    const minX = file.bbox[0]!;
    const maxX = file.bbox[high]!;
    return { minX, minY: file.bbox[1]!, maxX: maxX < minX ? maxX + 360 : maxX, maxY: file.bbox[high + 1]! };
  }
  const straight = extent(shapes, (lon) => lon);
  const folded = extent(shapes, (lon) => (lon < 0 ? lon + 360 : lon));
  if (straight.minX > straight.maxX) return undefined;
  return folded.maxX - folded.minX < straight.maxX - straight.minX ? folded : straight;
}

function extent(shapes: Lines, x: (lon: number) => number): ChartBox {
  const box = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity };
  for (const lines of shapes) {
    for (const line of lines) {
      for (const place of line) {
        box.minX = Math.min(box.minX, x(place[0]!));
        box.minY = Math.min(box.minY, place[1]!);
        box.maxX = Math.max(box.maxX, x(place[0]!));
        box.maxY = Math.max(box.maxY, place[1]!);
      }
    }
  }
  return box;
}

/** Longitudes of waters that span 180 degrees go on past it; others stay as written. */
export function unfolded(lon: number, bounds: ChartBox | undefined): number {
  if (!bounds || bounds.maxX <= 180) return lon;
  return bounds.minX + bounds.maxX - 2 * lon > 360 ? lon + 360 : lon;
}
