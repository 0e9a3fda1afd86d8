import { interpolate } from '../route/distance.ts';
import type { Stretch } from '../route/split-legs.ts';

/** Over this, m, a stream may be another, and a slow boat takes a quarter of an hour. */
const PIECE = 1500;
/** A trip is cut into at most about this many pieces. */
const MOST = 120;

/**
 * Stretches cut so short that wind and stream can be taken as steady on each, all pieces of one as long as each other;
 * way out and way home over the same water are cut at the same places.
 */
export function cutByPlace(stretches: readonly Stretch[]): readonly Stretch[] {
  const total = stretches.reduce((sum, s) => sum + s.distance, 0);
  const most = Math.max(PIECE, total / MOST);
  const pieces: Stretch[] = [];
  for (const { refill, ...stretch } of stretches) {
    const count = Math.max(1, Math.ceil(stretch.distance / most));
    for (let piece = 0; piece < count; piece++) {
      pieces.push({
        ...stretch,
        from: interpolate(stretch.from, stretch.to, piece / count),
        to: interpolate(stretch.from, stretch.to, (piece + 1) / count),
        distance: stretch.distance / count,
        stop: piece === count - 1 ? stretch.stop : 0,
        ...(piece === count - 1 && refill !== undefined && { refill }),
        spot: pieces.length,
      });
    }
  }
  return pieces;
}
