import type { Position } from 'geojson';
import { edgeTree, visitEdges } from './edge-tree.ts';
import type { LatLon } from './shapes.ts';

/**
 * Where the rings of one polygon cross themselves or each other, degrees; touching is no crossing. Longitudes as they
 * are written: a ring across the 180th meridian is cut there by RFC 7946.
 */
export function selfCrossings(rings: readonly (readonly Position[])[], most = 20): LatLon[] {
  const tree = edgeTree(rings, (lon) => lon);
  const found: LatLon[] = [];
  const { numbers, starts } = tree;
  const edges = starts[1] ?? 0;
  for (let at = 0; at < edges && found.length < most; at += 4) {
    const [ax, ay, bx, by] = numbers.subarray(at, at + 4) as unknown as [number, number, number, number];
    const box = { minX: Math.min(ax, bx), minY: Math.min(ay, by), maxX: Math.max(ax, bx), maxY: Math.max(ay, by) };
    visitEdges(tree, box, (cx, cy, dx, dy) => {
      const along = crossing(ax, ay, bx, by, cx, cy, dx, dy);
      // Each pair is met twice; the edge whose start comes first tells of it. Edges from one start do not cross.
      const first = ax < cx || (ax === cx && ay < cy);
      if (along === undefined || !first || found.length >= most) return;
      found.push({ lat: ay + (by - ay) * along, lon: ax + (bx - ax) * along });
    });
  }
  return found;
}

/** Share of a to b at which c to d properly crosses it. */
function crossing(ax: number, ay: number, bx: number, by: number, cx: number, cy: number, dx: number, dy: number) {
  const side = (px: number, py: number, qx: number, qy: number, rx: number, ry: number) =>
    (qx - px) * (ry - py) - (qy - py) * (rx - px);
  const [c, d] = [side(ax, ay, bx, by, cx, cy), side(ax, ay, bx, by, dx, dy)];
  const [a, b] = [side(cx, cy, dx, dy, ax, ay), side(cx, cy, dx, dy, bx, by)];
  return c * d < 0 && a * b < 0 ? a / (a - b) : undefined;
}
