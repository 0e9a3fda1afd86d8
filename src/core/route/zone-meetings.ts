import { type ChartBox, type EdgeTree, visitEdges } from './edge-tree.ts';

/** A straight line on the chart: x is longitude made continuous, y latitude, both degrees. */
export interface ChartLine {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

/** A point this near an edge, degrees, lies on it: about a micrometre. */
const ON_EDGE = 1e-11;

/** Sine of the angle below which a line and an edge are parallel. */
const PARALLEL = 1e-9;

/** Most pieces in which a slanting line is searched, so that its boxes stay slim. */
const MOST_PIECES = 16;

/**
 * Whether a chart point lies in the polygon, outside its holes; its edges belong to it. Counts the edges on the ray to
 * the nearer side, found by the tree, so that a long shore costs little more than a short one.
 */
export function holds(shore: EdgeTree, x: number, y: number): boolean {
  if (x < shore.minX || x > shore.maxX || y < shore.minY || y > shore.maxY) return false;
  const eastward = shore.maxX - x < x - shore.minX;
  const ray = { x0: eastward ? x : shore.minX, y0: y, x1: eastward ? shore.maxX : x, y1: y };
  let inside = false;
  let onEdge = false;
  visitEdges(shore, boxOf(ray), (ax, ay, bx, by) => {
    if (nearEdge(x, y, { x0: ax, y0: ay, x1: bx, y1: by })) onEdge = true;
    else if (ay > y !== by > y) {
      const crossing = ax + ((y - ay) / (by - ay)) * (bx - ax);
      if (eastward ? crossing > x : crossing < x) inside = !inside;
    }
  });
  return onEdge || inside;
}

/**
 * Adds the shares of a line, 0 to 1, at which it meets an edge: crossings, touched vertices, and both ends of edges
 * it runs along. Some may stand twice; none is missing.
 */
export function addMeetings(shore: EdgeTree, line: ChartLine, shares: number[]): void {
  const rx = line.x1 - line.x0;
  const ry = line.y1 - line.y0;
  const r = Math.hypot(rx, ry);
  if (r === 0) return;
  const add = (share: number) => {
    if (share > 0 && share < 1) shares.push(share);
  };
  const meet = (ax: number, ay: number, bx: number, by: number) => {
    const sx = bx - ax;
    const sy = by - ay;
    const s = Math.hypot(sx, sy);
    const qx = ax - line.x0;
    const qy = ay - line.y0;
    const cross = rx * sy - ry * sx;
    if (Math.abs(cross) > PARALLEL * r * s) {
      const alongEdge = ((qx * ry - qy * rx) / cross) * s;
      if (alongEdge >= -ON_EDGE && alongEdge <= s + ON_EDGE) add((qx * sy - qy * sx) / cross);
    } else if (Math.abs(qx * ry - qy * rx) <= (ON_EDGE + PARALLEL * s) * r) {
      add((qx * rx + qy * ry) / (r * r));
      add(((qx + sx) * rx + (qy + sy) * ry) / (r * r));
    }
  };
  const pieces = piecesOf(shore, line);
  for (let piece = 0; piece < pieces; piece++) {
    const a = piece / pieces;
    const b = (piece + 1) / pieces;
    const stretch = { x0: line.x0 + rx * a, y0: line.y0 + ry * a, x1: line.x0 + rx * b, y1: line.y0 + ry * b };
    visitEdges(shore, boxOf(stretch), meet);
  }
}

/** One piece for a line along an axis or short against the polygon, more the larger the box it spans. */
function piecesOf(shore: EdgeTree, line: ChartLine): number {
  const wide = Math.abs(line.x1 - line.x0) / (shore.maxX - shore.minX);
  const high = Math.abs(line.y1 - line.y0) / (shore.maxY - shore.minY);
  return Math.min(MOST_PIECES, Math.max(1, Math.ceil(MOST_PIECES * Math.min(wide, high))));
}

/** The box of a line, a hair wider, so that what it touches is found. */
export function boxOf({ x0, y0, x1, y1 }: ChartLine): ChartBox {
  return {
    minX: Math.min(x0, x1) - ON_EDGE,
    minY: Math.min(y0, y1) - ON_EDGE,
    maxX: Math.max(x0, x1) + ON_EDGE,
    maxY: Math.max(y0, y1) + ON_EDGE,
  };
}

function nearEdge(x: number, y: number, edge: ChartLine): boolean {
  const sx = edge.x1 - edge.x0;
  const sy = edge.y1 - edge.y0;
  const along = ((x - edge.x0) * sx + (y - edge.y0) * sy) / (sx * sx + sy * sy);
  const share = Math.min(1, Math.max(0, along));
  const dx = x - edge.x0 - share * sx;
  const dy = y - edge.y0 - share * sy;
  return dx * dx + dy * dy <= ON_EDGE * ON_EDGE;
}
