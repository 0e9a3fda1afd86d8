import type { Hull } from '../craft/shapes.ts';
import { GRAVITY, type Water } from '../units/constants.ts';
import { DEGREE } from '../units/convert.ts';
import { ittc57 } from './friction.ts';
import { froudeLength, froudeVolume, speedCoefficient } from './froude.ts';
import { hullSpeedShare, humpShare, planingShare, waveGate } from './gates.ts';
import { flatLiftFor, flatLiftSlope } from './planing-lift.ts';
import { wettedLengthForLever } from './pressure-centre.ts';

/** What trial runs found about this boat: factors on the three regimes, and how far its LCG acts from where it is. */
export interface HullFactors {
  readonly kd: number;
  readonly kp: number;
  readonly kh: number;
  /** LCG shift, m */
  readonly lcgShift: number;
}

/** Nobody measured the boat: the method as it stands. */
export const UNMEASURED: HullFactors = { kd: 1, kp: 1, kh: 1, lcgShift: 0 };

/** All-up mass kg; LCG m forward of the aft end of the wetted bottom. */
export interface HullState {
  readonly mass: number;
  readonly lcg: number;
  readonly water: Water;
}

export interface HullResistance {
  /** Still-water resistance of the bare hull with the factors applied, N. Air, leg, tow and waves come on top. */
  readonly total: number;
  /** The derivatives of `total` by kd, kp and kh, N. */
  readonly displacementPart: number;
  readonly planingPart: number;
  readonly humpPart: number;
  /** The trim to show; 0 at rest. */
  readonly trimDeg: number;
  /** The trim of the planing equations alone; means nothing at displacement speed. */
  readonly shortFormTrimDeg: number;
  /** Mean wetted length over planing beam. */
  readonly wettedLengthRatio: number;
  readonly froudeVolume: number;
  readonly froudeLength: number;
  readonly speedCoefficient: number;
  readonly planingShare: number;
  readonly waveGate: number;
  readonly liftCoefficient: number;
}

// Below this speed, m/s, resistance is friction alone and exactly quadratic; the lift coefficient would overflow at 0.
const SLOWEST = 1e-6;

/**
 * Resistance and attitude from rest through the hump to planing: the short form of Savitsky 1964 (Marine Technology
 * 1(1)), gated by wave making below the hump, with the static wetted surface fading into the planing one. Joined for
 * this project; smooth in speed, mass and LCG. Speed 0-14 m/s through the water, boats of 2.3-6 m and 100-900 kg.
 * Unmeasured it is good to about +-20 % planing, +-30 % on the hump and below; `hullFlags` says what lies outside.
 */
export function hullResistance(
  hull: Hull,
  state: HullState,
  speed: number,
  factors: HullFactors = UNMEASURED,
): HullResistance {
  const { wettedLength, planingBeam: b, deadriseDeg } = hull;
  const { mass, water } = state;
  const v = Math.max(speed, SLOWEST);
  const slow = speed < SLOWEST ? (Math.max(speed, 0) / SLOWEST) ** 2 : 1;

  const weight = mass * GRAVITY;
  const volume = mass / water.density;
  const cv = speedCoefficient(v, b);
  const fnv = froudeVolume(v, mass, water.density);
  const fnl = froudeLength(v, wettedLength);
  const lift = weight / (0.5 * water.density * v * v * b * b);

  // Attitude: the centre of gravity sets the wetted length, length and lift set the trim. Both are held by soft caps:
  // the hull's own length, and 20 degrees (an overloaded stern would run to 60); below 10 degrees under 0.3 % of trim.
  const lever = Math.max((state.lcg + factors.lcgShift) / b, 0.2);
  const free = wettedLengthForLever(lever, cv);
  const filled = ((free * b) / wettedLength) ** 2;
  const filled4 = filled * filled;
  const length = free / Math.sqrt(Math.sqrt(Math.sqrt(1 + filled4 * filled4)));
  const freeTrim = (flatLiftFor(lift, deadriseDeg) / flatLiftSlope(length, cv)) ** (1 / 1.1);
  const steep = (freeTrim / 20) ** 2;
  const trim = freeTrim / Math.sqrt(Math.cbrt(1 + steep * steep * steep));
  const cosTrim = Math.cos(trim * DEGREE);

  const s = planingShare(fnv);
  const w = waveGate(fnl);
  const along = v * Math.sqrt(1 - (s * 0.012 * trim ** 1.1) / (Math.sqrt(length) * cosTrim));
  const wetted = (1 - s) * wettedLength + s * length * b;
  const surface =
    (1 - s) * (1 + hull.formFactor) * hull.wettedSurfaceCoefficient * Math.sqrt(volume * wettedLength) +
    (s * hull.planingSurfaceFactor * length * b * b) / Math.cos(deadriseDeg * DEGREE);
  const friction =
    (0.5 *
      water.density *
      along *
      along *
      surface *
      (ittc57(flooredReynolds((along * wetted) / water.viscosity)) + hull.roughness)) /
    cosTrim;
  const waves = w * Math.tan(trim * DEGREE);
  const pressure = weight * (hull.form === 'displacement' ? larger(waves, hullSpeedShare(fnl)) : waves);
  const base = slow * (friction + pressure);

  const displacementPart = (1 - s) * base;
  const planingPart = s * base;
  const humpPart = humpShare(fnv) * base;
  return {
    total: factors.kd * displacementPart + factors.kp * planingPart + factors.kh * humpPart,
    displacementPart,
    planingPart,
    humpPart,
    trimDeg: w * trim,
    shortFormTrimDeg: trim,
    wettedLengthRatio: length,
    froudeVolume: fnv,
    froudeLength: fnl,
    speedCoefficient: cv,
    planingShare: s,
    waveGate: w,
    liftCoefficient: lift,
  };
}

/** The friction line has no meaning below 1e5 (walking pace is 3e6); a smooth floor keeps resistance C1 there. */
function flooredReynolds(reynolds: number): number {
  const r = (reynolds / 1e5) ** 2;
  return 1e5 * Math.sqrt(Math.sqrt(r * r + 1));
}

/** The larger of two shares, smoothly: up to a fifth more where they are equal. */
function larger(a: number, b: number): number {
  const [a2, b2] = [a * a, b * b];
  return Math.sqrt(Math.sqrt(a2 * a2 + b2 * b2));
}
