/** A point of a drawing, px. */
export type Point = readonly [x: number, y: number];

/** Figures beyond any screen are held at a distance that every renderer accepts, px. */
const FAR = 1e5;

/**
 * A smooth path through points of rising x that never swings past them: cubic pieces with the slopes of Fritsch and
 * Carlson 1980, SIAM J. Numer. Anal. 17(2), in the three-point form (from memory).
 */
export function smoothPath(points: readonly Point[]): string {
  const held = points.map(hold);
  return held.length === 0 ? '' : `M${pair(held[0]!)}${curvesThrough(held)}`;
}

/** Closed path between two smooth lines over the same x. */
export function bandPath(lower: readonly Point[], upper: readonly Point[]): string {
  if (lower.length === 0 || upper.length === 0) return '';
  const back = upper.map(hold).toReversed();
  return `${smoothPath(lower)}L${pair(back[0]!)}${curvesThrough(back)}Z`;
}

function curvesThrough(points: readonly Point[]): string {
  const slopes = slopesAt(points);
  let path = '';
  for (let i = 1; i < points.length; i++) {
    const [[x0, y0], [x1, y1]] = [points[i - 1]!, points[i]!];
    const third = (x1 - x0) / 3;
    path += `C${pair([x0 + third, y0 + slopes[i - 1]! * third])} ${pair([x1 - third, y1 - slopes[i]! * third])} ${pair([x1, y1])}`;
  }
  return path;
}

/** Harmonic mean of the slopes to both sides, weighted by their widths; level where they change sign. */
function slopesAt(points: readonly Point[]): readonly number[] {
  const between = points.slice(1).map(([x, y], i) => {
    const [x0, y0] = points[i]!;
    return x === x0 ? 0 : (y - y0) / (x - x0);
  });
  return points.map(([x], i) => {
    const [before, after] = [between[i - 1], between[i]];
    if (before === undefined || after === undefined) return before ?? after ?? 0;
    if (before * after <= 0) return 0;
    const [left, right] = [Math.abs(x - points[i - 1]![0]), Math.abs(points[i + 1]![0] - x)];
    const [w1, w2] = [2 * right + left, right + 2 * left];
    return (w1 + w2) / (w1 / before + w2 / after);
  });
}

/** Runs of neighbours whose steps from one to the next are alike; each run starts where the last one ends. */
export function runs<T, K>(
  items: readonly T[],
  kindOf: (from: T, to: T) => K,
): readonly { kind: K; items: readonly T[] }[] {
  const found: { kind: K; items: T[] }[] = [];
  for (let i = 1; i < items.length; i++) {
    const [from, to] = [items[i - 1]!, items[i]!];
    const kind = kindOf(from, to);
    const last = found.at(-1);
    if (last?.kind === kind) last.items.push(to);
    else found.push({ kind, items: [from, to] });
  }
  return found;
}

function hold([x, y]: Point): Point {
  return [Math.min(Math.max(x, -FAR), FAR), Math.min(Math.max(y, -FAR), FAR)];
}

function pair([x, y]: Point): string {
  return `${Math.round(x * 100) / 100 + 0} ${Math.round(y * 100) / 100 + 0}`;
}
