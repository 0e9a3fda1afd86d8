import type { Calibration } from '../craft/shapes.ts';

/**
 * How far a measured boat's consumption and resistance may differ from the fitted model, as a share of themselves:
 * little among the loads and speeds that were tried, more beyond. Alike for a whole trip.
 */
export interface FormSpread {
  /** Relative standard deviation where it was tried. */
  readonly tried: number;
  /** Lowest and highest all-up mass, kg, and speed, m/s, of the runs. */
  readonly mass: readonly [number, number];
  readonly speed: readonly [number, number];
}

/**
 * What a fit leaves open among its runs, and far from them: boats that somebody measured, fitted to some of their runs
 * and held against the others (measured-table.json). With half of these the others lay in the band less than half the
 * time.
 */
export const TRIED_SPREAD = 0.1;
const FAR_SPREAD = 0.25;
/** Beyond a fifth more or less than was tried, half of that. */
const FAR = 0.2;

/** As many runs as the usual spread weighs against a boat's own (our judgement). */
const USUAL_RUNS = 4;

/**
 * What a fit leaves open of consumption among the runs: the usual, and more where this boat's runs lie farther from their
 * own curve. `missed` are logarithms of measured over fitted, `freeShare` the share of them that settled no factor.
 */
export function spreadAmong(missed: readonly number[], freeShare: number): number {
  const own = missed.reduce((sum, log) => sum + log * log, 0);
  const pooled = (USUAL_RUNS * TRIED_SPREAD ** 2 + own) / (USUAL_RUNS + missed.length * freeShare);
  return Math.max(Math.sqrt(pooled), TRIED_SPREAD);
}

export function measuredForm({ tried, formSpread = TRIED_SPREAD }: Calibration): FormSpread {
  return {
    tried: formSpread,
    // Nobody said where it was tried: nowhere.
    mass: tried?.mass ?? [0, 0],
    speed: tried?.speed ?? [0, 0],
  };
}

/** Relative standard deviation that the form of the model leaves at a mass, kg, and speed, m/s; continuous in both. */
export function formShare(form: FormSpread | undefined, mass: number, speed: number): number {
  if (!form) return 0;
  const beyond = outside(form.mass, mass) + outside(form.speed, speed);
  if (beyond === 0) return form.tried;
  const far = FAR_SPREAD * farShare(beyond);
  return Math.sqrt(form.tried * form.tried + far * far);
}

/**
 * How little runs tell of a mass, kg, and speed, m/s: 0 among them, 1 far off, continuous. A boat that was measured on the
 * plane alone has shown nothing of its engine at idle.
 */
export function untried(form: FormSpread | undefined, mass: number, speed: number): number {
  return form ? farShare(outside(form.mass, mass) + outside(form.speed, speed)) : 0;
}

function farShare(beyond: number): number {
  const square = beyond * beyond;
  return square / (square + FAR * FAR);
}

/** 0 between the bounds, else how far outside as a share of the nearer bound. */
function outside([least, most]: readonly [number, number], value: number): number {
  if (value < least) return (least - value) / Math.max(value, 0.1 * least);
  if (value > most) return most > 0 ? (value - most) / most : 10;
  return 0;
}
