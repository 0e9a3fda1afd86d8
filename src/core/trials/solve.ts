import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import type { Parameters } from './parameters.ts';

/** Residuals of one run, and how each follows the parameters in units of their prior deviations. */
export interface Rows {
  /** (model - measured) / deviation */
  readonly residuals: readonly number[];
  /** A row for each residual. */
  readonly slopes: readonly (readonly number[])[];
}

export interface Solved {
  readonly values: readonly number[];
  readonly rows: readonly Rows[];
  /** Curvature in prior units, with the priors: its inverse is the covariance. */
  readonly curvature: Matrix;
  readonly atBound: readonly boolean[];
}

/** Model against readings at some parameter values: residuals of every run. */
export type Residuals = (values: readonly number[]) => readonly (readonly number[])[];

const STEPS = 40;
/** Of a parameter for its slope, in prior deviations. */
const NUDGE = 0.02;
const SETTLED = 1e-4;

/**
 * Least squares of all residuals and of the parameters' distances from their priors (ridge; Levenberg-Marquardt damping
 * inside the bounds). `weights` in the order of the runs; a run of weight 0 does not pull.
 */
export function solve(
  { list }: Parameters,
  residualsAt: Residuals,
  weights: readonly number[],
  start?: readonly number[],
): Solved {
  const values = list.map(({ mean, least, most }, i) => clamped(start?.[i] ?? mean, least, most));
  let rows = rowsAt(list, residualsAt, values);
  let cost = costOf(list, rows, weights, values);
  let damping = 1e-3;
  for (let step = 0; step < STEPS; step++) {
    const curvature = curvatureOf(rows, weights, list.length);
    const pull = pullOf(list, rows, weights, values);
    // A parameter held at its bound by the data stays out of the step.
    const stuck = values.map(
      (value, i) => (value <= list[i]!.least && pull[i]! > 0) || (value >= list[i]!.most && pull[i]! < 0),
    );
    const damped = curvature.clone();
    for (let i = 0; i < list.length; i++) {
      damped.set(i, i, damped.get(i, i) * (1 + damping));
      if (!stuck[i]) continue;
      for (let j = 0; j < list.length; j++) {
        damped.set(i, j, i === j ? 1 : 0);
        damped.set(j, i, i === j ? 1 : 0);
      }
    }
    const rhs = Matrix.columnVector(pull.map((value, i) => (stuck[i] ? 0 : -value)));
    const move = new CholeskyDecomposition(damped).solve(rhs).to1DArray();
    const next = values.map((value, i) =>
      clamped(value + move[i]! * list[i]!.deviation, list[i]!.least, list[i]!.most),
    );
    const nextResiduals = residualsAt(next);
    const nextCost = costOf(
      list,
      nextResiduals.map((residuals) => ({ residuals })),
      weights,
      next,
    );
    if (nextCost <= cost) {
      const gained = cost - nextCost;
      values.splice(0, values.length, ...next);
      rows = rowsAt(list, residualsAt, values);
      cost = nextCost;
      damping = Math.max(damping / 10, 1e-9);
      if (gained < SETTLED * 1e-2 && Math.max(...move.map(Math.abs)) < SETTLED * 10) break;
    } else {
      damping *= 10;
      if (damping > 1e8) break;
    }
  }
  return {
    values,
    rows,
    curvature: curvatureOf(rows, weights, list.length),
    atBound: values.map((value, i) => value <= list[i]!.least || value >= list[i]!.most),
  };
}

/** Inverse of a curvature: the covariance in prior units. */
export function inverseOf(curvature: Matrix): Matrix {
  return new CholeskyDecomposition(curvature).solve(Matrix.eye(curvature.rows));
}

/** The part of one run in the curvature: slopes times themselves. */
export function curvaturePart({ slopes }: Pick<Rows, 'slopes'>, size: number, weight = 1): Matrix {
  const part = Matrix.zeros(size, size);
  for (const slope of slopes) {
    for (let i = 0; i < size; i++) {
      if (slope[i] === 0) continue;
      for (let j = 0; j < size; j++) part.set(i, j, part.get(i, j) + weight * (slope[i]! * slope[j]!));
    }
  }
  return part;
}

function curvatureOf(rows: readonly Rows[], weights: readonly number[], size: number): Matrix {
  const sum = Matrix.eye(size);
  rows.forEach((row, i) => {
    if (weights[i]! > 0) sum.add(curvaturePart(row, size, weights[i]!));
  });
  return sum;
}

/** Residuals and their slopes at some parameter values, by central differences. */
export function rowsAt(list: Parameters['list'], residualsAt: Residuals, values: readonly number[]): Rows[] {
  const here = residualsAt(values);
  const slopes = here.map((residuals) => residuals.map(() => Array<number>(list.length).fill(0)));
  list.forEach(({ deviation }, p) => {
    const up = residualsAt(values.map((value, i) => (i === p ? value + NUDGE * deviation : value)));
    const down = residualsAt(values.map((value, i) => (i === p ? value - NUDGE * deviation : value)));
    up.forEach((residuals, run) => {
      residuals.forEach((residual, k) => {
        slopes[run]![k]![p] = (residual - down[run]![k]!) / (2 * NUDGE);
      });
    });
  });
  return here.map((residuals, run) => ({ residuals, slopes: slopes[run]! }));
}

function pullOf(
  list: Parameters['list'],
  rows: readonly Rows[],
  weights: readonly number[],
  values: readonly number[],
): number[] {
  return list.map(({ mean, deviation }, p) => {
    let sum = (values[p]! - mean) / deviation;
    rows.forEach(({ residuals, slopes }, run) => {
      residuals.forEach((residual, k) => {
        sum += weights[run]! * residual * slopes[k]![p]!;
      });
    });
    return sum;
  });
}

function costOf(
  list: Parameters['list'],
  rows: readonly Pick<Rows, 'residuals'>[],
  weights: readonly number[],
  values: readonly number[],
): number {
  let sum = 0;
  rows.forEach(({ residuals }, run) => {
    for (const residual of residuals) sum += weights[run]! * residual * residual;
  });
  list.forEach(({ mean, deviation }, p) => {
    sum += ((values[p]! - mean) / deviation) ** 2;
  });
  return sum / 2;
}

function clamped(value: number, least: number, most: number): number {
  return Math.min(Math.max(value, least), most);
}
