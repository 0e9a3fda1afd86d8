import { type EdgeTree, RUN } from './edge-tree.ts';

/** Half the width, in each chart axis, of the band about a line that `visitEdgesNear` searches. */
export interface Reach {
  readonly x: number;
  readonly y: number;
}

/** Calls `see` with every edge whose box comes within reach of a straight line, until it says true; true if it did. */
export function visitEdgesNear(
  { numbers, starts }: EdgeTree,
  line: { readonly x0: number; readonly y0: number; readonly x1: number; readonly y1: number },
  reach: Reach,
  see: (ax: number, ay: number, bx: number, by: number) => boolean,
): boolean {
  const dx = line.x1 - line.x0;
  const dy = line.y1 - line.y0;
  const minX = Math.min(line.x0, line.x1) - reach.x;
  const maxX = Math.max(line.x0, line.x1) + reach.x;
  const minY = Math.min(line.y0, line.y1) - reach.y;
  const maxY = Math.max(line.y0, line.y1) + reach.y;
  const wide = Math.abs(dy);
  const high = Math.abs(dx);
  const slack = wide * reach.x + high * reach.y;
  const descend = (level: number, from: number, to: number): boolean => {
    for (let at = from; at < to; at += 4) {
      const ax = numbers[at]!;
      const ay = numbers[at + 1]!;
      const bx = numbers[at + 2]!;
      const by = numbers[at + 3]!;
      if ((ax < minX && bx < minX) || (ax > maxX && bx > maxX)) continue;
      if ((ay < minY && by < minY) || (ay > maxY && by > maxY)) continue;
      // Boxes on one side of the band: their middle is farther from the line than their half size reaches.
      const off = Math.abs(((ay + by) / 2 - line.y0) * dx - ((ax + bx) / 2 - line.x0) * dy);
      if (off > slack + (wide * Math.abs(bx - ax) + high * Math.abs(by - ay)) / 2) continue;
      if (level === 0) {
        if (see(ax, ay, bx, by)) return true;
      } else {
        const below = starts[level - 1]! + (at - starts[level]!) * RUN;
        if (descend(level - 1, below, Math.min(below + 4 * RUN, starts[level]!))) return true;
      }
    }
    return false;
  };
  const top = starts.length - 2;
  return descend(top, starts[top]!, starts[top + 1]!);
}
