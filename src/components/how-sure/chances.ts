import type { Risk, Sampled } from '../../core/trip/risk.ts';

export type Chances = Pick<Risk, 'reserveWhole' | 'homeAtAll'>;

/** Farther apart than this the quick formula is not believed (trip arithmetic: the lower one is shown). */
const APART = 0.02;

export interface Shown extends Chances {
  readonly differs: boolean;
}

/** What to show of the quick figures and the played ones: the quick ones, and the lower where they differ. */
export function shownChances(quick: Chances, played: Sampled | undefined): Shown {
  if (!played) return { ...quick, differs: false };
  const lower = (a: number, b: number) => (Math.abs(a - b) > APART ? Math.min(a, b) : a);
  const reserveWhole = lower(quick.reserveWhole, played.reserveWhole);
  const homeAtAll = lower(quick.homeAtAll, played.homeAtAll);
  const differs = [quick.reserveWhole - played.reserveWhole, quick.homeAtAll - played.homeAtAll].some(
    (apart) => Math.abs(apart) > APART,
  );
  return { reserveWhole, homeAtAll, differs };
}

/** Of a hundred such trips, never more than 99. */
export function ofHundred(probability: number): number {
  return Math.min(Math.round(probability * 100), 99);
}
