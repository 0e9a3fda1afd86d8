import { legBetween } from '../route/distance.ts';
import { type Waters, zonesAlong } from '../route/waters.ts';
import type { Track } from './shapes.ts';

export interface OverLand {
  /** Share of the way sailed that lies on land by the local waters, 0 to 1. */
  readonly land: number;
  /** Share that begins or ends where the local waters know nothing. */
  readonly unknown: number;
}

/** Points of a track are taken together until they lie this far apart, m. */
const STRIDE = 25;

/** How much of a track from one point to another, counted in, lies on land: a sign of a wrong file, place or chart. */
export function overLand(waters: Waters, { points }: Track, first = 0, last = points.length - 1): OverLand {
  let [whole, land, unknown] = [0, 0, 0];
  let from = points[first];
  for (let at = first + 1; at <= last && from; at++) {
    const to = points[at]!;
    const { distance } = legBetween(from, to);
    if (distance < STRIDE && at < last) continue;
    const { crossings, outside } = zonesAlong(waters, from, to);
    for (const { kind, from: enters, to: leaves } of crossings)
      if (kind === 'land') land += (leaves - enters) * distance;
    if (outside) unknown += distance;
    whole += distance;
    from = to;
  }
  return whole > 0 ? { land: Math.min(1, land / whole), unknown: unknown / whole } : { land: 0, unknown: 0 };
}
