import type { Propeller } from '../craft/shapes.ts';
import { type Cubic, type OpenWater, openWater } from './b-series.ts';

/** A propeller in water of one density, kg/m3; lengths m. */
export interface PropellerModel {
  readonly openWater: OpenWater;
  readonly diameter: number;
  readonly pitch: number;
  readonly quality: number;
  readonly density: number;
}

export interface PropellerPoint {
  /** N; the demand, or the small eased drag where the demand is negative. */
  readonly thrust: number;
  /** rev/s */
  readonly revs: number;
  /** N m, with the quality factor in it. */
  readonly torque: number;
  /** W */
  readonly power: number;
  /** J = Va/(n D) */
  readonly advanceRatio: number;
}

/**
 * Largest drag of a pushed propeller as -T/(rho D^2 Va^2). A negative demand (wind from astern) is practically no
 * thrust; easing it to this small drag instead of cutting at zero keeps power smooth and above zero.
 */
const PUSHED_DRAG = 0.004;

/** KQ that even an idle propeller asks for; a tenth of the least inside the series. */
const LEAST_LOAD = 1e-4;

/** rev/s; a propeller at rest in still water would divide by zero. */
const LEAST_REVS = 1e-6;

export function propellerModel(propeller: Propeller, density: number): PropellerModel {
  const { diameter, pitch, quality } = propeller;
  return { openWater: openWater(propeller), diameter, pitch, quality, density };
}

/**
 * Revs and power that give a thrust, N, at an advance speed, m/s, from 0 (bollard pull) up. Torque follows the
 * B-series over the propeller's quality; relative rotative efficiency is 1.
 */
export function propellerPoint(model: PropellerModel, thrust: number, advanceSpeed: number): PropellerPoint {
  const { diameter, density } = model;
  const u = advanceSpeed / diameter;
  const scale = density * diameter * diameter * diameter * diameter;
  const tau = eased(thrust / scale, u);
  const n = revsFor(model.openWater.a, u, tau);
  // Beyond the series the polynomials may drive the shaft where next to no thrust is asked; a propeller never does.
  const load = Math.max(loadAt(model.openWater.b, n, u), LEAST_LOAD * n * n);
  const torque = ((scale * diameter) / model.quality) * load;
  return { thrust: tau * scale, revs: n, torque, power: 2 * Math.PI * n * torque, advanceRatio: u / n };
}

/** How the point moves: rev/s and N m per N of thrust and per m of pitch. */
export interface PropellerSlopes {
  readonly revsByThrust: number;
  readonly torqueByThrust: number;
  readonly revsByPitch: number;
  readonly torqueByPitch: number;
}

/**
 * Slopes of `propellerPoint` at a point it gave for `thrust`, N, by implicit differentiation, exact. `pitchSlope` comes
 * from `openWaterPitchSlope`.
 */
export function propellerSlopes(
  model: PropellerModel,
  pitchSlope: OpenWater,
  { thrust, point }: { readonly thrust: number; readonly point: PropellerPoint },
): PropellerSlopes {
  const { openWater: water, diameter, density, quality } = model;
  const n = point.revs;
  const u = point.advanceRatio * n;
  const scale = density * diameter * diameter * diameter * diameter;
  const torqueScale = (scale * diameter) / quality;
  const balanceByRevs = slopeInRevs(water.a, n, u);
  const torqueByRevs = torqueScale * slopeInRevs(water.b, n, u);
  const revsByThrust = easedSlope(thrust / scale, u) / (balanceByRevs * scale);
  const revsByPitch = -loadAt(pitchSlope.a, n, u) / balanceByRevs;
  return {
    revsByThrust,
    torqueByThrust: torqueByRevs * revsByThrust,
    revsByPitch,
    torqueByPitch: torqueScale * loadAt(pitchSlope.b, n, u) + torqueByRevs * revsByPitch,
  };
}

/** Apparent slip of a propeller at `revs` rev/s behind a boat at `speed` m/s; `pitch` m. */
export function apparentSlip(revs: number, pitch: number, speed: number): number {
  return 1 - speed / (revs * pitch);
}

/**
 * Solves a0 n^2 + a1 u n + a2 u^2 + a3 u^3/n = tau for n, rev/s. The start leaves out the cubic term and is within
 * 26 % of the root over the whole series; each Newton step squares the error, so the early end costs nothing.
 */
function revsFor([a0, a1, a2, a3]: Cubic, u: number, tau: number): number {
  const linear = a1 * u;
  const cubic = a3 * u * u * u;
  const free = a2 * u * u - tau;
  let n = (Math.sqrt(Math.max(linear * linear - 4 * a0 * free, 0)) - linear) / (2 * a0);
  if (n < LEAST_REVS) return LEAST_REVS;
  for (let step = 0; step < 5; step++) {
    const change = (n * (a0 * n + linear) + free + cubic / n) / (2 * a0 * n + linear - cubic / (n * n));
    n = Math.max(n - change, 0.3 * n);
    if (Math.abs(change) < 1e-8 * n) break;
  }
  return n;
}

/** K n^2 for a coefficient K(J), with u = Va/D and J = u/n. */
function loadAt(k: Cubic, n: number, u: number): number {
  return n * (n * k[0] + u * k[1]) + u * u * (k[2] + (k[3] * u) / n);
}

/** Slope of `loadAt` in n. */
function slopeInRevs(k: Cubic, n: number, u: number): number {
  const j = u / n;
  return 2 * n * k[0] + u * k[1] - k[3] * u * j * j;
}

/** T/(rho D^4) with negative values eased; continuous with its slope. */
function eased(tau: number, u: number): number {
  if (tau >= 0) return tau;
  const most = PUSHED_DRAG * u * u;
  return most > 0 ? tau / (1 - tau / most) : 0;
}

function easedSlope(tau: number, u: number): number {
  if (tau >= 0) return 1;
  const most = PUSHED_DRAG * u * u;
  const ratio = most > 0 ? 1 - tau / most : Infinity;
  return 1 / (ratio * ratio);
}
