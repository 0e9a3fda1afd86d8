/** A box on the plot, px. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** px between a point and the plate that names it. */
const AWAY = 16;

/**
 * A place near a point for a plate of this size, inside the plot. `taken` gives the heights the curve takes at an x;
 * of above, below and beside it goes where it covers least of them.
 */
export function platePlace(
  at: { readonly x: number; readonly y: number },
  size: { readonly width: number; readonly height: number },
  plot: Box,
  taken: (x: number) => readonly [top: number, bottom: number],
): Box {
  const { width, height } = size;
  const [over, under] = taken(at.x);
  const tops = [Math.min(over, at.y) - AWAY - height, Math.max(under, at.y) + AWAY, over - 3 * AWAY - height];
  const lefts = [at.x - width / 2, at.x - 14, at.x + 14 - width];
  let best: Box | undefined;
  let least = Infinity;
  for (const wantedTop of tops) {
    for (const wantedLeft of lefts) {
      const left = Math.min(Math.max(wantedLeft, plot.left + 2), plot.right - width - 2);
      const top = Math.min(Math.max(wantedTop, plot.top + 2), plot.bottom - height - 2);
      const box = { left, top, right: left + width, bottom: top + height };
      const hides = at.y > box.top - 9 && at.y < box.bottom + 9 && at.x > left - 9 && at.x < box.right + 9;
      const covered = covers(box, taken) + (hides ? 100 : 0);
      if (covered < least) {
        least = covered;
        best = box;
      }
    }
  }
  return best!;
}

/** How many of nine places across the box meet what is taken. */
function covers(box: Box, taken: (x: number) => readonly [number, number]): number {
  let met = 0;
  for (let i = 0; i <= 8; i++) {
    const [over, under] = taken(box.left + ((box.right - box.left) * i) / 8);
    if (over < box.bottom + 2 && under > box.top - 2) met++;
  }
  return met;
}
