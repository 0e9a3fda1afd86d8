import { secondsOf } from '../../core/water/clock.ts';
import type { WindAt } from '../../core/water/shapes.ts';
import { strongestWind, windTable } from '../../core/water/wind-by-time.ts';

/** Whether a forecast tells the wind of a whole trip. Times ISO 8601. */
export type WindReach =
  | { readonly kind: 'empty' | 'no-departure' }
  | { readonly kind: 'covers'; readonly until: string }
  /** Without a plan nobody knows how long the trip takes. */
  | { readonly kind: 'reaches'; readonly from: string; readonly until: string }
  | { readonly kind: 'starts-late' | 'ends-early' | 'gap'; readonly at: string };

/** `duration` is how long the trip takes at its slowest, s. */
export function windReach(
  forecast: readonly WindAt[],
  departure: string | undefined,
  duration: number | undefined,
): WindReach {
  if (forecast.length === 0) return { kind: 'empty' };
  const sorted = [...forecast].sort((a, b) => secondsOf(a.time) - secondsOf(b.time));
  const [from, until] = [sorted[0]!.time, sorted.at(-1)!.time];
  if (departure === undefined) return { kind: 'no-departure' };
  const start = secondsOf(departure);
  const long = duration === undefined || !Number.isFinite(duration) ? 0 : duration;
  const whole = strongestWind(windTable(sorted), start, start + long);
  if (whole.known) return long > 0 ? { kind: 'covers', until } : { kind: 'reaches', from, until };
  switch (whole.why) {
    case 'before-first':
      return { kind: 'starts-late', at: from };
    case 'after-last':
      return { kind: 'ends-early', at: until };
    case 'gap': {
      const after = sorted.find(({ time }) => secondsOf(time) === whole.until);
      return { kind: 'gap', at: after?.time ?? until };
    }
    case 'no-entries':
      return { kind: 'empty' };
    default:
      return whole.why satisfies never;
  }
}
