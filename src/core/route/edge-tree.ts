import type { Position } from 'geojson';

/** A box in chart degrees: x is longitude made continuous, y latitude. */
export interface ChartBox {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/**
 * The edges of one polygon under a tree of boxes. Edges that follow each other on a shore lie together, so boxes over
 * runs of them in the order drawn need no sorting: made in linear time, searched in about log n.
 */
export interface EdgeTree extends ChartBox {
  /** Level by level: ax, ay, bx, by of every edge, then minX, minY, maxX, maxY of every run of the level before. */
  readonly numbers: Float64Array;
  /** Where each level begins in `numbers`, and where the last one ends. */
  readonly starts: readonly number[];
}

/** Edges or boxes under one box. */
export const RUN = 8;

/** Indexes the edges of rings of GeoJSON positions, open or closed; `x` makes longitudes continuous. */
export function edgeTree(rings: readonly (readonly Position[])[], x: (lon: number) => number): EdgeTree {
  const starts = [0];
  let count = 0;
  for (const ring of rings) eachEdge(ring, () => count++);
  let total = 4 * count;
  for (; count > 1; total += 4 * count) {
    starts.push(total);
    count = Math.ceil(count / RUN);
  }
  starts.push(total);
  const numbers = new Float64Array(total);
  let at = 0;
  for (const ring of rings) {
    eachEdge(ring, (a, b) => {
      numbers[at++] = x(a[0]!);
      numbers[at++] = a[1]!;
      numbers[at++] = x(b[0]!);
      numbers[at++] = b[1]!;
    });
  }
  for (let level = 1; level < starts.length - 1; level++) boxRuns(numbers, starts, level);
  if (total === 0) return { numbers, starts, minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity };
  const [minX, minY, maxX, maxY] = numbers.subarray(total - 4) as unknown as [number, number, number, number];
  return { numbers, starts, minX, minY, maxX, maxY };
}

/** Calls `see` with every edge whose own box meets a box. */
export function visitEdges(
  { numbers, starts }: EdgeTree,
  box: ChartBox,
  see: (ax: number, ay: number, bx: number, by: number) => void,
): void {
  const { minX, minY, maxX, maxY } = box;
  const descend = (level: number, from: number, to: number): void => {
    for (let at = from; at < to; at += 4) {
      const ax = numbers[at]!;
      const ay = numbers[at + 1]!;
      const bx = numbers[at + 2]!;
      const by = numbers[at + 3]!;
      if (level === 0) {
        if ((ax < minX && bx < minX) || (ax > maxX && bx > maxX)) continue;
        if ((ay < minY && by < minY) || (ay > maxY && by > maxY)) continue;
        see(ax, ay, bx, by);
      } else if (ax <= maxX && bx >= minX && ay <= maxY && by >= minY) {
        const below = starts[level - 1]! + (at - starts[level]!) * RUN;
        descend(level - 1, below, Math.min(below + 4 * RUN, starts[level]!));
      }
    }
  };
  const top = starts.length - 2;
  descend(top, starts[top]!, starts[top + 1]!);
}

/** Edges of a ring, closing it; repeated vertices make none. */
function eachEdge(ring: readonly Position[], see: (a: Position, b: Position) => void): void {
  let before = ring[ring.length - 1];
  for (const vertex of ring) {
    if (before && (vertex[0] !== before[0] || vertex[1] !== before[1])) see(before, vertex);
    before = vertex;
  }
}

function boxRuns(numbers: Float64Array, starts: readonly number[], level: number): void {
  let to = starts[level]!;
  for (let run = starts[level - 1]!; run < starts[level]!; run += 4 * RUN) {
    let minX = Infinity;
    let minY = Infinity;
    let maxX = -Infinity;
    let maxY = -Infinity;
    const end = Math.min(run + 4 * RUN, starts[level]!);
    for (let at = run; at < end; at += 4) {
      minX = Math.min(minX, numbers[at]!, numbers[at + 2]!);
      minY = Math.min(minY, numbers[at + 1]!, numbers[at + 3]!);
      maxX = Math.max(maxX, numbers[at]!, numbers[at + 2]!);
      maxY = Math.max(maxY, numbers[at + 1]!, numbers[at + 3]!);
    }
    numbers[to++] = minX;
    numbers[to++] = minY;
    numbers[to++] = maxX;
    numbers[to++] = maxY;
  }
}
