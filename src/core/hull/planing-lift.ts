// Lift of a prismatic planing surface. Range: 0.60 <= Cv <= 13, trim 2-15 deg, wetted length <= 4 beams
// (Savitsky 1964, Hydrodynamic Design of Planing Hulls, Marine Technology 1(1), eq. 15 and 16).

/** CL0 / trim^1.1 of a flat plate: dynamic part plus buoyant part. Wetted length in beams, speed coefficient Cv. */
export function flatLiftSlope(wettedLengthRatio: number, speedCoefficient: number): number {
  const root = Math.sqrt(wettedLengthRatio);
  const length = wettedLengthRatio / speedCoefficient;
  return root * (0.012 + 0.0055 * length * length);
}

/** Lift coefficient CL0 of a flat plate on beam squared (Savitsky 1964, eq. 15). */
export function flatPlateLift(trimDeg: number, wettedLengthRatio: number, speedCoefficient: number): number {
  return trimDeg ** 1.1 * flatLiftSlope(wettedLengthRatio, speedCoefficient);
}

/** Lift coefficient CLb left to a V bottom of this deadrise (Savitsky 1964, eq. 16). */
export function deadriseLift(flatLift: number, deadriseDeg: number): number {
  return flatLift - 0.0065 * deadriseDeg * flatLift ** 0.6;
}

/**
 * CL0 that a V bottom needs for lift CLb >= 0: eq. 16 solved for its larger root, to machine precision.
 * With u = CL0^0.2 it is u^5 - a u^3 = CLb, convex above the root, so Newton from above cannot fail.
 */
export function flatLiftFor(liftCoefficient: number, deadriseDeg: number): number {
  const a = 0.0065 * deadriseDeg;
  const p = liftCoefficient ** 0.2;
  // u0^5 - a u0^3 = p^2 (p^2 + a)^1.5 >= p^5, so this start lies above the root; exact where either term vanishes.
  let u = Math.sqrt(p * p + a);
  if (u === 0) return 0;
  for (let step = 0; step < 6; step++) {
    const u2 = u * u;
    u -= (u2 * u * (u2 - a) - liftCoefficient) / (u2 * (5 * u2 - 3 * a));
  }
  const u2 = u * u;
  return u2 * u2 * u;
}

/** Wetted length in beams at which a flat plate at this trim lifts CL0: eq. 15 solved for it. */
export function wettedLengthForLift(flatLift: number, trimDeg: number, speedCoefficient: number): number {
  const slope = flatLift / trimDeg ** 1.1;
  const buoyant = 0.0055 / (speedCoefficient * speedCoefficient);
  // 0.012 r + buoyant r^5 = slope in r = sqrt(length): convex, and each term alone gives a bound from above.
  let r = Math.min(slope / 0.012, (slope / buoyant) ** 0.2);
  for (let step = 0; step < 8; step++) {
    const r4 = r ** 4;
    r -= (0.012 * r + buoyant * r4 * r - slope) / (0.012 + 5 * buoyant * r4);
  }
  return r * r;
}
