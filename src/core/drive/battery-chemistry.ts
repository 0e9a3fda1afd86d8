import type { BatteryChemistry } from '../craft/shapes.ts';
import { monotoneCurve } from './pchip.ts';

interface Chemistry {
  /** Share of the energy that may be taken out. */
  readonly use: number;
  /** Peukert's exponent, and the hours of discharge the printed capacity holds for. */
  readonly peukert: number;
  readonly ratedHours: number;
  /** Share of energy left by the battery's own temperature, C. */
  readonly cold: (temperatureC: number) => number;
  /** Cycles to 80 % of the energy when new. */
  readonly cycles: number;
}

/**
 * LFP gives 0.80 at 0 C and 0.70 at -20 C (battery maker's guide); the table is between that and NMC (from memory).
 */
const lithiumCold = monotoneCurve([-20, -10, 0, 10, 25], [0.65, 0.73, 0.82, 0.92, 1]);

/** Discharge over an hour or more, from 0 C up a battery maker's table; below 0 C extrapolated, common practice. */
const leadCold = monotoneCurve([-20, -10, 0, 10, 20, 25, 30], [0.7, 0.78, 0.84, 0.9, 0.99, 1, 1.03]);

/**
 * `use` 0.90 for lithium is common practice (a cautious published guide says 0.80 for LFP), 0.50 for AGM is published;
 * exponents published for lead (1.1 AGM, 1.25 lead, up to 1.6 worn flooded) and between 1.00 and 1.05 for LFP; cycles
 * common practice, no source (lead at 50 % depth).
 */
export const CHEMISTRIES: Readonly<Record<BatteryChemistry, Chemistry>> = {
  nmc: { use: 0.9, peukert: 1.03, ratedHours: 5, cold: lithiumCold, cycles: 500 },
  lfp: { use: 0.9, peukert: 1.03, ratedHours: 5, cold: lithiumCold, cycles: 2000 },
  agm: { use: 0.5, peukert: 1.1, ratedHours: 20, cold: leadCold, cycles: 300 },
  'flooded-lead': { use: 0.5, peukert: 1.25, ratedHours: 20, cold: leadCold, cycles: 300 },
};

/** Share of energy at a battery temperature, C; level below -20 C and above 25 C (lead 30 C). */
export function coldFactor(chemistry: BatteryChemistry, temperatureC: number): number {
  return CHEMISTRIES[chemistry].cold(temperatureC);
}

/** State of health after `years` and full `cycles`, never below 0 (common practice, no source). */
export function agedHealth(chemistry: BatteryChemistry, years: number, cycles: number): number {
  return Math.max(1 - 0.02 * years - 0.2 * (cycles / CHEMISTRIES[chemistry].cycles), 0);
}
