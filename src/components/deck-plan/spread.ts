import type { Spot } from './hull-plan.ts';

/** A piece with half its size along and across the boat, m. */
export interface Laid {
  readonly spot: Spot;
  readonly along: number;
  readonly across: number;
  /** Drawn where it is, whatever else is there. */
  readonly pinned?: boolean;
}

/** Rings of spots tried around the true one, m, sideways before along. */
const STEP = 0.06;
const RINGS = 12;
const DIAGONAL = Math.SQRT1_2;
const WAYS: readonly Spot[] = [
  { x: 0, y: -1 },
  { x: 0, y: 1 },
  { x: DIAGONAL, y: -DIAGONAL },
  { x: DIAGONAL, y: DIAGONAL },
  { x: -DIAGONAL, y: -DIAGONAL },
  { x: -DIAGONAL, y: DIAGONAL },
  { x: 1, y: 0 },
  { x: -1, y: 0 },
];

/**
 * Where pieces are drawn so that none hides another: earlier ones stay, later ones give way to the nearest clear spot,
 * or to the clearest there is, among those allowed. The true spots do not change.
 */
export function spread(laid: readonly Laid[], allowed: (spot: Spot) => boolean): Spot[] {
  const shown: Spot[] = [];
  const order = laid
    .map((_, i) => i)
    .sort((a, b) => Number(laid[b]!.pinned ?? false) - Number(laid[a]!.pinned ?? false));
  const done: number[] = [];
  for (const index of order) {
    const { spot, pinned } = laid[index]!;
    let best = { at: spot, cover: Infinity };
    for (const at of pinned ? [spot] : around(spot)) {
      if (at !== spot && !allowed(at)) continue;
      const cover = covered(laid, done, shown, index, at);
      if (cover < best.cover - 1e-9) best = { at, cover };
      if (cover === 0) break;
    }
    shown[index] = best.at;
    done.push(index);
  }
  return shown;
}

function* around(spot: Spot): Generator<Spot> {
  const { x, y } = spot;
  yield spot;
  for (let ring = 1; ring <= RINGS; ring++) {
    for (const way of WAYS) yield { x: x + ring * STEP * way.x, y: y + ring * STEP * way.y };
  }
}

/** Area shared with those already drawn, m2. */
function covered(
  laid: readonly Laid[],
  done: readonly number[],
  shown: readonly Spot[],
  index: number,
  at: Spot,
): number {
  const own = laid[index]!;
  let area = 0;
  for (const other of done) {
    const along = own.along + laid[other]!.along - Math.abs(at.x - shown[other]!.x);
    const across = own.across + laid[other]!.across - Math.abs(at.y - shown[other]!.y);
    if (along > 1e-9 && across > 1e-9) area += along * across;
  }
  return area;
}
