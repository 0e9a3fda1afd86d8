import { Matrix } from 'ml-matrix';
import { curvaturePart, inverseOf, type Rows, type Solved } from './solve.ts';

/**
 * How far each run lies from what the others say of it, in expected deviations of that difference (the largest of its
 * readings). Linear in the parameters round the solution; `weights` as solved. Signless.
 */
export function standardsWithout({ rows, curvature }: Solved, weights: readonly number[]): number[] {
  const size = curvature.rows;
  return rows.map((row, i) => {
    const weight = weights[i]!;
    const others = weight > 0 ? Matrix.sub(curvature, curvaturePart(row, size, weight)) : curvature;
    const covariance = inverseOf(others);
    // At the solution all pulls cancel, so the others' solution lies where this run's pull is missing.
    const pull = Matrix.zeros(size, 1);
    row.slopes.forEach((slope, k) => {
      for (let p = 0; p < size; p++) pull.set(p, 0, pull.get(p, 0) + weight * row.residuals[k]! * slope[p]!);
    });
    const move = covariance.mmul(pull);
    return largest(row, move, covariance);
  });
}

function largest(row: Rows, move: Matrix, covariance: Matrix): number {
  let most = 0;
  row.slopes.forEach((slope, k) => {
    const line = Matrix.rowVector([...slope]);
    const residual = row.residuals[k]! + line.mmul(move).get(0, 0);
    const variance = 1 + line.mmul(covariance).mmul(line.transpose()).get(0, 0);
    most = Math.max(most, Math.abs(residual) / Math.sqrt(variance));
  });
  return most;
}
