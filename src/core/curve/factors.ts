import type { Calibration, Drive } from '../craft/shapes.ts';
import type { DriveFactors } from '../drive/demand.ts';
import type { HullFactors } from '../hull/resistance.ts';

/**
 * What trial runs can correct, in the order of every gradient and covariance: factors on the displacement, planing
 * and hump parts of resistance, shift of the effective centre of gravity (m), shift of the pitch (m), factor on full-
 * throttle consumption (petrol) or losses (electric), and shift of the friction share (petrol) or standby share
 * (electric).
 */
export const FACTORS = ['kd', 'kp', 'kh', 'lcgShift', 'pitchShift', 'fuel', 'friction'] as const;

const COUNT = FACTORS.length;

export interface Factors {
  readonly hull: HullFactors;
  readonly drive: DriveFactors;
  /** Row-major COUNT x COUNT. */
  readonly covariance: Float64Array;
  readonly measured: boolean;
}

/**
 * Standard deviations of an unmeasured boat (derived from the spread of published resistance predictions and engine
 * consumption data). Together they spread resistance by about 20 % planing and 25 to 30 % below, and flow by about
 * 30 %, which the regression tests hold.
 */
export function priorDeviations(drive: Drive): readonly number[] {
  const pitch = 0.1 * drive.propeller.pitch;
  return drive.kind === 'petrol' ? [0.27, 0.2, 1.3, 0.1, pitch, 0.2, 0.3] : [0.27, 0.2, 1.3, 0.1, pitch, 0.15, 0.004];
}

/** Mean factors and covariance: of the fit where the craft was measured, of the priors where not. */
export function factorsOf(drive: Drive, calibration: Calibration | undefined): Factors {
  const covariance = new Float64Array(COUNT * COUNT);
  let values: readonly number[] = [1, 1, 1, 0, 0, 1, 0];
  if (calibration) {
    values = calibration.factors;
    for (let row = 0; row < COUNT; row++) {
      for (let column = 0; column < COUNT; column++) {
        covariance[row * COUNT + column] = calibration.covariance[row]?.[column] ?? 0;
      }
    }
  } else {
    priorDeviations(drive).forEach((deviation, i) => {
      covariance[i * COUNT + i] = deviation * deviation;
    });
  }
  const [kd = 1, kp = 1, kh = 1, lcgShift = 0, pitchShift = 0, fuel = 1, friction = 0] = values;
  return {
    hull: { kd, kp, kh, lcgShift },
    drive: { pitchShift, fuel, friction },
    covariance,
    measured: calibration !== undefined,
  };
}

/** Variance of a quantity with this gradient in the factors: g' C g. */
export function varianceOf(gradient: ArrayLike<number>, covariance: Float64Array): number {
  let sum = 0;
  for (let row = 0; row < COUNT; row++) {
    const left = gradient[row]!;
    if (left === 0) continue;
    let inner = 0;
    for (let column = 0; column < COUNT; column++) inner += covariance[row * COUNT + column]! * gradient[column]!;
    sum += left * inner;
  }
  return Math.max(sum, 0);
}
