import type { Calibration, Craft, Drive, Fouling } from '../craft/shapes.ts';
import type { DriveFactors } from '../drive/demand.ts';
import type { HullFactors } from '../hull/resistance.ts';
import { type FormSpread, measuredForm } from './form-spread.ts';

/**
 * What trial runs can correct, in the order of every gradient and covariance: factors on the displacement, planing
 * and hump parts of resistance, shift of the effective centre of gravity (m), shift of the pitch (m), factor on full-
 * throttle consumption (petrol) or losses (electric), and shift of the friction share (petrol) or standby share
 * (electric). In gradients and covariances here an eighth follows: what the form of the model leaves open, see
 * `FormSpread`.
 */
export const FACTORS = ['kd', 'kp', 'kh', 'lcgShift', 'pitchShift', 'fuel', 'friction'] as const;

/** Factors and the form of the model: the length of every gradient. */
export const SPREADS = FACTORS.length + 1;

const FITTED = FACTORS.length;

export interface Factors {
  readonly hull: HullFactors;
  readonly drive: DriveFactors;
  /** Row-major SPREADS x SPREADS. */
  readonly covariance: Float64Array;
  readonly measured: boolean;
  /**
   * Of a measured boat: what the form of the model leaves open, and the covariance and the step back to the factors as if
   * it were not measured.
   */
  readonly form: (FormSpread & { readonly unmeasured: Float64Array; readonly back: readonly number[] }) | undefined;
  /** Full-throttle power over rated, and its relative standard deviation. */
  readonly power: { readonly factor: number; readonly deviation: number };
}

/** Rated power is uncertain by 5 to 10 % (trade tolerance of power ratings); one standard deviation. */
export const RATING_SPREAD = 0.07;

/** Resistance over that of a clean bottom (planning figures derived from owners' and biosecurity reports). */
export const FOULING: Readonly<Record<Fouling, number>> = { clean: 1, slime: 1.1, weed: 1.25, shell: 1.5 };

/** How far a fouled bottom may be from its planning figure, as a share of what it adds (our judgement). */
const FOULING_DOUBT = 0.5;

/** Most likely factors of an unmeasured boat. */
export const PRIOR_MEANS: readonly number[] = [1, 1, 1, 0, 0, 1, 0];

/**
 * Standard deviations of an unmeasured boat (derived from the spread of published resistance predictions and engine
 * consumption data). Together they spread resistance by about 20 % planing and 25 % on the hump, and flow by about 30 %,
 * which the regression tests hold. Displacement resistance: five measured boats differ by 0.36 (root mean square of logarithms).
 * Losses of electric motors differ most: makers state 0.18 to 0.56 from battery to thrust times speed (a maker's
 * encyclopaedia of power ratings). What a motor draws whatever its load: below a tenth of their rated input three measured
 * motors differ by 0.77, which 3 % of rated power covers.
 */
export function priorDeviations(drive: Drive): readonly number[] {
  const pitch = 0.1 * drive.propeller.pitch;
  return drive.kind === 'petrol' ? [0.4, 0.2, 1.3, 0.1, pitch, 0.2, 0.3] : [0.4, 0.2, 1.3, 0.1, pitch, 0.4, 0.03];
}

/** Mean factors and covariance: of the fit where the craft was measured, of the priors where not. */
export function factorsOf({ drive, calibration, fouling = 'clean' }: Craft): Factors {
  const unmeasured = priorCovariance(drive);
  const covariance = calibration ? covarianceOf(calibration) : unmeasured;
  const values = calibration?.factors ?? PRIOR_MEANS;
  const [kd = 1, kp = 1, kh = 1, lcgShift = 0, pitchShift = 0, fuel = 1, friction = 0] = values;
  const dirt = FOULING[fouling] / FOULING[calibration?.fouling ?? 'clean'];
  if (dirt !== 1) foul(covariance, [kd, kp, kh], dirt);
  const hull = { kd: kd * dirt, kp: kp * dirt, kh: kh * dirt, lcgShift };
  return {
    hull,
    drive: { pitchShift, fuel, friction },
    covariance,
    measured: calibration !== undefined,
    form:
      calibration && calibration.runs > 0
        ? {
            ...measuredForm(calibration),
            unmeasured,
            back: stepBack([hull.kd, hull.kp, hull.kh, ...values.slice(3)], fouling),
          }
        : undefined,
    power: calibration?.power ?? { factor: 1, deviation: RATING_SPREAD },
  };
}

/** From these factors to those of the same boat as nobody measured it, its bottom as foul as now. */
function stepBack(factors: readonly number[], fouling: Fouling): readonly number[] {
  return PRIOR_MEANS.map((mean, i) => (i < 3 ? mean * FOULING[fouling] : mean) - (factors[i] ?? mean));
}

function priorCovariance(drive: Drive): Float64Array {
  const covariance = new Float64Array(SPREADS * SPREADS);
  priorDeviations(drive).forEach((deviation, i) => {
    covariance[i * SPREADS + i] = deviation * deviation;
  });
  return covariance;
}

function covarianceOf(calibration: Calibration): Float64Array {
  const covariance = new Float64Array(SPREADS * SPREADS);
  for (let row = 0; row < FITTED; row++) {
    for (let column = 0; column < FITTED; column++) {
      covariance[row * SPREADS + column] = calibration.covariance[row]?.[column] ?? 0;
    }
  }
  if (calibration.runs > 0) covariance[SPREADS * SPREADS - 1] = 1;
  return covariance;
}

/** A bottom that differs from the one measured scales all parts of resistance alike, and adds doubt to them. */
function foul(covariance: Float64Array, hull: readonly number[], dirt: number): void {
  const doubt = FOULING_DOUBT * (dirt - 1);
  for (let row = 0; row < SPREADS; row++) {
    for (let column = 0; column < SPREADS; column++) {
      const at = row * SPREADS + column;
      const both = (row < hull.length ? dirt : 1) * (column < hull.length ? dirt : 1);
      covariance[at] = covariance[at]! * both + (hull[row] ?? 0) * (hull[column] ?? 0) * doubt * doubt;
    }
  }
}

/** Variance of a quantity with this gradient in the factors: g' C g. */
export function varianceOf(gradient: ArrayLike<number>, covariance: Float64Array): number {
  let sum = 0;
  for (let row = 0; row < SPREADS; row++) {
    const left = gradient[row]!;
    if (left === 0) continue;
    let inner = 0;
    for (let column = 0; column < SPREADS; column++) inner += covariance[row * SPREADS + column]! * gradient[column]!;
    sum += left * inner;
  }
  return Math.max(sum, 0);
}

/** Normal deviate of the 95th percentile. */
const Z95 = 1.645;

/**
 * Standard deviation of the logarithm for a relative standard deviation that came of a sum: the same up to one. Beyond,
 * the 95th percentile goes on along its tangent, as the sum does, instead of growing as an exponential.
 */
export function logSpread(relative: number): number {
  return relative > 1 ? 1 + Math.log1p(Z95 * (relative - 1)) / Z95 : relative;
}
