/** A text that wants to stand centred at `x`; px. The more `weight`, the sooner it is placed. */
export interface Wanted {
  readonly key: string;
  readonly text: string;
  readonly x: number;
  readonly width: number;
  readonly weight: number;
}

export interface Placed {
  readonly key: string;
  readonly text: string;
  /** Left edge, px. */
  readonly left: number;
  readonly width: number;
  readonly row: number;
}

const GAP = 8;

/**
 * Puts texts into rows so that none overlaps another or leaves the room; each goes where it wants to be or beside
 * what already stands there, up to its own width away. What finds no place is left out.
 */
export function placeLabels(wanted: readonly Wanted[], room: number, rows: number): readonly Placed[] {
  const placed: Placed[] = [];
  for (const label of wanted.toSorted((a, b) => b.weight - a.weight)) {
    const { key, text, width, x } = label;
    if (width > room) continue;
    const ideal = Math.min(Math.max(x - width / 2, 0), room - width);
    let best: Placed | undefined;
    for (let row = 0; row < rows; row++) {
      const left = nearestFree(
        placed.filter((other) => other.row === row),
        ideal,
        label.width,
        room,
      );
      if (left === undefined || Math.abs(left - ideal) > width) continue;
      if (!best || Math.abs(left - ideal) < Math.abs(best.left - ideal) - GAP) best = { key, text, left, width, row };
    }
    if (best) placed.push(best);
  }
  return placed.toSorted((a, b) => a.row - b.row || a.left - b.left);
}

function nearestFree(others: readonly Placed[], ideal: number, width: number, room: number): number | undefined {
  const free = (left: number) =>
    left >= 0 &&
    left + width <= room &&
    others.every((other) => left >= other.left + other.width + GAP || left + width + GAP <= other.left);
  const spots = [ideal, ...others.flatMap((other) => [other.left + other.width + GAP, other.left - GAP - width])];
  return spots.filter(free).toSorted((a, b) => Math.abs(a - ideal) - Math.abs(b - ideal))[0];
}

/** Width of a text in a sans-serif face, px; errs on the wide side for Latin letters and digits. */
export function textWidth(text: string, fontSize: number): number {
  return [...text].length * fontSize * 0.58;
}
