import type { FACTORS } from '../curve/factors.ts';

/** One fitted factor; `of` is "hull", the name of a drive (fuel, friction) or the id of a setup (pitchShift). */
export interface FactorFound {
  /** `power` is the logarithm of full-throttle power over rated. */
  readonly factor: (typeof FACTORS)[number] | 'power';
  readonly of: string;
  readonly value: number;
  readonly deviation: number;
  readonly priorValue: number;
  readonly priorDeviation: number;
  /** The value stands at a bound of what is credible. */
  readonly atBound: boolean;
}

/** A reading held against the model: in SI; `standard` is measured less fitted over the deviation of the reading. */
export interface Held {
  readonly measured: number;
  /** With the default factors, and with the fitted. */
  readonly unmeasured: number;
  readonly fitted: number;
  readonly standard: number;
}

export interface RunFound {
  readonly id: string;
  readonly kind: 'run' | 'refill';
  /** Through still water, m/s, and its standard deviation. NaN never: a run without speed is refused at the door. */
  readonly speed: number;
  readonly speedDeviation: number;
  /** All-up, kg, and centre of gravity, m. */
  readonly mass: number;
  readonly lcg: number;
  /** How far it lies from what the others say of it, in expected deviations; 3 and more contradicts them. */
  readonly apart: number;
  /** kg/s or W; of a refill the mean over its time. */
  readonly consumed?: Held;
  readonly rpm?: Held;
  /** Full throttle: power asked for over power there is; measured is 1. */
  readonly power?: Held;
  /** Absent: it counts. Otherwise why it does not. */
  readonly setAside?: 'left-out' | 'contradicts' | 'nothing-read' | 'beyond-model';
}

/** What the runs cannot tell apart or have not touched. */
export type FitLimit =
  | { readonly code: 'only-together'; readonly factors: readonly [FactorFound['factor'], FactorFound['factor']] }
  | { readonly code: 'not-learned'; readonly factor: FactorFound['factor'] }
  | { readonly code: 'one-load' }
  | { readonly code: 'no-consumption' }
  | { readonly code: 'runs-disagree'; readonly runs: readonly string[] }
  | { readonly code: 'at-bound'; readonly factor: FactorFound['factor'] };

export interface Fit {
  readonly factors: readonly FactorFound[];
  /** In the order of `factors`. */
  readonly covariance: readonly (readonly number[])[];
  readonly runs: readonly RunFound[];
  readonly limits: readonly FitLimit[];
  /** Root mean square of the standard residuals that count; about 1 when the boat behaves as the model. */
  readonly scatter: number;
  /** What the form of the model leaves open of consumption among the runs, relative. */
  readonly formSpread: number;
  /** How many runs and refills count. */
  readonly counted: number;
  /** Of those that count: kg and m/s. Undefined when none counts. */
  readonly tried?: { readonly mass: readonly [number, number]; readonly speed: readonly [number, number] };
  /** Of the last that counts, ISO date. */
  readonly lastDay?: string;
}
