import type { WindAt } from '../../core/water/shapes.ts';
import type { Measures } from '../units/measures.ts';
import { windWords as words } from '../words/en-wind.ts';
import { dayAndClock, type PlaceClock } from './place-clock.ts';
import { windReach } from './wind-reach.ts';
import { blankRow, type Fault, MOST_GUST, MOST_WIND, type WindCell, type WindRow } from './wind-rows.ts';

/** What is wrong with a cell. */
export function faultText(fault: Fault, cell: WindCell, measures: Measures): string {
  switch (fault) {
    case 'no-time':
      return words.noTime;
    case 'no-from':
      return words.noFrom;
    case 'no-speed':
      return words.noSpeed;
    case 'too-much':
      return words.tooMuch(measures.show('speed', cell === 'gust' ? MOST_GUST : MOST_WIND));
    case 'gust-below':
      return words.gustBelow;
    default:
      return fault satisfies never;
  }
}

/** How far the winds told reach over the trip, in sentences; `fine`: over all of it. */
export function reachTold(
  rows: readonly WindRow[],
  winds: readonly WindAt[],
  trip: { readonly departure: string | undefined; readonly duration: number | undefined; readonly clock: PlaceClock },
  { lang }: Measures,
): { readonly lines: readonly string[]; readonly fine: boolean } {
  const told = (iso: string) => dayAndClock(iso, trip.clock, lang);
  const open = rows.filter((row) => !blankRow(row)).length - winds.length;
  const times = winds.map(({ time }) => Date.parse(time));
  const reach = windReach(winds, trip.departure, trip.duration);
  const lines: string[] = [];
  if (open > 0) lines.push(words.unfinished(open));
  if (new Set(times).size < times.length) lines.push(words.twice);
  switch (reach.kind) {
    case 'empty':
      break;
    case 'no-departure':
      lines.push(words.noDeparture);
      break;
    case 'covers':
      lines.push(words.covers(told(reach.until)), words.meanCounts);
      break;
    case 'reaches':
      lines.push(words.reaches(told(reach.from), told(reach.until)));
      break;
    case 'starts-late':
      lines.push(words.startsLate(told(reach.at)));
      break;
    case 'ends-early':
      lines.push(words.endsEarly(told(reach.at)));
      break;
    case 'gap':
      lines.push(words.gap(told(reach.at)));
      break;
    default:
      reach satisfies never;
  }
  return { lines, fine: reach.kind === 'covers' && open === 0 };
}
