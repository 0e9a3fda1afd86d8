import { DAY, secondsOf } from '../../core/water/clock.ts';
import type { WindAt } from '../../core/water/shapes.ts';

/** Of a long forecast what a trip can need: rows from half a day before it to some days after. */
const BEFORE = DAY / 2;
const AFTER = 3 * DAY;
/** A trip keeps no more entries than this; shorter forecasts stay whole. */
const MOST = 120;

/** A forecast in order of time, of a long one the part around the departure. */
export function aroundTrip(winds: readonly WindAt[], departure: string | undefined): readonly WindAt[] {
  const sorted = [...winds].sort((a, b) => secondsOf(a.time) - secondsOf(b.time));
  if (sorted.length <= MOST) return sorted;
  const start = departure === undefined ? secondsOf(sorted[0]!.time) + BEFORE : secondsOf(departure);
  const near = sorted.filter(({ time }) => {
    const at = secondsOf(time);
    return at >= start - BEFORE && at <= start + AFTER;
  });
  // A forecast of other days stays one of other days: the plan says that it does not cover the trip.
  return (near.length > 0 ? near : sorted).slice(0, 400);
}
