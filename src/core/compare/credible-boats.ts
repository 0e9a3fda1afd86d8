import type { Boat } from '../curve/boat.ts';
import { SPREADS } from '../curve/factors.ts';
import { driveModel } from '../drive/demand.ts';
import { normalCdf } from '../trip/need.ts';

/** The factors that shape attitude, hump and revs: the first five of `FACTORS`. */
const COUNT = 5;
/** Boats drawn; with the one in the middle thirteen, of which the second and the twelfth are about 10 and 90 %. */
const DRAWN = 12;
/** Resistance factors below this are no boat. */
const LEAST = 0.4;

/** The root of x^6 = x + 1, which spreads points most evenly in five dimensions (Roberts 2018, R sequence). */
const RATIO = 1.1347241384015194;

/** Evenly spread standard normal deviates, always the same: no chance in the core. */
const DEVIATES: readonly (readonly number[])[] = Array.from({ length: DRAWN }, (_, n) =>
  Array.from({ length: COUNT }, (__, j) => normalQuantile((0.5 + (n + 1) * RATIO ** -(j + 1)) % 1)),
);

/** Boats that this one may as well be, drawn from what its factors may be with their covariance. */
export function credibleBoats(boat: Boat): readonly Boat[] {
  const lower = cholesky(boat.factors.covariance);
  if (lower.every((row) => row.every((entry) => Math.abs(entry) < 1e-9))) return [];
  return DEVIATES.map((deviates) =>
    moved(
      boat,
      lower.map((row) => row.reduce((sum, entry, k) => sum + entry * deviates[k]!, 0)),
    ),
  );
}

/** 10th and 90th percentile of figures of the boat in the middle and those drawn. */
export function tenToNinety(figures: readonly number[]): { readonly low: number; readonly high: number } {
  const sorted = [...figures].sort((a, b) => a - b);
  const skip = Math.floor(0.1 * sorted.length);
  return { low: sorted[skip]!, high: sorted[sorted.length - 1 - skip]! };
}

/** Where the normal distribution function is `p`; by bisection, to 1e-9. */
function normalQuantile(p: number): number {
  let low = -6;
  let high = 6;
  for (let step = 0; step < 34; step++) {
    const middle = (low + high) / 2;
    if (normalCdf(middle) < p) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function moved(boat: Boat, [kd = 0, kp = 0, kh = 0, lcgShift = 0, pitch = 0]: readonly number[]): Boat {
  const { hull, drive, power } = boat.factors;
  const factors = {
    ...boat.factors,
    hull: {
      kd: Math.max(hull.kd + kd, LEAST),
      kp: Math.max(hull.kp + kp, LEAST),
      kh: Math.max(hull.kh + kh, 0),
      lcgShift: hull.lcgShift + lcgShift,
    },
    drive: { ...drive, pitchShift: drive.pitchShift + pitch },
  };
  const { density } = boat.water;
  const options = { density, form: boat.craft.hull.form, factors: factors.drive, fullPower: power.factor };
  return { ...boat, factors, model: driveModel(boat.craft.drive, options) };
}

/** The lower triangle L with L L' the covariance of the first factors; zeros where a factor is known. */
function cholesky(covariance: Float64Array): readonly (readonly number[])[] {
  const lower = Array.from({ length: COUNT }, () => Array<number>(COUNT).fill(0));
  for (let i = 0; i < COUNT; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = covariance[i * SPREADS + j]!;
      for (let k = 0; k < j; k++) sum -= lower[i]![k]! * lower[j]![k]!;
      if (i === j) lower[i]![i] = Math.sqrt(Math.max(sum, 0));
      else lower[i]![j] = lower[j]![j]! > 0 ? sum / lower[j]![j]! : 0;
    }
  }
  return lower;
}
