import { DEGREE } from '../units/convert.ts';
import { oneUp, type SeaState, seaStateOf } from './sea-state.ts';
import type { Stream, Wind } from './shapes.ts';
import { deepWaterWave } from './waves-seen.ts';

export type WavesOnStream =
  | { readonly blocked: true }
  | {
      readonly blocked: false;
      /** Against the same waves on still water. */
      readonly heightRatio: number;
      readonly lengthRatio: number;
      readonly steepnessRatio: number;
    };

/**
 * Waves of a period, s, that run from still water on to a steady stream, m/s along them and negative against them:
 * linear theory of Longuet-Higgins and Stewart 1961, from memory. A stream against them of a quarter of their speed stops
 * them, and they break before. Fit for a flag, not for a wave height.
 */
export function wavesOnStream(period: number, along: number): WavesOnStream {
  const still = deepWaterWave(period).speed;
  const root = 1 + (4 * along) / still;
  if (!(root > 0)) return { blocked: true };
  const speed = (still / 2) * (1 + Math.sqrt(root));
  const heightRatio = still / Math.sqrt(speed * (speed + 2 * along));
  const lengthRatio = (speed / still) ** 2;
  return { blocked: false, heightRatio, lengthRatio, steepnessRatio: heightRatio / lengthRatio };
}

/** Wind and stream oppose when the stream sets within this of where the wind comes from, degrees (common practice). */
const OPPOSED_DEG = 60;
/** Rates over the speed of the waves from which the sea is called a class higher, and from which nobody goes (same). */
const RAISED = 0.1;
const STAY = 0.2;

export interface WindAgainstStream {
  readonly flag: 'none' | 'raised' | 'do-not-go';
  /** Stream over wave speed, 0 where they do not oppose. */
  readonly share: number;
  /** Class of the sea to hold against limits: one up when raised or worse. */
  readonly state: SeaState;
  /** By linear theory, for telling; Infinity where the waves are stopped. */
  readonly heightRatio: number;
}

/**
 * What a stream against the wind makes of a wind sea of a significant height, m, and period, s: raised by a class from a
 * tenth of the wave speed, not to be gone into from a fifth. Treat bars, narrows and headlands likewise without local
 * knowledge. Give the shortest period in doubt: short waves are the sooner stopped.
 */
export function windAgainstStream(
  wind: Wind,
  stream: Stream,
  sea: { height: number; period: number },
): WindAgainstStream {
  const state = seaStateOf(sea.height);
  const opposed = Math.cos((stream.setDeg - wind.fromDeg) * DEGREE) >= Math.cos(OPPOSED_DEG * DEGREE) - 1e-12;
  if (sea.height === 0 || sea.period === 0 || stream.rate === 0 || !opposed) {
    return { flag: 'none', share: 0, state, heightRatio: 1 };
  }
  const share = stream.rate / deepWaterWave(sea.period).speed;
  const waves = wavesOnStream(sea.period, -stream.rate);
  return {
    flag: share >= STAY ? 'do-not-go' : share >= RAISED ? 'raised' : 'none',
    share,
    state: share >= RAISED ? oneUp(state) : state,
    heightRatio: waves.blocked ? Infinity : waves.heightRatio,
  };
}
