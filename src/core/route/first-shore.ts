import type { ChartBox, EdgeTree } from './edge-tree.ts';

/** From a chart point, by chart degrees per metre along it. */
export interface Ray {
  readonly x: number;
  readonly y: number;
  readonly dx: number;
  readonly dy: number;
}

/** Edges or boxes under one box of an edge tree. */
const RUN = 8;

/**
 * Distance along a ray to the first edge it crosses, m, or `reach` if none is nearer. Running along an edge is no crossing;
 * a corner that is only touched is one where its shore lies to the right.
 */
export function firstShore(shore: EdgeTree, ray: Ray, reach: number): number {
  if (!(entryOf(ray, shore) < reach)) return reach;
  const { numbers, starts } = shore;
  const { x, y, dx, dy } = ray;
  const square = dx * dx + dy * dy;
  let nearest = reach;
  const descend = (level: number, from: number, to: number): void => {
    for (let at = from; at < to; at += 4) {
      const a = numbers[at]!;
      const b = numbers[at + 1]!;
      const c = numbers[at + 2]!;
      const d = numbers[at + 3]!;
      if (level === 0) {
        const sideA = dx * (b - y) - dy * (a - x);
        const sideB = dx * (d - y) - dy * (c - x);
        if (sideA >= 0 === sideB >= 0) continue;
        const share = sideA / (sideA - sideB);
        const along = ((a + (c - a) * share - x) * dx + (b + (d - b) * share - y) * dy) / square;
        if (along >= 0 && along < nearest) nearest = along;
      } else if (entry(ray, a, b, c, d) < nearest) {
        const below = starts[level - 1]! + (at - starts[level]!) * RUN;
        descend(level - 1, below, Math.min(below + 4 * RUN, starts[level]!));
      }
    }
  };
  const top = starts.length - 2;
  descend(top, starts[top]!, starts[top + 1]!);
  return nearest;
}

/** Distance at which a ray enters a box, m; Infinity: it misses it. */
function entryOf(ray: Ray, { minX, minY, maxX, maxY }: ChartBox): number {
  return entry(ray, minX, minY, maxX, maxY);
}

function entry({ x, y, dx, dy }: Ray, minX: number, minY: number, maxX: number, maxY: number): number {
  let from = 0;
  let to = Infinity;
  if (dx !== 0) {
    const a = (minX - x) / dx;
    const b = (maxX - x) / dx;
    from = Math.max(from, Math.min(a, b));
    to = Math.max(a, b);
  } else if (x < minX || x > maxX) return Infinity;
  if (dy !== 0) {
    const a = (minY - y) / dy;
    const b = (maxY - y) / dy;
    from = Math.max(from, Math.min(a, b));
    to = Math.min(to, Math.max(a, b));
  } else if (y < minY || y > maxY) return Infinity;
  return from <= to ? from : Infinity;
}
