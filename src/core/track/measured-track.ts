import { type OverGround, overGround } from './over-ground.ts';
import { pieceOf } from './piece.ts';
import type { Track } from './shapes.ts';
import { speedNoise } from './speed-noise.ts';

/** What is worked out once for all stretches of a track. */
export interface MeasuredTrack {
  /** Of its points, s since 1970. */
  readonly time: Float64Array;
  /** Of each uninterrupted piece that is long enough. */
  readonly pieces: readonly OverGround[];
  /** Of 10 s means of speed, m/s. */
  readonly noise: number;
}

export function measuredTrack(track: Track): MeasuredTrack {
  const starts = [0, ...track.breaks];
  const pieces = starts.flatMap((first, piece) => {
    const next = starts[piece + 1] ?? track.points.length;
    return overGround(pieceOf(track, first, next - 1)) ?? [];
  });
  return { time: Float64Array.from(track.points, ({ time }) => time), pieces, noise: speedNoise(pieces) };
}
