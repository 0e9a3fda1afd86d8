/** CSS pixels. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Squares of this size, CSS pixels, hold one handle of a long track each. */
const SQUARE = 48;
/** A route of this many waypoints was drawn by hand: each keeps its handle. */
const BY_HAND = 60;
/** Handles in one view. */
const MOST = 200;

/**
 * Which waypoints get a handle: those in view, thinned where a long track is dense, so that an imported one stays
 * quick and legible. `always` are kept wherever they are.
 */
export function shownHandles(
  spots: readonly Spot[],
  view: { readonly width: number; readonly height: number },
  always: ReadonlySet<number>,
): number[] {
  const shown: number[] = [];
  const squares = new Set<string>();
  const square = ({ x, y }: Spot) => `${Math.floor(x / SQUARE)} ${Math.floor(y / SQUARE)}`;
  for (const index of always) if (spots[index]) squares.add(square(spots[index]));
  for (const [index, spot] of spots.entries()) {
    const kept = always.has(index);
    if (!kept && (shown.length >= MOST || !inView(spot, view))) continue;
    if (!kept && spots.length > BY_HAND && squares.has(square(spot))) continue;
    squares.add(square(spot));
    shown.push(index);
  }
  return shown;
}

/** With a margin, so that a handle at the edge is there before it comes in. */
export function inView({ x, y }: Spot, { width, height }: { width: number; height: number }): boolean {
  const margin = 60;
  return x > -margin && y > -margin && x < width + margin && y < height + margin;
}
