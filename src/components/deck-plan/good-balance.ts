import type { Hull, HullForm } from '../../core/craft/shapes.ts';
import type { LoadBalance } from '../../core/load/balance.ts';

/** Shares of the wetted length between which the centre of gravity lies well, and how far beyond is only a little off. */
export interface GoodAlong {
  readonly low: number;
  readonly high: number;
  readonly little: number;
}

/** A boat that planes, and one that never does (common practice, no source). */
const PLANING: GoodAlong = { low: 0.33, high: 0.4, little: 0.05 };
const DISPLACEMENT: GoodAlong = { low: 0.42, high: 0.5, little: 0.05 };

export function goodAlong(form: HullForm): GoodAlong {
  return form === 'displacement' ? DISPLACEMENT : PLANING;
}

/** Shares of the beam: aim and limit of an offset to one side (common practice, no source). */
export const GOOD_ACROSS = { good: 0.05, little: 0.1 } as const;

export type Along = 'good' | 'little-aft' | 'aft' | 'little-forward' | 'forward';
export type Across = 'middle' | 'good' | 'little' | 'off';

/** Below half a centimetre a side means nothing. */
const MIDDLE = 0.005;

export function along({ lcgShare }: Pick<LoadBalance, 'lcgShare'>, { form }: Pick<Hull, 'form'>): Along {
  const { low, high, little } = goodAlong(form);
  if (lcgShare < low) return lcgShare >= low - little ? 'little-aft' : 'aft';
  if (lcgShare > high) return lcgShare <= high + little ? 'little-forward' : 'forward';
  return 'good';
}

export function across({ lateral }: Pick<LoadBalance, 'lateral'>, { beam }: Pick<Hull, 'beam'>): Across {
  const offset = Math.abs(lateral);
  if (offset < MIDDLE) return 'middle';
  const share = offset / beam;
  return share <= GOOD_ACROSS.good ? 'good' : share <= GOOD_ACROSS.little ? 'little' : 'off';
}
