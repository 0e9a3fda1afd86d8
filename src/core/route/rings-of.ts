import type { EdgeTree } from './edge-tree.ts';

/** Rings as they were given, without their closing vertex: x, y one after the other; outer ring first. */
export function ringsOf({ numbers, starts }: EdgeTree): Float64Array[] {
  const rings: Float64Array[] = [];
  let first = 0;
  for (let at = 0; at < starts[1]!; at += 4) {
    const ends = at + 4 >= starts[1]! || numbers[at + 4] !== numbers[at + 2] || numbers[at + 5] !== numbers[at + 3];
    if (!ends) continue;
    const ring = new Float64Array((at + 4 - first) / 2);
    for (let edge = first; edge <= at; edge += 4) {
      ring[(edge - first) / 2] = numbers[edge + 2]!;
      ring[(edge - first) / 2 + 1] = numbers[edge + 3]!;
    }
    rings.push(ring);
    first = at + 4;
  }
  return rings;
}
