export type Regime = 'displacement' | 'hump' | 'planing';

/**
 * Regime by volume Froude number: planing forms gain from about 1 (Radojcic et al. 2014, Polish Maritime Research
 * 21(2)); planing from 2.2, derived for this project.
 */
export function regime(froudeVolume: number): Regime {
  if (froudeVolume < 1) return 'displacement';
  return froudeVolume < 2.2 ? 'hump' : 'planing';
}
