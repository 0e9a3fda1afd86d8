import { HOUR } from '../units/convert.ts';
import { secondsOf } from './clock.ts';
import type { Tide } from './shapes.ts';
import { HALF_TIDE, heightBetween } from './tidal-rules.ts';

/** A turn of the tide: s since 1970, and m above chart datum. */
export interface TurnOfTide {
  readonly at: number;
  readonly height: number;
}

export type HeightFound =
  /** m above chart datum. Indicative, whatever it comes from: pressure and wind move the sea by decimetres. */
  | { readonly known: true; readonly height: number }
  | {
      readonly known: false;
      readonly why: 'no-height' | 'before-first' | 'after-last' | 'far-from-high-water';
      /** The nearest instant at which it is known, s since 1970. */
      readonly until?: number;
    };

/** Height of the tide as a function of the instant, s since 1970. */
export type HeightAt = (seconds: number) => HeightFound;

/** Further than this from its high water a tide of the day says nothing: the next ones have other times and heights, s. */
export const FROM_HIGH_WATER = 13 * HOUR;

/** Height between turns of the tide, in order of time: a cosine from each to the next. Unknown before and after them. */
export function heightByTurns(turns: readonly TurnOfTide[]): HeightAt {
  const sorted = [...turns].sort((a, b) => a.at - b.at);
  const first = sorted[0];
  const last = sorted[sorted.length - 1];
  return (seconds) => {
    if (!first || !last) return { known: false, why: 'no-height' };
    if (seconds < first.at) return { known: false, why: 'before-first', until: first.at };
    if (seconds > last.at) return { known: false, why: 'after-last', until: last.at };
    const next = sorted.findIndex(({ at }) => at >= seconds);
    const b = sorted[next]!;
    const a = sorted[next - 1] ?? b;
    const share = b.at > a.at ? (seconds - a.at) / (b.at - a.at) : 1;
    return { known: true, height: heightBetween(a.height, b.height, share) };
  };
}

/**
 * Height by the high water and the range of the day alone: a cosine of a tide twice a day. Indicative, worse the further
 * from that high water, unknown beyond 13 h from it or where its height is not given.
 */
export function heightByHighWater(tide: Tide): HeightAt {
  const top = secondsOf(tide.highWater);
  const { highWaterHeight, range } = tide;
  return (seconds) => {
    if (highWaterHeight === undefined) return { known: false, why: 'no-height' };
    const from = Math.abs(seconds - top);
    if (from > FROM_HIGH_WATER) {
      return { known: false, why: 'far-from-high-water', until: top + Math.sign(seconds - top) * FROM_HIGH_WATER };
    }
    return { known: true, height: heightBetween(highWaterHeight, highWaterHeight - range, from / HALF_TIDE) };
  };
}
