import { storeFlow } from '../drive/battery.ts';
import { type DrivePoint, drivePoint, flowGradient } from '../drive/demand.ts';
import { airDrag } from '../hull/air-drag.ts';
import { legDrag } from '../hull/leg-drag.ts';
import { type HullResistance, hullResistance } from '../hull/resistance.ts';
import { waveAddedResistance } from '../hull/waves.ts';
import type { Afloat, Boat } from './boat.ts';
import { SPREADS, varianceOf } from './factors.ts';
import { formShare, untried } from './form-spread.ts';

/** Wind along the boat's heading (positive from ahead), m/s, and significant wave height, m. */
export interface Weather {
  readonly headwind: number;
  readonly waveHeight: number;
  /** Pull of what is towed, N, at a speed through the water and a headwind, m/s. */
  readonly tow?: ((speed: number, headwind: number) => number) | undefined;
}

export const CALM: Weather = { headwind: 0, waveHeight: 0 };

/** A boat held at one speed through the water. */
export interface Steady {
  /** Through the water, m/s, and all-up mass, kg. */
  readonly speed: number;
  readonly mass: number;
  /** Hull, air, leg and waves together, N. */
  readonly resistance: number;
  readonly hull: HullResistance;
  readonly drive: DrivePoint;
  /** Out of the tank or battery: kg/s, or W with the battery's rate loss. */
  readonly flow: number;
}

/** Central step of the centre of gravity for its gradient, m; the error of the difference is below 0.1 %. */
const LCG_STEP = 0.02;

/**
 * Resistance and drive at one speed, m/s. A demand past full throttle is computed all the same; `drive.held` says so.
 * `hull` is what `stillWater` says, where it is known.
 */
export function steady(
  boat: Boat,
  afloat: Afloat,
  speed: number,
  weather: Weather = CALM,
  hull: HullResistance = stillWater(boat, afloat, speed),
): Steady {
  const resistance = hull.total + appendages(boat, afloat, speed, weather, hull);
  const drive = drivePoint(boat.model, resistance, speed);
  const flow = boat.bank ? storeFlow(drive.flow, boat.bank) : drive.flow;
  return { speed, mass: afloat.mass, resistance, hull, drive, flow };
}

/** Of the bare hull: the same in any weather. */
export function stillWater(boat: Boat, afloat: Afloat, speed: number): HullResistance {
  return hullResistance(boat.craft.hull, stateOf(boat, afloat, 0), speed, boat.factors.hull);
}

/** How resistance follows a shift of the centre of gravity forward, N/m; `hull` is that of the same speed. */
export function lcgSlope(boat: Boat, afloat: Afloat, speed: number, hull: HullResistance): number {
  const shifted = hullResistance(boat.craft.hull, stateOf(boat, afloat, LCG_STEP), speed, boat.factors.hull);
  return (shifted.total - hull.total) / LCG_STEP;
}

/** Writes d flow / d factor (see `FACTORS`) at a steady speed into `gradient`; `slope` comes from `lcgSlope`. */
export function writeGradient(
  boat: Boat,
  { hull, resistance, flow, mass, speed }: Steady,
  slope: number,
  gradient: Float64Array,
): void {
  const { base, dFlow_dResistance, dFlow_dPitch, dFlow_dFuel, dFlow_dFriction } = flowGradient(
    boat.model,
    resistance,
    speed,
  );
  // The battery's rate loss changes slowly with power, so it scales the gradient like the flow itself.
  const rate = base.flow > 0 ? flow / base.flow : 1;
  gradient[0] = rate * dFlow_dResistance * hull.displacementPart;
  gradient[1] = rate * dFlow_dResistance * hull.planingPart;
  gradient[2] = rate * dFlow_dResistance * hull.humpPart;
  gradient[3] = rate * dFlow_dResistance * slope;
  gradient[4] = rate * dFlow_dPitch;
  gradient[5] = rate * dFlow_dFuel;
  gradient[6] = rate * dFlow_dFriction;
  gradient[7] = 0;
  gradient[7] = formDeviation(boat, { value: flow, mass, speed }, gradient);
}

/**
 * Standard deviation of resistance that the hull factors and the form of the model leave, N; `slope` comes from
 * `lcgSlope`.
 */
export function resistanceDeviation(boat: Boat, { hull, mass, speed }: Steady, slope: number): number {
  const { covariance, form } = boat.factors;
  const parts = [hull.displacementPart, hull.planingPart, hull.humpPart, slope];
  let variance = 0;
  for (let i = 0; i < parts.length; i++) {
    for (let j = 0; j < parts.length; j++) variance += parts[i]! * covariance[i * SPREADS + j]! * parts[j]!;
  }
  variance = Math.max(variance, 0);
  if (!form) return Math.sqrt(variance);
  const open = formDeviation(boat, { value: hull.total, mass, speed }, [...parts, 0, 0, 0, 0]);
  return Math.sqrt(variance + open * open);
}

/**
 * What the form of the model leaves open, but so that a measured boat is nowhere known worse than before its runs. Far
 * from them the fit stretches what it saw there: where the boat as nobody measured it would need more, that is open too.
 */
function formDeviation(
  { factors: { covariance, form } }: Boat,
  { value, mass, speed }: { readonly value: number; readonly mass: number; readonly speed: number },
  gradient: ArrayLike<number>,
): number {
  if (!form || !(value > 0)) return 0;
  const open = value * formShare(form, mass, speed);
  const told = varianceOf(gradient, form.unmeasured) - varianceOf(gradient, covariance);
  const variance = Math.min(open * open, Math.max(told, 0));
  const far = untried(form, mass, speed);
  if (far === 0) return Math.sqrt(variance);
  let more = 0;
  for (let i = 0; i < form.back.length; i++) more += gradient[i]! * form.back[i]!;
  const stretched = far * value * Math.log1p(Math.max(more / value, 0));
  return Math.sqrt(variance + stretched * stretched);
}

function stateOf(boat: Boat, afloat: Afloat, lcgStep: number) {
  return { mass: afloat.mass, lcg: afloat.lcg + lcgStep, water: boat.water };
}

function appendages(boat: Boat, afloat: Afloat, speed: number, weather: Weather, hull: HullResistance): number {
  const { craft, water } = boat;
  let sum = airDrag(afloat.airArea, craft.hull.airDragCoefficient, { speed, headwind: weather.headwind });
  sum += legDrag(craft.drive.legDragArea, speed, water.density);
  if (weather.tow) sum += weather.tow(speed, weather.headwind);
  if (weather.waveHeight > 0) {
    const body = { mass: afloat.mass, trimDeg: hull.shortFormTrimDeg };
    sum += waveAddedResistance(craft.hull, body, speed, weather.waveHeight, water).added;
  }
  return sum;
}
