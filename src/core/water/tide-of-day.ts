import { timeAt } from './clock.ts';
import type { Tide } from './shapes.ts';
import { FROM_HIGH_WATER, type TurnOfTide } from './tide-height.ts';

export interface StandardPort {
  readonly port: string;
  readonly meanSpringRange: number;
  readonly meanNeapRange: number;
  /** Of its clock from UTC, s. */
  readonly offset: number;
}

/**
 * The tide that streams of an instant, s since 1970, are told for: the high water nearest to it among turns in order of
 * time, with the mean of the falls before and after it as its range, or the one that is known. Undefined where no high
 * water within 13 h has a low water beside it.
 */
export function tideOfDay(
  turns: readonly (TurnOfTide & { readonly kind: 'high' | 'low' })[],
  seconds: number,
  { port, meanSpringRange, meanNeapRange, offset }: StandardPort,
): Tide | undefined {
  let nearest: { at: number; height: number; range: number } | undefined;
  for (const [i, { at, height, kind }] of turns.entries()) {
    if (kind !== 'high' || Math.abs(at - seconds) > FROM_HIGH_WATER) continue;
    const falls = [turns[i - 1], turns[i + 1]].flatMap((low) => (low?.kind === 'low' ? [height - low.height] : []));
    if (falls.length === 0) continue;
    const range = falls.reduce((sum, fall) => sum + fall, 0) / falls.length;
    if (!nearest || Math.abs(at - seconds) < Math.abs(nearest.at - seconds)) nearest = { at, height, range };
  }
  if (!nearest) return undefined;
  const { at, height, range } = nearest;
  return { port, highWater: timeAt(at, offset), range, meanSpringRange, meanNeapRange, highWaterHeight: height };
}
