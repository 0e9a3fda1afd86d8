import type { Regime } from '../../core/curve/shapes.ts';
import { spoken } from './spoken.ts';

export const regimeWords = spoken<Record<Regime, string>>('regimeWords', {
  displacement: 'displacement',
  hump: 'on the hump',
  planing: 'planing',
});

/** How the boat moves at a speed. */
export function regimeText(regime: Regime): string {
  return regimeWords[regime];
}
