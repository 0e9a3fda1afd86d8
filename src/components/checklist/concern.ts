import type { Condition, Holding } from './shapes.ts';

/**
 * Whether a point concerns this trip: 'no' only where the trip says so itself. What nobody gave leaves a point on the
 * list, since a gap in the trip is no reason to check less.
 */
export type Concern = 'everybody' | 'yes' | 'no' | 'unknown';

export function concern(when: readonly Condition[] | undefined, holding: Holding): Concern {
  if (!when || when.length === 0) return 'everybody';
  const answers = when.map((condition) => holding[condition]);
  if (answers.includes(false)) return 'no';
  return answers.includes(undefined) ? 'unknown' : 'yes';
}
