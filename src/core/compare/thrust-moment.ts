import type { Afloat, Boat } from '../curve/boat.ts';
import { steady } from '../curve/steady.ts';
import { GRAVITY } from '../units/constants.ts';
import { DEGREE } from '../units/convert.ts';
import { leverShift } from './lever-shift.ts';

/** How the engine hangs: tilted out from square to the bottom, degrees (negative: in); deeper than fits, m. */
export interface Leg {
  readonly tiltDeg: number;
  readonly deeper?: number;
}

/** A thrust line as it acts: shift of the centre of gravity forward, m, and of the weight carried, kg. */
export interface ThrustEffect {
  readonly lcgShift: number;
  readonly massShift: number;
  /** Thrust over resistance: only the part along the way drives. */
  readonly thrustShare: number;
}

/** The propeller's centre behind the transom and its tip clear of the plate, m (common practice, no source). */
const BEHIND = 0.15;
const TIP = 0.03;
/** Transom of a hull that does not say, m. */
const TRANSOM = 0.4;

/**
 * What the thrust line does to attitude at one speed (m/s), against all forces through the centre of gravity, to first
 * order at the trim of the boat as it is. `vcg` m above the keel.
 */
export function thrustEffect(boat: Boat, afloat: Afloat, vcg: number, speed: number, leg: Leg): ThrustEffect {
  const { hull, drive } = boat.craft;
  const now = steady(boat, afloat, speed);
  const weight = afloat.mass * GRAVITY;
  const trim = now.hull.shortFormTrimDeg * DEGREE;
  const pressure = now.hull.waveGate * weight * Math.tan(trim);
  const base = now.hull.displacementPart + now.hull.planingPart;
  const friction = Math.max(base - pressure, 0) * Math.cos(trim);
  const tilt = leg.tiltDeg * DEGREE;
  const height = hull.transomHeight ?? TRANSOM;
  const down = height + TIP + drive.propeller.diameter / 2 + (leg.deeper ?? 0);
  // The leg turns about its clamp on top of the transom; tilted out, the thrust points down from the keel.
  const x = hull.engine.x - BEHIND * Math.cos(tilt) - down * Math.sin(tilt);
  const z = height + BEHIND * Math.sin(tilt) - down * Math.cos(tilt);
  const arm = (vcg - z) * Math.cos(tilt) + (afloat.lcg - x) * Math.sin(tilt);
  const a = vcg - (hull.planingBeam / 4) * Math.tan(hull.deadriseDeg * DEGREE);
  const lcgShift = leverShift({
    weight,
    friction,
    trimDeg: now.hull.shortFormTrimDeg,
    inclinationDeg: -leg.tiltDeg,
    frictionArm: a,
    thrustArm: arm,
  });
  // Part of the thrust along the upward normal carries weight.
  const massShift = (-now.resistance * Math.sin(trim - tilt)) / GRAVITY;
  return { lcgShift, massShift, thrustShare: 1 / Math.cos(trim - tilt) };
}
