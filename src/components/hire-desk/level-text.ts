import type { Amount } from '../../core/trip/shapes.ts';
import type { Measures, StoreKind } from '../units/measures.ts';

/** A level as a hirer reads it off a gauge: eighths of a tank, or steps of 5 % of a battery, rounded up, with the amount. */
export function levelText(amount: Amount, full: Amount, store: StoreKind, m: Measures): string {
  const steps = store === 'fuel' ? 8 : 20;
  // A level on the step itself, but for rounding, is not the next one.
  const step = Math.min(Math.ceil((amount / full) * steps - 1e-9), steps);
  const shown = m.show('amount', amount, store);
  return store === 'fuel' ? `${step}/8 (${shown})` : `${m.show('share', step / steps)} (${shown})`;
}
