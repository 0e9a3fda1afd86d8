// The two switches and the bump that carry one formula set from rest to planing. Constants derived for this project
// against small open boats of 2.3-6 m; the wave gate's 0.40 is the least supported of them.

/** Share of the hull's length and surface that has gone over to planing, 0 to 1; a half at volume Froude number 1.40. */
export function planingShare(froudeVolume: number): number {
  const y = (froudeVolume / 1.4) ** 2;
  const y3 = y * y * y;
  return y3 / (1 + y3);
}

/** Share of the planing pressure drag that wave making has built up, 0 to 1; a half at length Froude number 0.40. */
export function waveGate(froudeLength: number): number {
  const x = froudeLength / 0.4;
  const z = x * x * x * x * x;
  return z / (1 + z);
}

/**
 * Extra resistance on the hump as a share of the rest, at most 0.15, at volume Froude number 1.70. The size of the
 * correction of Blount and Fox 1976 (from memory), as a symmetric bump that stays sane below volume Froude number 1.
 */
export function humpShare(froudeVolume: number): number {
  const x = Math.log(froudeVolume / 1.7) / 0.35;
  return 0.15 * Math.exp(-x * x);
}

/**
 * Wave resistance over weight of displacement hulls near their hull speed: 0.008 at length Froude number 0.35, 0.022 at
 * 0.40, 0.052 at 0.45, the mean of 22 hulls of 4.3 to 5.1 displacement lengths (Delft systematic yacht hull series,
 * Gerritsma, Onnink and Versluis 1981, as in the UCI yacht hydrodynamics data set). Above 0.45 nobody tested them here:
 * it goes on rising and levels out at 0.12 (our judgement).
 */
export function hullSpeedShare(froudeLength: number): number {
  const x = froudeLength / 0.4;
  const share = 0.0219 * x ** 7.4;
  const most = (share / 0.12) ** 2;
  return share / Math.sqrt(Math.sqrt(1 + most * most));
}
